package io.github.holdpath.dynamics.margin;

/**
 * A second-order cone {@code s0 >= |(s1, ...)|} of three or four rows, as many as unknowns in it.
 */
final class RoundCone extends Cone {
  private final int size;
  private final int[] on;

  /** {@code W^-1 R}, row-major. */
  private final double[] rows;

  private double beta;

  private final double[] firstRows;
  private final double[] firstSlack;
  private final double[] lambda;
  private final double[] slack;
  private final double[] dual;
  private final double[] aim;
  private final double[] ds;
  private final double[] dDual;
  private final double[] v;

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
    this.firstRows = rows.clone();
    this.rows = new double[rows.length];
    this.lambda = new double[size];
    this.slack = new double[size];
    this.dual = new double[size];
    this.aim = new double[size];
    this.ds = new double[size];
    this.dDual = new double[size];
    this.v = new double[size];
    this.firstSlack = new double[size];
    for (int r = 0; r < size; r++) {
      for (int k = 0; k < size; k++) {
        firstSlack[r] += rows[r * size + k] * z[on[k]];
      }
    }
    reset();
  }

  @Override
  void reset() {
    System.arraycopy(firstRows, 0, rows, 0, rows.length);
    System.arraycopy(firstSlack, 0, slack, 0, size);
    beta = 1;
    double det = det(slack);
    dual[0] = slack[0] / det;
    for (int k = 1; k < size; k++) {
      dual[k] = -slack[k] / det;
    }
    rescale();
  }

  /** Scale of W: {@code W' J W = beta^2 J}. */
  double beta() {
    return beta;
  }

  /** {@code v0^2 - |v1|^2} as a product, which keeps its digits near the border. */
  private double det(double[] u) {
    double rest = 0;
    for (int k = 1; k < size; k++) {
      rest += u[k] * u[k];
    }
    rest = Math.sqrt(rest);
    return (u[0] - rest) * (u[0] + rest);
  }

  @Override
  double gap() {
    double sum = 0;
    for (double l : lambda) {
      sum += l * l;
    }
    return sum;
  }

  @Override
  double sideValue() {
    return 0;
  }

  @Override
  void takeMultiplier(double[] residual) {
    for (int k = 0; k < size; k++) {
      residual[on[k]] -= column(k, lambda);
    }
  }

  private double column(int k, double[] u) {
    double sum = 0;
    for (int r = 0; r < size; r++) {
      sum += rows[r * size + k] * u[r];
    }
    return sum;
  }

  /** Square of the first column less x times the second and y times the third. */
  double rest(double x, double y) {
    double sum = 0;
    for (int r = 0; r < 3; r++) {
      double left = rows[3 * r] - x * rows[3 * r + 1] - y * rows[3 * r + 2];
      sum += left * left;
    }
    return sum;
  }

  /** Product of two columns of {@code W^-1 R}. */
  double product(int i, int j) {
    double sum = 0;
    for (int r = 0; r < size; r++) {
      sum += rows[r * size + i] * rows[r * size + j];
    }
    return sum;
  }

  @Override
  void aim(double target, boolean corrector, double[] to) {
    double r0 = target;
    for (int k = 0; k < size; k++) {
      r0 -= lambda[k] * lambda[k];
      if (corrector) {
        r0 -= ds[k] * dDual[k];
      }
    }
    double u0 = lambda[0] * r0;
    for (int k = 1; k < size; k++) {
      aim[k] = -2 * lambda[0] * lambda[k];
      if (corrector) {
        aim[k] -= ds[0] * dDual[k] + dDual[0] * ds[k];
      }
      u0 -= lambda[k] * aim[k];
    }
    u0 /= det(lambda);
    double perFirst = 1 / lambda[0];
    for (int k = 1; k < size; k++) {
      aim[k] = (aim[k] - u0 * lambda[k]) * perFirst;
    }
    aim[0] = u0;
    for (int k = 0; k < size; k++) {
      to[on[k]] += column(k, aim);
    }
  }

  @Override
  void step(double[] dz) {
    for (int r = 0; r < size; r++) {
      double sum = 0;
      for (int k = 0; k < size; k++) {
        sum += rows[r * size + k] * dz[on[k]];
      }
      ds[r] = sum;
      dDual[r] = aim[r] - sum;
    }
  }

  @Override
  double longest(double most) {
    double inside = det(lambda);
    return Math.min(most, Math.min(border(ds, inside), border(dDual, inside)));
  }

  private double border(double[] u, double inside) {
    double b = lambda[0] * u[0];
    for (int k = 1; k < size; k++) {
      b -= lambda[k] * u[k];
    }
    // Negative by rounding alone, where u is parallel to lambda.
    double root = Math.max(0, b * b - det(u) * inside);
    double way = Math.sqrt(root) - b;
    return way > 0 ? inside / way : Double.POSITIVE_INFINITY;
  }

  @Override
  void advance(double step) {
    for (int r = 0; r < size; r++) {
      slack[r] = lambda[r] + step * ds[r];
      dual[r] = lambda[r] + step * dDual[r];
    }
    rescale();
  }

  /** lambda = W dual = W^-1 slack for slack and multiplier in the scaling so far. */
  private void rescale() {
    // W = b (2 v v' - J)
    double sNorm = Math.sqrt(det(slack));
    double zNorm = Math.sqrt(det(dual));
    double perS = 1 / sNorm;
    double perZ = 1 / zNorm;
    double dot = 0;
    for (int k = 0; k < size; k++) {
      dot += slack[k] * dual[k];
    }
    double perGamma = 1 / Math.sqrt(2 * (1 + dot * perS * perZ));
    double b = Math.sqrt(sNorm * perZ);
    double first = (slack[0] * perS + dual[0] * perZ) * perGamma + 1;
    double perRoot = 1 / Math.sqrt(2 * first);
    v[0] = first * perRoot;
    double vz = v[0] * dual[0];
    for (int k = 1; k < size; k++) {
      v[k] = (slack[k] * perS - dual[k] * perZ) * perGamma * perRoot;
      vz += v[k] * dual[k];
    }
    lambda[0] = b * (2 * v[0] * vz - dual[0]);
    for (int k = 1; k < size; k++) {
      lambda[k] = b * (2 * v[k] * vz + dual[k]);
    }
    double perB = 1 / b;
    for (int col = 0; col < size; col++) {
      double vg = v[0] * rows[col];
      for (int k = 1; k < size; k++) {
        vg -= v[k] * rows[k * size + col];
      }
      rows[col] = (2 * v[0] * vg - rows[col]) * perB;
      for (int k = 1; k < size; k++) {
        int cell = k * size + col;
        rows[cell] = (rows[cell] - 2 * v[k] * vg) * perB;
      }
    }
    beta *= b;
  }
}
