package io.github.holdpath.sim.study;

import java.util.OptionalDouble;

/**
 * Largest loads over the motion, at its samples.
 *
 * @param gripForce of the required wrench while the part is held, N
 * @param gripMoment about the grip frame's origin, N m
 * @param flangeForce of tool and part on the flange, N; empty where the scene has no tool
 * @param flangeMoment about the flange frame's origin, N m; empty where the scene has no tool
 */
public record Peaks(
    double gripForce, double gripMoment, OptionalDouble flangeForce, OptionalDouble flangeMoment) {}
