package io.github.holdpath.sim.timing;

import java.util.Arrays;

/**
 * Looks for limits broken between the ends of cells and gives the cells extra rows there (theory,
 * section 5.13). Each cell is looked at in 15 places between its ends, and at the crest of the
 * parabola through three neighbours, where it is above the limit.
 */
final class BetweenNodes {
  /** Parts of a cell. */
  static final int PARTS = 16;

  /** Part of a limit by which it may be broken; well below the 1e-6 that the result promises. */
  static final double BROKEN = 2e-7;

  /** Part of the terms of a row that its bound is at least taken to be, as a measure. */
  private static final double MEASURE = 1e-3;

  private int[] places = new int[0];
  private double[] over = new double[0];

  /** Whether cells were marked to be halved by the last look. */
  boolean marked;

  /** The cell marked last, and the row that is broken in it. */
  int markedCell;

  int markedRow;

  /** Begins a grid. */
  void begin(TimingGrid grid) {
    int needed = grid.cells * PARTS;
    if (places.length < needed) {
      places = new int[needed + needed / 2];
    }
    Arrays.fill(places, 0, needed, -1);
    int values = (PARTS + 1) * (grid.rows.rows + 1);
    if (over.length < values) {
      over = new double[values];
    }
  }

  /**
   * Looks at all cells.
   *
   * @param halveAbove part of a limit above which a cell is marked to be halved
   * @return whether all limits are kept
   */
  boolean look(PathRows path, TimingGrid grid, TwoPasses passes, double halveAbove) {
    marked = false;
    boolean kept = true;
    for (int i = 0; i < grid.cells; i++) {
      if (grid.step(i) > 0) {
        kept &= cell(path, grid, passes, i, halveAbove);
      }
    }
    return kept;
  }

  private boolean cell(PathRows path, TimingGrid grid, TwoPasses passes, int i, double halveAbove) {
    int rows = grid.rows.rows;
    int stride = rows + 1;
    double h = grid.step(i);
    double from = passes.x[i];
    double to = passes.x[i + 1];
    double u = (to - from) / (2 * h);
    for (int j = 0; j <= PARTS; j++) {
      double part = (double) j / PARTS;
      double x = grid.square(i, part * h, from, to);
      double here = u + grid.bend[i] * (part - 0.5) * h;
      measure(grid.rows, at(path, grid, i, j), here, x, j * stride);
    }
    boolean kept = true;
    for (int k = 0; k <= rows; k++) {
      for (int j = 1; j < PARTS; j++) {
        double before = over[(j - 1) * stride + k];
        double here = over[j * stride + k];
        double after = over[(j + 1) * stride + k];
        double bend = before - 2 * here + after;
        if (!(bend < 0)) {
          continue;
        }
        double crest = 0.5 * (before - after) / bend;
        boolean near = crest >= (j == 1 ? -1 : -0.5) && crest <= (j == PARTS - 1 ? 1 : 0.5);
        double peak = here - 0.25 * (before - after) * crest;
        if (near && peak > BROKEN) {
          kept = false;
          if (peak > halveAbove) {
            grid.split[i] = true;
            marked = true;
            markedCell = i;
            markedRow = k == rows ? CellProgram.CAP : k;
          } else {
            forbid(path, grid, i, (j + crest) / PARTS, k);
          }
        }
      }
    }
    return kept;
  }

  private int at(PathRows path, TimingGrid grid, int i, int j) {
    if (j == 0) {
      return grid.place[i];
    }
    if (j == PARTS) {
      return grid.place[i + 1];
    }
    int index = i * PARTS + j;
    if (places[index] < 0) {
      places[index] = grid.ask(path, i, (double) j / PARTS);
    }
    return places[index];
  }

  /** By what part of itself each row and the cap is broken at a place; negative where kept. */
  private void measure(RowStore store, int place, double u, double x, int out) {
    int rows = store.rows;
    int from = place * rows;
    for (int k = 0; k < rows; k++) {
      double au = store.a[from + k] * u;
      double bx = store.b[from + k] * x;
      double c = store.c[from + k];
      over[out + k] =
          (au + bx - c) / Math.max(Math.abs(c), MEASURE * (Math.abs(au) + Math.abs(bx)) + 1e-300);
    }
    double cap = store.cap[place];
    over[out + rows] = (x - cap) / Math.max(cap, Double.MIN_NORMAL);
  }

  private static void forbid(PathRows path, TimingGrid grid, int i, double part, int k) {
    RowStore store = grid.rows;
    int place = grid.ask(path, i, part);
    double t = part * grid.step(i);
    if (k == store.rows) {
      grid.addExtra(i, t, 0, 1, store.cap[place], CellProgram.CAP);
    } else {
      int at = place * store.rows + k;
      grid.addExtra(i, t, store.a[at], store.b[at], store.c[at], k);
    }
  }
}
