/**
 * The joints of a robot along a motion: whether they can follow, and how much slower (theory,
 * section 8). Knows neither routes nor recordings. Read {@link
 * io.github.holdpath.sim.motion.joint.JointTrack} first.
 */
@NullMarked
package io.github.holdpath.sim.motion.joint;

import org.jspecify.annotations.NullMarked;
