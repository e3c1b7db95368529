/**
 * Robot arms as serial chains of joints: motion of the flange and torques of the drives (theory,
 * section 8). Read {@link io.github.holdpath.sim.robot.Chain} first; {@link
 * io.github.holdpath.sim.robot.UrdfReader} reads one from a file.
 */
@NullMarked
package io.github.holdpath.sim.robot;

import org.jspecify.annotations.NullMarked;
