package io.github.holdpath.sim.timing;

/** Rows written out by a test; row k is called "row k", the cap "cap". */
record RowsOf(double length, double[] starts, int rows, Fill fill) implements PathRows {
  /** Writes the rows of a place and gives its cap. */
  interface Fill {
    double at(int piece, double s, double[] a, double[] b, double[] c, int offset);
  }

  /** A straight way with limits of acceleration both ways and of speed. */
  static RowsOf straight(double length, double up, double down, double speed) {
    return new RowsOf(
        length,
        new double[] {0},
        2,
        (piece, s, a, b, c, o) -> {
          set(a, b, c, o, 1, 0, up);
          set(a, b, c, o + 1, -1, 0, down);
          return speed * speed;
        });
  }

  /**
   * A region of (u, x), the same everywhere, by chords between points of its border, from the
   * lowest u to the highest, round by the largest x.
   */
  static RowsOf region(double length, double[] u, double[] x, double speed) {
    return new RowsOf(
        length,
        new double[] {0},
        u.length - 1,
        (piece, s, a, b, c, o) -> {
          for (int k = 0; k + 1 < u.length; k++) {
            double across = x[k] - x[k + 1];
            double along = u[k + 1] - u[k];
            set(a, b, c, o + k, across, along, across * u[k] + along * x[k]);
          }
          return speed * speed;
        });
  }

  static void set(
      double[] a, double[] b, double[] c, int row, double ofU, double ofX, double bound) {
    a[row] = ofU;
    b[row] = ofX;
    c[row] = bound;
  }

  @Override
  public int pieces() {
    return starts.length;
  }

  @Override
  public double start(int piece) {
    return starts[piece];
  }

  @Override
  public double at(int piece, double s, double[] a, double[] b, double[] c, int offset) {
    return fill.at(piece, s, a, b, c, offset);
  }

  @Override
  public String name(int row) {
    return "row " + row;
  }

  @Override
  public String capName(int piece, double s) {
    return "cap";
  }
}
