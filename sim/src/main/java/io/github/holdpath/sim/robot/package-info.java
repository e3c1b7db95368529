/**
 * Robots: gantry, scara, delta and serial arms; motion of the flange from that of the joints and
 * the way back, joints along a path, torques of the drives (theory, section 8). Read {@link
 * io.github.holdpath.sim.robot.Robot} first, then {@link
 * io.github.holdpath.sim.robot.PathFollower}; {@link io.github.holdpath.sim.robot.UrdfReader} reads
 * an arm from a file.
 */
@NullMarked
package io.github.holdpath.sim.robot;

import org.jspecify.annotations.NullMarked;
