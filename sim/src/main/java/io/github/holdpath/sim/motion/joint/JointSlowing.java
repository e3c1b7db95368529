package io.github.holdpath.sim.motion.joint;

/**
 * A stretch from stop to stop that is played slower, so that a joint keeps its limit.
 *
 * @param fromSegment first move of the stretch, from 1
 * @param toSegment last move of the stretch
 * @param factor k: speeds are played at k, accelerations at its square; below 1
 * @param joint that asks for it
 * @param bySpeed whether it is the joint's speed that would be too large; if not, its acceleration
 */
public record JointSlowing(
    int fromSegment, int toSegment, double factor, String joint, boolean bySpeed) {}
