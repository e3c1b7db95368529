package io.github.holdpath.sim.motion.recorded;

/**
 * A curve in several dimensions as a quintic B-spline on even knots: four derivatives are
 * continuous, and each is the exact derivative of the one before (theory, eq. 6.1).
 *
 * <p>Coefficients lie side by side, {@code c[i * dimensions + d]}; cell k of the time axis uses
 * coefficients k to k + 5.
 */
final class QuinticCurve {
  /** Degree of the spline; coefficients that meet in one cell are one more. */
  static final int DEGREE = 5;

  private final double[] c;
  private final int dimensions;
  private final int cells;
  private final double step;

  /**
   * Takes the coefficients over; the caller must not change them afterwards.
   *
   * @param c coefficients, {@code (cells + 5) * dimensions}
   * @param dimensions of the curve
   * @param cells number of even cells
   * @param step length of a cell, s
   */
  QuinticCurve(double[] c, int dimensions, int cells, double step) {
    this.c = c;
    this.dimensions = dimensions;
    this.cells = cells;
    this.step = step;
  }

  /** Number of even cells of the time axis. */
  int cells() {
    return cells;
  }

  /** Length of a cell, s. */
  double step() {
    return step;
  }

  /** Cell that holds a time; the nearest one for times outside. */
  int cell(double time) {
    return cellOf(time, cells, step);
  }

  static int cellOf(double time, int cells, double step) {
    return Math.max(0, Math.min(cells - 1, (int) Math.floor(time / step)));
  }

  /**
   * Values of the six B-splines that live in a cell (eq. 6.2).
   *
   * @param u place in the cell, 0 to 1
   * @param b six values, overwritten
   */
  static void basis(double u, double[] b) {
    double v = 1 - u;
    double u2 = u * u;
    double v2 = v * v;
    b[0] = v2 * v2 * v / 120;
    b[1] = (26 + u * (-50 + u * (20 + u * (20 + u * (-20 + 5 * u))))) / 120;
    b[2] = (66 + u2 * (-60 + u2 * (30 - 10 * u))) / 120;
    b[3] = (66 + v2 * (-60 + v2 * (30 - 10 * v))) / 120;
    b[4] = (26 + v * (-50 + v * (20 + v * (20 + v * (-20 + 5 * v))))) / 120;
    b[5] = u2 * u2 * u / 120;
  }

  /**
   * Value, first and second derivative of one dimension; allocates nothing.
   *
   * @param d dimension
   * @param time s
   * @param out written at the three offsets that follow
   */
  void evaluate(int d, double time, double[] out, int value, int first, int second) {
    int k = cell(time);
    double u = time / step - k;
    int at = k * dimensions + d;
    double c0 = c[at];
    double c1 = c[at + dimensions];
    double c2 = c[at + 2 * dimensions];
    double c3 = c[at + 3 * dimensions];
    double c4 = c[at + 4 * dimensions];
    double c5 = c[at + 5 * dimensions];
    double a0 = (c0 + 26 * c1 + 66 * c2 + 26 * c3 + c4) / 120;
    double a1 = (-c0 - 10 * c1 + 10 * c3 + c4) / 24;
    double a2 = (c0 + 2 * c1 - 6 * c2 + 2 * c3 + c4) / 12;
    double a3 = (-c0 + 2 * c1 - 2 * c3 + c4) / 12;
    double a4 = (c0 - 4 * c1 + 6 * c2 - 4 * c3 + c4) / 24;
    double a5 = (-c0 + 5 * c1 - 10 * c2 + 10 * c3 - 5 * c4 + c5) / 120;
    out[value] = a0 + u * (a1 + u * (a2 + u * (a3 + u * (a4 + u * a5))));
    out[first] = (a1 + u * (2 * a2 + u * (3 * a3 + u * (4 * a4 + u * 5 * a5)))) / step;
    out[second] = (2 * a2 + u * (6 * a3 + u * (12 * a4 + u * 20 * a5))) / (step * step);
  }

  /** Third derivative of one dimension. */
  double third(int d, double time) {
    int k = cell(time);
    double u = time / step - k;
    int at = k * dimensions + d;
    double d0 = difference3(at);
    double d1 = difference3(at + dimensions);
    double d2 = difference3(at + 2 * dimensions);
    double v = 1 - u;
    double quadratic = (v * v * d0 + (1 + 2 * u * v) * d1 + u * u * d2) / 2;
    return quadratic / (step * step * step);
  }

  private double difference3(int at) {
    return c[at + 3 * dimensions] - 3 * c[at + 2 * dimensions] + 3 * c[at + dimensions] - c[at];
  }
}
