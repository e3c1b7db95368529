package io.github.holdpath.dynamics.margin;

/**
 * A limit inside a solve: a cone for its slack {@code s = side + R z} and the same for its
 * multiplier, in the scaling of Nesterov and Todd, which makes both the same vector lambda.
 *
 * <p>The scaling W is built up step by step: each step is taken in the scaling of the one before,
 * and {@code W^-1} goes into the rows of R. So slacks near the border keep their digits.
 *
 * @see "Andersen, Dahl, Liu, Vandenberghe: Interior-point methods for large-scale cone programming,
 *     in Optimization for Machine Learning, MIT Press, 2011"
 */
abstract sealed class Cone permits RoundCone, HalfLine {
  /** Back to the start, with a multiplier of about one that lies opposite to the slack. */
  abstract void reset();

  /** Slack times multiplier. */
  abstract double gap();

  /** Takes {@code R' multiplier} from the unknowns' residuals. */
  abstract void takeMultiplier(double[] residual);

  /**
   * Where slack and multiplier shall go, {@code lambda o aim = target e - lambda o lambda}, less
   * the product of the last step where it is to be corrected; adds {@code R' aim} to the unknowns'
   * right side.
   */
  abstract void aim(double target, boolean corrector, double[] side);

  /** Step of slack and multiplier for a step of the unknowns. */
  abstract void step(double[] dz);

  /** Longest step up to {@code most} that stays inside. */
  abstract double longest(double most);

  /** Goes on by a part of the step and scales anew. */
  abstract void advance(double part);
}
