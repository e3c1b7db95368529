package io.github.holdpath.sim.timing;

/** Looks at a timing from outside, by its state at instants, for limits that it breaks. */
final class BrokenLimits {
  private BrokenLimits() {}

  /**
   * Largest part of itself by which a row or the speed is broken.
   *
   * @param each instants in each cell, spread so that none is where the solver looked
   */
  static double worst(Timing timing, PathRows path, int each) {
    int rows = path.rows();
    double[] a = new double[rows];
    double[] b = new double[rows];
    double[] c = new double[rows];
    double[] state = new double[3];
    double worst = 0;
    for (int i = 0; i < timing.cells(); i++) {
      int piece = 0;
      double middle = 0.5 * (timing.place(i) + timing.place(i + 1));
      while (piece + 1 < path.pieces() && path.start(piece + 1) < middle) {
        piece++;
      }
      for (int j = 0; j < each; j++) {
        double part = (j + 0.37) / each;
        timing.at(timing.time(i) + part * (timing.time(i + 1) - timing.time(i)), state);
        double x = state[Timing.RATE] * state[Timing.RATE];
        double cap = path.at(piece, state[Timing.PLACE], a, b, c, 0);
        worst = Math.max(worst, Math.sqrt(x / cap) - 1);
        for (int k = 0; k < rows; k++) {
          double value = a[k] * state[Timing.ACCELERATION] + b[k] * x;
          worst = Math.max(worst, (value - c[k]) / Math.abs(c[k]));
        }
      }
    }
    return worst;
  }
}
