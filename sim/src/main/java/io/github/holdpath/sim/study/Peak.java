package io.github.holdpath.sim.study;

import java.util.function.DoubleUnaryOperator;

/** Place of the largest value of a function around a sample that is above both its neighbours. */
final class Peak {
  /** Part of the bracket at which the search stops; even a kink is met within this of its rise. */
  private static final double TOLERANCE = 1e-6;

  private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;

  private Peak() {}

  /**
   * Golden-section search; kinks do no harm.
   *
   * @param f function with one peak between low and high
   * @param low where f is not above f(mid)
   * @param mid between low and high
   * @param high where f is not above f(mid)
   * @return place of the largest value seen
   */
  static double of(DoubleUnaryOperator f, double low, double mid, double high) {
    double a = low;
    double b = high;
    double x = mid;
    double fx = f.applyAsDouble(x);
    while (b - a > TOLERANCE * (high - low)) {
      double y = b - x > x - a ? x + GOLDEN * (b - x) : x - GOLDEN * (x - a);
      double fy = f.applyAsDouble(y);
      double worse = fy > fx ? x : y;
      double better = fy > fx ? y : x;
      if (worse < better) {
        a = worse;
      } else {
        b = worse;
      }
      x = better;
      fx = Math.max(fx, fy);
    }
    return x;
  }
}
