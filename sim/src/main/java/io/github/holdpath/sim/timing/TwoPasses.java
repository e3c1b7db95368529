package io.github.holdpath.sim.timing;

/**
 * The two passes over a grid (theory, section 5.13). Backwards: from which squared rates x of each
 * node can the end still be reached within all limits? They are an interval, {@link #low} to {@link
 * #high}. Forwards: the largest x in it that the node before can reach.
 */
final class TwoPasses {
  /** Part by which a start may be above what the end permits, as rounding. */
  private static final double ROUNDING = 1e-12;

  /** Below this the third term of the series of eq. 5.55 is rounding: 1e-5 cubed. */
  private static final double SERIES = 1e-5;

  /** With 1 x could touch 0 within the cell (theory, section 5.13). */
  private static final double CLEAR = 0.8;

  final CellProgram program = new CellProgram();
  double[] low = new double[0];
  double[] high = new double[0];
  double[] x = new double[0];

  /** How high at a node changes with high at the next. */
  double[] highSlope = new double[0];

  /** How x at a node changes with x at the node before. */
  double[] slope = new double[0];

  /** Whether x of a node is as high as the end permits, not what the node before can reach. */
  boolean[] onTop = new boolean[0];

  /** The cell without a way through, after a pass failed; -1 where a start or end is too fast. */
  int blocked;

  /** Node at which it failed. */
  int place;

  /** Row that hindered, or {@link CellProgram#CAP}. */
  int row;

  /**
   * Runs both.
   *
   * @param first x at the start
   * @param last x at the end
   * @return whether there is a timing
   */
  boolean run(TimingGrid grid, double first, double last) {
    int n = grid.cells;
    reserve(n + 1);
    if (last > grid.cap(n)) {
      return fail(-1, n, CellProgram.CAP);
    }
    low[n] = last;
    high[n] = last;
    for (int i = n - 1; i >= 0; i--) {
      if (!back(grid, i)) {
        return false;
      }
    }
    if (first > high[0] * (1 + ROUNDING)) {
      return failAbove(grid);
    }
    if (first < low[0] * (1 - ROUNDING)) {
      return failCell(grid, 0, false);
    }
    x[0] = first;
    onTop[0] = false;
    for (int i = 0; i < n; i++) {
      forth(grid, i);
    }
    return true;
  }

  private boolean back(TimingGrid grid, int i) {
    if (grid.step(i) == 0) {
      high[i] = Math.min(high[i + 1], grid.cap(i));
      low[i] = low[i + 1];
      highSlope[i] = high[i] == high[i + 1] ? 1 : 0;
      return low[i] <= high[i] || fail(i, i, CellProgram.CAP);
    }
    grid.load(program, i);
    if (!program.highest(low[i + 1], high[i + 1], grid.cap(i))) {
      return fail(i, i, program.hinders());
    }
    high[i] = program.x;
    highSlope[i] = program.slope;
    program.lowest(low[i + 1], high[i + 1], high[i]);
    low[i] = program.x;
    return true;
  }

  private void forth(TimingGrid grid, int i) {
    if (grid.step(i) == 0) {
      x[i + 1] = Math.min(x[i], high[i + 1]);
      slope[i + 1] = 1;
      onTop[i + 1] = false;
      return;
    }
    grid.load(program, i);
    x[i + 1] = program.reach(x[i], low[i + 1], high[i + 1]);
    onTop[i + 1] = program.upper == CellProgram.NEXT;
    slope[i + 1] = program.slope;
  }

  /** A start too high: what bounds it is the first node whose highest x is its own. */
  private boolean failAbove(TimingGrid grid) {
    int node = 0;
    while (node < grid.cells && highSlope[node] != 0) {
      node++;
    }
    if (node == grid.cells) {
      // Braking alone, all the way from the start to the end.
      return failCell(grid, 0, true);
    }
    return high[node] == grid.cap(node)
        ? fail(-1, node, CellProgram.CAP)
        : failCell(grid, node, true);
  }

  /** Names the row that bounds the highest or lowest x at the begin of a cell. */
  private boolean failCell(TimingGrid grid, int cell, boolean above) {
    grid.load(program, cell);
    boolean some = program.highest(low[cell + 1], high[cell + 1], grid.cap(cell));
    if (!above && some) {
      program.lowest(low[cell + 1], high[cell + 1], program.x);
      return fail(-1, cell, program.upper == CellProgram.NEXT ? program.lower : program.upper);
    }
    return fail(-1, cell, program.hinders());
  }

  private boolean fail(int cell, int node, int name) {
    blocked = cell;
    place = node;
    row = name;
    return false;
  }

  private void reserve(int nodes) {
    if (nodes > x.length) {
      int room = nodes + nodes / 2 + 16;
      low = new double[room];
      high = new double[room];
      x = new double[room];
      highSlope = new double[room];
      slope = new double[room];
      onTop = new boolean[room];
    }
  }

  /**
   * Time taken by a cell (theory, eq. 5.55), s; infinite where it would stand still.
   *
   * @param h its length, in the unit of s
   * @param bend how much the acceleration grows by s within it, 1/s^2
   * @param from squared rate at its begin
   * @param to squared rate at its end
   */
  static double time(double h, double bend, double from, double to) {
    if (h == 0) {
      return 0;
    }
    double y = h / (Math.sqrt(from) + Math.sqrt(to));
    double z = bend * y * y;
    if (Math.abs(z) < SERIES) {
      return 2 * y * (1 + z / 3 + z * z / 5);
    }
    double root = Math.sqrt(Math.abs(z));
    double part = z < 0 ? Math.atan(root) : 0.5 * Math.log((1 + root) / (1 - root));
    return 2 * y * part / root;
  }

  /** Largest bend with which x stays clear of 0 within a cell, for these rates at its ends. */
  static double mostBend(double h, double from, double to) {
    return CLEAR * Math.max(from, to) / (h * h);
  }
}
