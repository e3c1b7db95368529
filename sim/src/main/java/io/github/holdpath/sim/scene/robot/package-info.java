/**
 * Robots: the fields of each kind, and the robot built from them. Read {@code RobotKinds} first.
 */
@NullMarked
package io.github.holdpath.sim.scene.robot;

import org.jspecify.annotations.NullMarked;
