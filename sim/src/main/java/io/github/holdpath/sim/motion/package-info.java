/**
 * Motion of the grip frame by time: what any motion is ({@link
 * io.github.holdpath.sim.motion.Motion}, read it first), its pieces and moves, and where it comes
 * from ({@link io.github.holdpath.sim.motion.MotionSource}).
 *
 * <p>The packages inside: {@code recorded} fits a motion to a recording, {@code joint} follows a
 * motion with the joints of a robot, {@code route} plans a motion, along those joints too. All know
 * this one; of each other only {@code route} knows one, {@code joint}.
 */
@NullMarked
package io.github.holdpath.sim.motion;

import org.jspecify.annotations.NullMarked;
