package io.github.holdpath.sim.study;

/**
 * The least whole-grip factor over a stretch of motion: at this many times the load nothing holds
 * the part. Not a factor to design by; parts of the contact creep before it.
 *
 * @param factor H2, dimensionless; {@code HoldModel.NO_LIMIT} stands for no limit
 * @param time at which it was found, s
 */
public record DropBound(double factor, double time) {}
