package io.github.holdpath.viewer.panel;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a time stands on a line.
 *
 * @param left place of 0, pixels
 * @param right place of the end, pixels
 * @param duration time of the end, s
 */
record TimeAxis(double left, double right, double duration) {
  /** Place of a time, pixels. */
  double x(double time) {
    return duration > 0 ? left + (right - left) * time / duration : left;
  }

  /** Time at a place, s; outside the line that of its nearer end. */
  double time(double x) {
    if (right <= left) {
      return 0;
    }
    return Math.max(0, Math.min(duration, duration * (x - left) / (right - left)));
  }

  /**
   * Round times along the line, s.
   *
   * @param apart pixels between two of them at least
   */
  List<Double> ticks(double apart) {
    return ticks(duration, Math.max(1, (right - left) / apart));
  }

  /**
   * Round numbers from 0.
   *
   * @param end largest, not negative
   * @param most how many steps at most
   */
  static List<Double> ticks(double end, double most) {
    List<Double> all = new ArrayList<>();
    all.add(0.0);
    if (!(end > 0)) {
      return all;
    }
    double ten = Math.pow(10, Math.floor(Math.log10(end / most)));
    double step = 10 * ten;
    for (double m : new double[] {5, 2, 1}) {
      step = m * ten >= end / most * (1 - 1e-9) ? m * ten : step;
    }
    for (long i = 1; i * step <= end * (1 + 1e-9); i++) {
      all.add(i * step);
    }
    return all;
  }
}
