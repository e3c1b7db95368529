package io.github.holdpath.dynamics.compliance;

import java.util.function.DoubleUnaryOperator;

/**
 * The largest value of a smooth function, by fine samples and a parabola through the best three.
 */
final class Crest {
  private Crest() {}

  static double of(DoubleUnaryOperator f, int samples) {
    double most = Double.NEGATIVE_INFINITY;
    double before = f.applyAsDouble(0);
    double here = f.applyAsDouble(1.0 / samples);
    most = Math.max(before, here);
    for (int i = 2; i <= samples; i++) {
      double after = f.applyAsDouble((double) i / samples);
      most = Math.max(most, after);
      double bend = before - 2 * here + after;
      if (here >= before && here >= after && bend < 0) {
        most = Math.max(most, here - (after - before) * (after - before) / (8 * bend));
      }
      before = here;
      here = after;
    }
    return most;
  }
}
