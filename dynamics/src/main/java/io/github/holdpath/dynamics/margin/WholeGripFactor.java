package io.github.holdpath.dynamics.margin;

/**
 * Whole-grip factor H2 of one load with its certificate.
 *
 * @param factor largest factor on the load for which contact wrenches inside all limits were found
 *     that balance it; {@link HoldModel#NO_LIMIT} stands for no limit
 * @param upper factor beyond which a separating twist shows that none exist
 * @param steps of the solver
 */
public record WholeGripFactor(double factor, double upper, int steps) {
  /** Distance of the two bounds relative to the factor. */
  public double gap() {
    return factor > 0 ? (upper - factor) / factor : upper - factor;
  }
}
