package io.github.holdpath.dynamics.margin;

/**
 * A second-order cone {@code s0 >= |(s1, ...)|} of three or four rows, as many as unknowns in it.
 * Vectors have four places, of which the last stays zero where there are three rows: short loops
 * cost more than the products that they would save.
 */
final class RoundCone extends Cone {
  private static final int ROWS = 4;

  private final int size;
  private final int[] on;

  /** {@code W^-1 R}, column by column. */
  private final double[] columns;

  /** Scale of W: {@code W' J W = beta^2 J}. */
  private double beta;

  private final double[] firstColumns;
  private final double[] firstSlack = new double[ROWS];
  private final double[] lambda = new double[ROWS];
  private final double[] slack = new double[ROWS];
  private final double[] dual = new double[ROWS];
  private final double[] aim = new double[ROWS];
  private final double[] ds = new double[ROWS];
  private final double[] dDual = new double[ROWS];

  /** {@code lambda0^2 - |lambda1|^2}. */
  private double inside;

  /**
   * A cone at a start inside it.
   *
   * @param rows R, square, row-major
   * @param on unknown of each column
   * @param z unknowns at the start
   */
  RoundCone(double[] rows, int[] on, double[] z) {
    this.size = on.length;
    this.on = on.clone();
    this.columns = new double[size * ROWS];
    this.firstColumns = new double[size * ROWS];
    for (int r = 0; r < size; r++) {
      for (int k = 0; k < size; k++) {
        firstColumns[k * ROWS + r] = rows[r * size + k];
        firstSlack[r] += rows[r * size + k] * z[on[k]];
      }
    }
    reset();
  }

  @Override
  void reset() {
    System.arraycopy(firstColumns, 0, columns, 0, columns.length);
    System.arraycopy(firstSlack, 0, slack, 0, ROWS);
    beta = 1;
    double per = slack[0] / det(slack);
    dual[0] = slack[0] * per;
    dual[1] = -slack[1] * per;
    dual[2] = -slack[2] * per;
    dual[3] = -slack[3] * per;
    rescale();
  }

  /** {@code v0^2 - |v1|^2} as a product, which keeps its digits near the border. */
  private static double det(double[] u) {
    double rest = Math.sqrt(u[1] * u[1] + u[2] * u[2] + u[3] * u[3]);
    return (u[0] - rest) * (u[0] + rest);
  }

  private static double dot(double[] u, double[] v) {
    return u[0] * v[0] + u[1] * v[1] + u[2] * v[2] + u[3] * v[3];
  }

  /** {@code u0 v0 - u1 v1 - ...}. */
  private static double mirrored(double[] u, double[] v) {
    return u[0] * v[0] - u[1] * v[1] - u[2] * v[2] - u[3] * v[3];
  }

  /** Scale of W: {@code W' J W = beta^2 J}. */
  double beta() {
    return beta;
  }

  @Override
  double gap() {
    return dot(lambda, lambda);
  }

  @Override
  void takeMultiplier(double[] residual) {
    for (int k = 0; k < size; k++) {
      residual[on[k]] -= column(k, lambda);
    }
  }

  private double column(int k, double[] u) {
    double[] c = columns;
    int at = k * ROWS;
    return c[at] * u[0] + c[at + 1] * u[1] + c[at + 2] * u[2] + c[at + 3] * u[3];
  }

  /** Square of the first column less x times the second and y times the third; of three rows. */
  double rest(double x, double y) {
    double[] c = columns;
    double a = c[0] - x * c[ROWS] - y * c[2 * ROWS];
    double b = c[1] - x * c[ROWS + 1] - y * c[2 * ROWS + 1];
    double d = c[2] - x * c[ROWS + 2] - y * c[2 * ROWS + 2];
    return a * a + b * b + d * d;
  }

  /** Product of two columns of {@code W^-1 R}. */
  double product(int i, int j) {
    double[] c = columns;
    int a = i * ROWS;
    int b = j * ROWS;
    return c[a] * c[b] + c[a + 1] * c[b + 1] + c[a + 2] * c[b + 2] + c[a + 3] * c[b + 3];
  }

