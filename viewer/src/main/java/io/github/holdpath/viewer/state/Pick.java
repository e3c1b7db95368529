package io.github.holdpath.viewer.state;

import io.github.holdpath.sim.study.FactorTrace;
import java.util.OptionalDouble;

/** Finds the instant whose place on the path is seen at a spot of the image. */
public final class Pick {
  /** Spots nearer to each other than this count as one, pixels. */
  private static final double SAME = 1.5;

  /** Times nearer to the one that is shown are passed over, s. */
  private static final double PRESENT = 1e-3;

  private Pick() {}

  /**
   * The time at which the path passes a spot. Where it passes there more than once: the first time
   * after the one that is shown, so that picking again goes on.
   *
   * @param curves of what is shown
   * @param view in which it is seen
   * @param x pixels from the left edge
   * @param y pixels from the upper edge
   * @param reach how far from the path may be picked, pixels
   * @param now time that is shown, s
   * @return s; empty where the path is farther
   */
  public static OptionalDouble at(
      Curves curves, View view, double x, double y, double reach, double now) {
    FactorTrace trace = curves.trace();
    double[] away = new double[trace.size()];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < away.length; i++) {
      View.Spot s = view.project(trace.position(i));
      away[i] = s.depth() > 0 ? Math.hypot(s.x() - x, s.y() - y) : Double.POSITIVE_INFINITY;
      least = Math.min(least, away[i]);
    }
    if (!(least <= reach)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(next(trace, away, least, now));
  }

  /** Of each pass the nearest sample; of the passes the next one. */
  private static double next(FactorTrace trace, double[] away, double least, double now) {
    double first = Double.NaN;
    int i = 0;
    while (i < away.length) {
      if (away[i] > least + SAME) {
        i++;
        continue;
      }
      int best = i;
      while (i < away.length && away[i] <= least + SAME) {
        best = away[i] < away[best] ? i : best;
        i++;
      }
      double time = trace.time(best);
      if (time > now + PRESENT) {
        return time;
      }
      first = Double.isNaN(first) ? time : first;
    }
    return first;
  }
}
