package io.github.holdpath.sim.motion.joint;

/** Answer to whether a robot's joints can follow a motion. */
public sealed interface JointOutcome permits JointTrack, JointFault {}
