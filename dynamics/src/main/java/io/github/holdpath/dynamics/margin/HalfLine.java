package io.github.holdpath.dynamics.margin;

/** A half-line {@code s >= 0} of one or two unknowns. */
final class HalfLine extends Cone {
  private final int on;
  private final int alsoOn;
  private final double factor;
  private final double alsoFactor;
  private final double side;
  private final double firstSlack;

  /** {@code 1 / W}. */
  private double per;

  private double lambda;
  private double aim;
  private double ds;
  private double dDual;

  /**
   * {@code side + factor z[on] + alsoFactor z[alsoOn] >= 0} at a start inside it.
   *
   * @param z unknowns at the start
   */
  HalfLine(double side, double factor, int on, double alsoFactor, int alsoOn, double[] z) {
    this.side = side;
    this.factor = factor;
    this.on = on;
    this.alsoFactor = alsoFactor;
    this.alsoOn = alsoOn;
    firstSlack = side + factor * z[on] + alsoFactor * z[alsoOn];
    reset();
  }

  /** {@code W^-2}: weight of the square of the slack's step. */
  double weight() {
    return per * per;
  }

  @Override
  void reset() {
    per = 1 / Math.sqrt(firstSlack);
    lambda = Math.sqrt(firstSlack);
  }

  @Override
  double gap() {
    return lambda * lambda;
  }

  @Override
  void takeMultiplier(double[] residual) {
    residual[on] -= factor * per * lambda;
    residual[alsoOn] -= alsoFactor * per * lambda;
  }

  @Override
  void aim(double target, boolean corrector, double[] to) {
    aim = (target - (corrector ? ds * dDual : 0)) / lambda - lambda;
    to[on] += factor * per * aim;
    to[alsoOn] += alsoFactor * per * aim;
  }

  @Override
  void step(double[] dz) {
    ds = per * (factor * dz[on] + alsoFactor * dz[alsoOn]);
    dDual = aim - ds;
  }

  @Override
  double longest(double most) {
    double least = Math.min(ds, dDual);
    return least * most < -lambda ? -lambda / least : most;
  }

  @Override
  void advance(double part) {
    double slack = lambda + part * ds;
    double dual = lambda + part * dDual;
    lambda = Math.sqrt(slack * dual);
    per *= lambda / slack;
  }
}
