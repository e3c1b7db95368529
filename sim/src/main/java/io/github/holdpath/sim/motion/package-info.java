/**
 * Motion of the grip frame by time: what a route or a recording asks for ({@link
 * io.github.holdpath.sim.motion.MotionSource}), and the motion that follows ({@link
 * io.github.holdpath.sim.motion.Motion}, read it first).
 */
@NullMarked
package io.github.holdpath.sim.motion;

import org.jspecify.annotations.NullMarked;
