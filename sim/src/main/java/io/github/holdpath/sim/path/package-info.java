/**
 * Geometry of a path without time: pose by a path parameter. {@link
 * io.github.holdpath.sim.path.LinePath} joins two stops. Theory page, section 5.
 */
@NullMarked
package io.github.holdpath.sim.path;

import org.jspecify.annotations.NullMarked;
