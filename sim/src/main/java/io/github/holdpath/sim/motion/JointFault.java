package io.github.holdpath.sim.motion;

/**
 * A robot cannot follow a motion.
 *
 * @param pointer of the move in the scene file in which it happens; empty at the very start
 * @param time first instant at which it happens, s
 * @param words what happens, where, by how much and what to do about it
 */
public record JointFault(String pointer, double time, String words) implements JointOutcome {}
