package io.github.holdpath.sim.timing;

import java.util.Arrays;

/**
 * Estimates how much of the duration is owed to the length of each cell (theory, section 5.13).
 * Each cell is run again as two halves; what that changes of x, at its end going forwards and at
 * its begin going backwards, is weighed by how the whole duration changes with that x.
 */
final class DurationError {
  /** An error that halves with the cells is twice what halving them once takes off. */
  private static final double FIRST_ORDER = 2;

  /** The sum alone fell short of the true error by up to 1.8 on the reference paths. */
  private static final double SHORT = 4;

  /** An error that falls to a quarter is 4/3 of what halving once takes off. */
  private static final double SECOND_ORDER = 4.0 / 3;

  /** Part of x that a new bend may cost, as rounding. */
  private static final double SLOWER = 1e-12;

  double[] cell = new double[0];
  private double[] weight = new double[0];
  private double[] highWeight = new double[0];
  private double[] next = new double[0];

  /** Estimates; the parts are in {@link #cell}, s. Returns their sum. */
  double estimate(PathRows path, TimingGrid grid, TwoPasses passes) {
    int n = grid.cells;
    if (cell.length <= n) {
      int room = n + n / 2 + 16;
      cell = new double[room];
      weight = new double[room];
      highWeight = new double[room];
      next = new double[room];
    }
    weigh(grid, passes);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      cell[i] = grid.step(i) == 0 ? 0 : ofCell(path, grid, passes, i);
      sum += cell[i];
    }
    return SHORT * sum;
  }

  /** How the duration changes with x of each node, and with the highest x of each node, s. */
  private void weigh(TimingGrid grid, TwoPasses passes) {
    int n = grid.cells;
    Arrays.fill(weight, 0, n + 1, 0);
    Arrays.fill(highWeight, 0, n + 1, 0);
    for (int i = n - 1; i > 0; i--) {
      double root = Math.sqrt(passes.x[i]);
      double own = 0;
      if (root > 0) {
        own =
            perRoot(grid.step(i - 1), root, passes.x[i - 1])
                + perRoot(grid.step(i), root, passes.x[i + 1]);
      }
      boolean passedOn = !passes.onTop[i + 1];
      weight[i] = own + (passedOn ? weight[i + 1] * part(passes.slope[i + 1]) : 0);
    }
    for (int i = 1; i < n; i++) {
      highWeight[i] =
          (passes.onTop[i] ? weight[i] : 0) + highWeight[i - 1] * part(passes.highSlope[i - 1]);
    }
  }

  /** Beside a place where a row does not depend on u slopes may be anything: keep to 0..1. */
  private static double part(double slope) {
    return Math.max(0, Math.min(1, slope));
  }

  private static double perRoot(double h, double root, double other) {
    double sum = root + Math.sqrt(other);
    return h / (sum * sum * root);
  }

  /** Error of a cell, s, and its next bend. */
  private double ofCell(PathRows path, TimingGrid grid, TwoPasses passes, int i) {
    double h = grid.step(i);
    double from = passes.x[i];
    double to = passes.x[i + 1];
    double bend = grid.bend[i];
    next[i] = bend;
    CellProgram program = passes.program;
    // Asking may move the rows to a longer array: the place first.
    int middlePlace = grid.middle(path, i);
    double cap = grid.rows.cap[middlePlace];
    double nextLow = passes.low[i + 1];
    double nextHigh = passes.high[i + 1];
    grid.loadHalf(program, i, 1);
    if (!program.highest(nextLow, nextHigh, cap)) {
      return TwoPasses.time(h, bend, from, to);
    }
    double middleHigh = program.x;
    program.lowest(nextLow, nextHigh, middleHigh);
    double middleLow = program.x;
    grid.loadHalf(program, i, 0);
    double high = passes.high[i];
    if (program.highest(middleLow, middleHigh, grid.cap(i))) {
      high = program.x;
    }
    double middle = program.reach(from, middleLow, middleHigh);
    grid.loadHalf(program, i, 1);
    double end = program.reach(middle, nextLow, nextHigh);
    double within =
        TwoPasses.time(h / 2, bend, from, middle)
            + TwoPasses.time(h / 2, bend, middle, end)
            - TwoPasses.time(h, bend, from, end);
    boolean braking = passes.onTop[i + 1] && passes.highSlope[i] != 0;
    double top = braking ? middleHigh : middle;
    double begin = braking ? high : from;
    tryBend(grid, passes, i, 2 * (begin - 2 * top + end) / (h * h));
    return FIRST_ORDER * Math.abs(end - to) * weight[i + 1]
        + FIRST_ORDER * Math.abs(high - passes.high[i]) * highWeight[i]
        + SECOND_ORDER * Math.abs(within);
  }

  /** Takes a bend as the next one of a cell if with it the cell is no slower, either way. */
  private void tryBend(TimingGrid grid, TwoPasses passes, int i, double wish) {
    double from = passes.x[i];
    double most = 0.5 * TwoPasses.mostBend(grid.step(i), from, passes.x[i + 1]);
    double old = grid.bend[i];
    grid.bend[i] = Math.min(wish, most);
    CellProgram program = passes.program;
    grid.load(program, i);
    boolean fits = program.highest(passes.low[i + 1], passes.high[i + 1], grid.cap(i));
    if (fits
        && program.x >= passes.high[i] * (1 - SLOWER)
        && program.reach(from, passes.low[i + 1], passes.high[i + 1])
            >= passes.x[i + 1] * (1 - SLOWER)) {
      next[i] = grid.bend[i];
    }
    grid.bend[i] = old;
  }

  /** Gives the cells the bends that the last estimate found. */
  void bend(TimingGrid grid) {
    System.arraycopy(next, 0, grid.bend, 0, grid.cells);
  }
}
