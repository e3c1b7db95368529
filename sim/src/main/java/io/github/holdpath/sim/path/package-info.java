/**
 * Geometry of a path without time: pose by a path parameter. {@link
 * io.github.holdpath.sim.path.LinePath} joins two stops. Theory page: {@code
 * docs/theory/motion.md}.
 */
@NullMarked
package io.github.holdpath.sim.path;

import org.jspecify.annotations.NullMarked;
