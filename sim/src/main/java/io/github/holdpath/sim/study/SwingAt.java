package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.spatial.Wrench;

/**
 * What a grip carries at one instant as the part swings on it.
 *
 * @param carried wrench on the part, grip frame
 * @param first factor, mode and patch under it
 * @param swing distance of the centre of mass from where gravity alone would hold it, m
 */
public record SwingAt(Wrench carried, FirstSlip first, double swing) {}
