package io.github.holdpath.sim.path;

import java.util.function.DoubleUnaryOperator;

/** Largest values of smooth functions: even samples, then the golden section about the best. */
public final class Search {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** Shrinks a bracket to the place where a crest is flat in doubles. */
  private static final int STEPS = 40;

  private Search() {}

  /**
   * Largest value between two places, found by samples and the golden section.
   *
   * @param f continuous, with no two crests between neighbouring samples
   * @param from first place
   * @param to last place
   * @param samples even intervals
   */
  public static double largest(DoubleUnaryOperator f, double from, double to, int samples) {
    double step = (to - from) / samples;
    double best = Double.NEGATIVE_INFINITY;
    int at = 0;
    for (int i = 0; i <= samples; i++) {
      double value = f.applyAsDouble(from + i * step);
      if (value > best) {
        best = value;
        at = i;
      }
    }
    double lo = from + Math.max(0, at - 1) * step;
    double hi = Math.min(to, from + (at + 1) * step);
    return Math.max(best, golden(f, lo, hi));
  }

  /** Largest value in a bracket with one crest. */
  static double golden(DoubleUnaryOperator f, double from, double to) {
    return f.applyAsDouble(crest(f, from, to));
  }

  /** Place of the largest value in a bracket with one crest. */
  static double crest(DoubleUnaryOperator f, double from, double to) {
    double lo = from;
    double hi = to;
    double x = hi - GOLDEN * (hi - lo);
    double y = lo + GOLDEN * (hi - lo);
    double fx = f.applyAsDouble(x);
    double fy = f.applyAsDouble(y);
    for (int i = 0; i < STEPS; i++) {
      if (fx > fy) {
        hi = y;
        y = x;
        fy = fx;
        x = hi - GOLDEN * (hi - lo);
        fx = f.applyAsDouble(x);
      } else {
        lo = x;
        x = y;
        fx = fy;
        y = lo + GOLDEN * (hi - lo);
        fy = f.applyAsDouble(y);
      }
    }
    return fx > fy ? x : y;
  }
}
