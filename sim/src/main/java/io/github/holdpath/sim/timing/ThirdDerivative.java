package io.github.holdpath.sim.timing;

/**
 * The third derivative of a curve: its own, or differences of the second where it has none. Holds
 * scratch memory: one instance per thread.
 */
final class ThirdDerivative {
  /** Part of a piece by which the three places of a difference are apart. */
  private static final double STEP = 1e-4;

  private final JointCurve curve;
  private final double[] q;
  private final double[] dq;
  private final double[] before;
  private final double[] at;
  private final double[] after;

  ThirdDerivative(JointCurve curve) {
    this.curve = curve;
    q = new double[curve.joints()];
    dq = new double[curve.joints()];
    before = new double[curve.joints()];
    at = new double[curve.joints()];
    after = new double[curve.joints()];
  }

  /** Where a piece ends. */
  static double end(JointCurve curve, int piece) {
    return piece + 1 < curve.pieces() ? curve.start(piece + 1) : curve.length();
  }

  /** Writes d3q/ds3 at a place of a piece: the slope there of the parabola through three places. */
  void at(int piece, double s, double[] dddq) {
    if (curve.third(piece, s, dddq)) {
      return;
    }
    double from = curve.start(piece);
    double to = end(curve, piece);
    double step = STEP * (to - from);
    double middle = Math.max(from + step, Math.min(to - step, s));
    curve.at(piece, middle - step, q, dq, before);
    curve.at(piece, middle, q, dq, at);
    curve.at(piece, middle + step, q, dq, after);
    double aside = (s - middle) / step;
    for (int j = 0; j < dddq.length; j++) {
      double slope = 0.5 * (after[j] - before[j]);
      double bend = after[j] - 2 * at[j] + before[j];
      dddq[j] = (slope + aside * bend) / step;
    }
  }
}
