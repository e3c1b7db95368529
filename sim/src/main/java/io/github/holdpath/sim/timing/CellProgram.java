package io.github.holdpath.sim.timing;

import java.util.Arrays;

/**
 * The linear program of one cell of the path in two unknowns: the squared rate x at its begin and
 * the mean acceleration u within it (theory, eq. 5.54). Every row is solved for u: {@code u <= p -
 * q x} for upper rows, {@code u >= p - q x} for lower ones, so that the least upper row less the
 * largest lower one is a concave function of x, and its zeros are found by following lines.
 */
final class CellProgram {
  /** Stands for the bound by what the next cell takes. */
  static final int NEXT = -1;

  /** Stands for the bound by the cap. */
  static final int CAP = -2;

  /** Part of a row's bound by which rounding may break it when rates are followed forwards. */
  private static final double ROUNDING = 1e-12;

  private double[] upP = new double[0];
  private double[] upQ = new double[0];
  private int[] upRow = new int[0];
  private double[] lowP = new double[0];
  private double[] lowQ = new double[0];
  private int[] lowRow = new int[0];
  private int ups;
  private int lows;
  private double top;
  private int topRow;
  private double bottom;
  private int bottomRow;
  private double h;
  private double half;
  private double bend;
  private double upP1;
  private double upQ1;
  private double lowP1;
  private double lowQ1;

  /** The last answer. */
  double x;

  /** The upper row that was the least where the last answer is, or {@link #NEXT}. */
  int upper;

  /** The lower row that was the largest there, or {@link #NEXT}. */
  int lower;

  /** How the last answer changes with what the next cell takes, dimensionless. */
  double slope;

  /**
   * Begins a cell without rows.
   *
   * @param h its length, in the unit of s
   * @param bend how much u grows by s within it, 1/s^2
   * @param room about how many rows will come
   */
  void begin(double h, double bend, int room) {
    this.h = h;
    this.bend = bend;
    if (upP.length < room) {
      upP = new double[room];
      upQ = new double[room];
      upRow = new int[room];
      lowP = new double[room];
      lowQ = new double[room];
      lowRow = new int[room];
    }
    ups = 0;
    lows = 0;
    top = Double.POSITIVE_INFINITY;
    topRow = CAP;
    bottom = 0;
    bottomRow = CAP;
    half = 1 / (2 * h);
  }

  /** Adds the rows of a place, t behind the begin of the cell. */
  void place(RowStore rows, int place, double t) {
    int from = place * rows.rows;
    double ofU = bend * (t - 0.5 * h);
    double ofX = bend * t * (t - h);
    for (int k = 0; k < rows.rows; k++) {
      double a = rows.a[from + k];
      double b = rows.b[from + k];
      row(a + 2 * t * b, b, rows.c[from + k] - ofU * a - ofX * b, k);
    }
  }

  /** Adds {@code alpha u + beta x <= gamma}. */
  void row(double alpha, double beta, double gamma, int name) {
    if (alpha > Double.MIN_NORMAL) {
      grow();
      double inverse = 1 / alpha;
      upP[ups] = gamma * inverse;
      upQ[ups] = beta * inverse;
      upRow[ups++] = name;
    } else if (alpha < -Double.MIN_NORMAL) {
      grow();
      double inverse = 1 / alpha;
      lowP[lows] = gamma * inverse;
      lowQ[lows] = beta * inverse;
      lowRow[lows++] = name;
    } else if (beta > 0) {
      if (gamma < top * beta) {
        top = gamma / beta;
        topRow = name;
      }
    } else if (beta < 0) {
      if (gamma < bottom * beta) {
        bottom = gamma / beta;
        bottomRow = name;
      }
    } else if (gamma < 0) {
      top = Double.NEGATIVE_INFINITY;
      topRow = name;
    }
  }

  private void grow() {
    if (Math.max(ups, lows) == upP.length) {
      int room = 2 * upP.length + 8;
      upP = Arrays.copyOf(upP, room);
      upQ = Arrays.copyOf(upQ, room);
      upRow = Arrays.copyOf(upRow, room);
      lowP = Arrays.copyOf(lowP, room);
      lowQ = Arrays.copyOf(lowQ, room);
      lowRow = Arrays.copyOf(lowRow, room);
    }
  }

  /**
   * The highest x from which the next cell's interval can be reached. It begins at the cap and goes
   * down to where the two rows that contradict each other meet, until none do: a Newton iteration,
   * which on straight pieces ends.
   *
   * @return whether there is one; it is in {@link #x}
   */
  boolean highest(double nextLow, double nextHigh, double cap) {
    x = Math.min(cap, top);
    slope = 0;
    while (gap(nextLow, nextHigh) < 0) {
      double turn = upQ1 - lowQ1;
      if (!(turn > 0)) {
        return false;
      }
      double crossing = (upP1 - lowP1) / turn;
      if (!(crossing < x)) {
        break;
      }
      x = crossing;
      slope = upper == NEXT ? half / turn : 0;
    }
    return x >= bottom;
  }

  /**
   * The lowest x from which the next cell's interval can be reached, given that there is one; it is
   * in {@link #x}.
   */
  void lowest(double nextLow, double nextHigh, double highest) {
    x = bottom;
    while (gap(nextLow, nextHigh) < 0) {
      double turn = upQ1 - lowQ1;
      double crossing = (upP1 - lowP1) / turn;
      if (!(turn < 0 && crossing > x)) {
        break;
      }
      x = crossing;
    }
    x = Math.min(x, highest);
  }

  /** Least upper row less largest lower one at x; both are remembered. */
  private double gap(double nextLow, double nextHigh) {
    double at = x;
    int up = NEXT;
    double least = (nextHigh - at) * half;
    for (int k = 0; k < ups; k++) {
      double u = upP[k] - upQ[k] * at;
      if (u < least) {
        least = u;
        up = k;
      }
    }
    int low = NEXT;
    double largest = (nextLow - at) * half;
    for (int k = 0; k < lows; k++) {
      double u = lowP[k] - lowQ[k] * at;
      if (u > largest) {
        largest = u;
        low = k;
      }
    }
    upper = up == NEXT ? NEXT : upRow[up];
    upP1 = up == NEXT ? nextHigh * half : upP[up];
    upQ1 = up == NEXT ? half : upQ[up];
    lower = low == NEXT ? NEXT : lowRow[low];
    lowP1 = low == NEXT ? nextLow * half : lowP[low];
    lowQ1 = low == NEXT ? half : lowQ[low];
    return least - largest;
  }

  /**
   * The largest x that can be reached at the end of the cell.
   *
   * @param from x at its begin
   */
  double reach(double from, double nextLow, double nextHigh) {
    double least = (nextHigh - from) * half;
    upper = NEXT;
    slope = 0;
    for (int k = 0; k < ups; k++) {
      // Where a row hardly depends on u, rounding alone could turn u about: give way to it.
      double u = upP[k] + ROUNDING * Math.abs(upP[k]) - upQ[k] * from;
      if (u < least) {
        least = u;
        upper = upRow[k];
        slope = 1 - upQ[k] / half;
      }
    }
    return Math.max(nextLow, Math.min(nextHigh, from + least / half));
  }

  /** The row that leaves no x at all, after {@link #highest} found none. */
  int hinders() {
    if (top < bottom) {
      return bottomRow == CAP ? topRow : bottomRow;
    }
    return lower == NEXT ? upper : lower;
  }
}
