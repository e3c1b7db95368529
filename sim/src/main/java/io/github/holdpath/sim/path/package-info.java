/**
 * Geometry of a path without time: pose by a path parameter. {@link
 * io.github.holdpath.sim.path.LinePath} joins two stops; {@link
 * io.github.holdpath.sim.path.PathChain} joins lines and arcs through rounded corners without a
 * stop. Theory page: {@code docs/theory/motion.md}.
 */
@NullMarked
package io.github.holdpath.sim.path;

import org.jspecify.annotations.NullMarked;
