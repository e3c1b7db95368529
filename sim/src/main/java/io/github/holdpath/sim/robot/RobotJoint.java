package io.github.holdpath.sim.robot;

/**
 * A joint of a robot with a drive of its own, as the layers above see it.
 *
 * @param name as in messages and tables
 * @param kind how it moves; values in rad or m
 * @param limits what it may do
 */
public record RobotJoint(String name, JointKind kind, JointLimits limits) {}
