package io.github.holdpath.sim.timing;

/**
 * Why a path has no timing.
 *
 * @param place where on the path, in the unit of s
 * @param constraint the row or cap that stands against it
 * @param reason one sentence with both
 */
public record NoTiming(double place, String constraint, String reason)
    implements TimingResult, SmoothResult {}
