package io.github.holdpath.sim.motion.joint;

/**
 * A joint that passes a stop.
 *
 * @param joint index, in the order of the robot's joints
 * @param segment move in which it is farthest out, 0 before the first
 * @param from first instant past the stop, s
 * @param time instant at which it is farthest out, s
 * @param value joint value then, rad or m
 * @param beyond how far that is beyond the stop, rad or m, positive
 */
public record JointPast(
    int joint, int segment, double from, double time, double value, double beyond) {}
