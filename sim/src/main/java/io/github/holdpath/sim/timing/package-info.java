/**
 * The fastest timing of a path whose limits are linear in the acceleration along it and the square
 * of the rate along it. {@link io.github.holdpath.sim.timing.FastestTiming} finds it; read it
 * first. {@link io.github.holdpath.sim.timing.PathRows} says what the limits are, {@link
 * io.github.holdpath.sim.timing.JointRows} makes them from joints, {@link
 * io.github.holdpath.sim.timing.Timing} is the answer. {@link
 * io.github.holdpath.sim.timing.JerkPass} makes a timing with bounded jerk of it. Theory page:
 * {@code docs/theory/motion.md}.
 */
@NullMarked
package io.github.holdpath.sim.timing;

import org.jspecify.annotations.NullMarked;
