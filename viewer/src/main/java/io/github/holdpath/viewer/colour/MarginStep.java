package io.github.holdpath.viewer.colour;

import io.github.holdpath.sim.study.FactorTrace;

/**
 * Steps of the margin (factor per required safety) with a colour each: warm below 1, cool from 1.
 * The two sides stay apart for eyes with any of the common colour deficiencies.
 *
 * @see FactorTrace#margin
 */
public enum MarginStep {
  /** Below 0.75. */
  FAR_BELOW(0, 0.75, 0x7F1D00),
  /** From 0.75. */
  BELOW(0.75, 0.9, 0xB33A00),
  /** From 0.9. */
  JUST_BELOW(0.9, 1, 0xD55E00),
  /** From 1: the required safety is kept. */
  JUST_ABOVE(1, 1.1, 0x3D9BD6),
  /** From 1.1. */
  ABOVE(1.1, 1.25, 0x1B7FBE),
  /** From 1.25. */
  WELL_ABOVE(1.25, 1.5, 0x00609A),
  /** From 1.5. */
  FAR_ABOVE(1.5, Double.POSITIVE_INFINITY, 0x003E66);

  private final double from;
  private final double to;
  private final int rgb;

  MarginStep(double from, double to, int rgb) {
    this.from = from;
    this.to = to;
    this.rgb = rgb;
  }

  /**
   * The step of a margin; a margin on a border belongs to the step above.
   *
   * @param margin dimensionless, not negative
   */
  public static MarginStep of(double margin) {
    if (!(margin >= 0)) {
      throw new IllegalArgumentException("margin must not be negative, but was " + margin);
    }
    for (MarginStep step : values()) {
      if (margin < step.to) {
        return step;
      }
    }
    return FAR_ABOVE;
  }

  /** Least margin of the step, dimensionless. */
  public double from() {
    return from;
  }

  /** Margin at which the next step begins, dimensionless; infinite for the last. */
  public double to() {
    return to;
  }

  /** Whether the required safety is kept. */
  public boolean passes() {
    return from >= 1;
  }

  /** Colour as {@code 0xRRGGBB}. */
  public int rgb() {
    return rgb;
  }
}
