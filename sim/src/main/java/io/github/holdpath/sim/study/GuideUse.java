package io.github.holdpath.sim.study;

/**
 * The most that a jaw's guide has to bear.
 *
 * @param jaw name of its pad
 * @param use part of its rating, dimensionless; more than 1 is too much
 * @param time s
 */
public record GuideUse(String jaw, double use, double time) {}