  @Override
  void aim(double target, boolean corrector, double[] to) {
    double[] l = lambda;
    double[] r = aim;
    double r0 = target - dot(l, l);
    r[1] = -2 * l[0] * l[1];
    r[2] = -2 * l[0] * l[2];
    r[3] = -2 * l[0] * l[3];
    if (corrector) {
      r0 -= dot(ds, dDual);
      r[1] -= ds[0] * dDual[1] + dDual[0] * ds[1];
      r[2] -= ds[0] * dDual[2] + dDual[0] * ds[2];
      r[3] -= ds[0] * dDual[3] + dDual[0] * ds[3];
    }
    double first = (l[0] * r0 - l[1] * r[1] - l[2] * r[2] - l[3] * r[3]) / inside;
    double per = 1 / l[0];
    r[0] = first;
    r[1] = (r[1] - first * l[1]) * per;
    r[2] = (r[2] - first * l[2]) * per;
    r[3] = (r[3] - first * l[3]) * per;
    for (int k = 0; k < size; k++) {
      to[on[k]] += column(k, r);
    }
  }

  @Override
  void step(double[] dz) {
    double[] c = columns;
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    for (int k = 0; k < size; k++) {
      double d = dz[on[k]];
      int at = k * ROWS;
      s0 += c[at] * d;
      s1 += c[at + 1] * d;
      s2 += c[at + 2] * d;
      s3 += c[at + 3] * d;
    }
    ds[0] = s0;
    ds[1] = s1;
    ds[2] = s2;
    ds[3] = s3;
    dDual[0] = aim[0] - s0;
    dDual[1] = aim[1] - s1;
    dDual[2] = aim[2] - s2;
    dDual[3] = aim[3] - s3;
  }

  @Override
  double longest(double most) {
    return Math.min(most, Math.min(border(ds), border(dDual)));
  }

  private double border(double[] u) {
    double b = mirrored(lambda, u);
    // Negative by rounding alone, where u is parallel to lambda.
    double root = Math.max(0, b * b - mirrored(u, u) * inside);
    double way = Math.sqrt(root) - b;
    return way > 0 ? inside / way : Double.POSITIVE_INFINITY;
  }

  @Override
  void advance(double part) {
    for (int r = 0; r < ROWS; r++) {
      slack[r] = lambda[r] + part * ds[r];
      dual[r] = lambda[r] + part * dDual[r];
    }
    rescale();
  }

  /**
   * lambda = W dual = W^-1 slack for slack and multiplier in the scaling so far, with {@code W = b
   * (2 v v' - J)}.
   */
  private void rescale() {
    double sNorm = Math.sqrt(det(slack));
    double zNorm = Math.sqrt(det(dual));
    double perS = 1 / sNorm;
    double perZ = 1 / zNorm;
    double perGamma = 1 / Math.sqrt(2 * (1 + dot(slack, dual) * perS * perZ));
    double b = Math.sqrt(sNorm * perZ);
    double first = (slack[0] * perS + dual[0] * perZ) * perGamma + 1;
    double perRoot = 1 / Math.sqrt(2 * first);
    double side = perGamma * perRoot;
    double v0 = first * perRoot;
    double v1 = (slack[1] * perS - dual[1] * perZ) * side;
    double v2 = (slack[2] * perS - dual[2] * perZ) * side;
    double v3 = (slack[3] * perS - dual[3] * perZ) * side;
    double twice = 2 * (v0 * dual[0] + v1 * dual[1] + v2 * dual[2] + v3 * dual[3]);
    lambda[0] = b * (v0 * twice - dual[0]);
    lambda[1] = b * (v1 * twice + dual[1]);
    lambda[2] = b * (v2 * twice + dual[2]);
    lambda[3] = b * (v3 * twice + dual[3]);
    inside = sNorm * zNorm;
    double perB = 1 / b;
    double[] c = columns;
    for (int at = 0; at < c.length; at += ROWS) {
      double w = 2 * (v0 * c[at] - v1 * c[at + 1] - v2 * c[at + 2] - v3 * c[at + 3]);
      c[at] = (v0 * w - c[at]) * perB;
      c[at + 1] = (c[at + 1] - v1 * w) * perB;
      c[at + 2] = (c[at + 2] - v2 * w) * perB;
      c[at + 3] = (c[at + 3] - v3 * w) * perB;
    }
    beta *= b;
  }
}
