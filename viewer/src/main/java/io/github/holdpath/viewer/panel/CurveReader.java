package io.github.holdpath.viewer.panel;

import io.github.holdpath.viewer.state.Curves;
import java.util.OptionalDouble;

/** Reads a curve between its samples. */
final class CurveReader {
  /** Times nearer to each other are one, s. */
  private static final double SAME = 1e-7;

  private CurveReader() {}

  /**
   * The value at a time, straight between samples; of two at a jump the larger or the lesser.
   *
   * @param curve to read
   * @param time s
   * @param larger which of two
   * @return empty where there is no value
   */
  static OptionalDouble at(Curves.Curve curve, double time, boolean larger) {
    double[] times = curve.times();
    double[] values = curve.values();
    int next = 0;
    double best = Double.NaN;
    while (next < times.length && times[next] < time + SAME) {
      if (times[next] > time - SAME && !Double.isNaN(values[next])) {
        boolean better = larger ? values[next] > best : values[next] < best;
        best = Double.isNaN(best) || better ? values[next] : best;
      }
      next++;
    }
    if (Double.isNaN(best) && next > 0 && next < times.length) {
      double part = (time - times[next - 1]) / (times[next] - times[next - 1]);
      best = values[next - 1] + (values[next] - values[next - 1]) * part;
    }
    return Double.isNaN(best) ? OptionalDouble.empty() : OptionalDouble.of(best);
  }
}
