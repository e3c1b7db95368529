package io.github.holdpath.dynamics.margin;

/**
 * Unknowns, slacks and multipliers of one patch inside {@link ConeSolver}, with the scaling of
 * Nesterov and Todd and the patch's own elimination.
 */
final class Block {
  /** Sizes of the cones. */
  final int[] cones;

  private final double[] a;
  private final int rank;
  private final int n;
  private final int m;
  private final int width;

  private final double[] z;
  private final double[] lambda;
  private final double[] scaled;
  private final double[] slack;
  private final double[] dual;
  private final double[] hessian;
  private final double[] solved;
  private final double[] v = new double[4];
  private final double[] residual;
  private final double[] aim;
  private final double[] side;
  private final double[] dz;
  private final double[] ds;
  private final double[] dDual;

  Block(ConePatch patch, double[] a, int rank) {
    this.cones = patch.cones;
    this.a = a;
    this.rank = rank;
    this.n = patch.size;
    this.m = patch.rows;
    this.width = n + 1;
    this.z = patch.start.clone();
    this.lambda = new double[m];
    this.scaled = new double[m * width];
    this.slack = new double[m];
    this.dual = new double[m];
    this.hessian = new double[n * n];
    this.solved = new double[rank * n];
    this.residual = new double[n];
    this.aim = new double[m];
    this.side = new double[n];
    this.dz = new double[n];
    this.ds = new double[m];
    this.dDual = new double[m];
    start(patch);
  }

  /** Slacks of the start, and multipliers whose product with them is one in every cone. */
  private void start(ConePatch patch) {
    for (int r = 0; r < m; r++) {
      slack[r] = patch.h[r];
      for (int k = 0; k < n; k++) {
        slack[r] -= patch.g[r * n + k] * z[k];
        scaled[r * width + k] = patch.g[r * n + k];
      }
      scaled[r * width + n] = patch.h[r];
    }
    int at = 0;
    for (int c : cones) {
      double det = det(slack, at, c);
      dual[at] = slack[at] / det;
      for (int k = 1; k < c; k++) {
        dual[at + k] = -slack[at + k] / det;
      }
      at += c;
    }
    rescale();
  }

  /** {@code v0^2 - |v1|^2} of a cone, as a product, which keeps its digits near the border. */
  private static double det(double[] v, int at, int c) {
    double rest = 0;
    for (int k = 1; k < c; k++) {
      rest += v[at + k] * v[at + k];
    }
    rest = Math.sqrt(rest);
    return (v[at] - rest) * (v[at] + rest);
  }

  /** Adds A z to the balance and refreshes the dual residual A'y + G'dual. */
  void residuals(double[] y, double[] balance) {
    addUnknowns(z, balance);
    for (int k = 0; k < n; k++) {
      double sum = 0;
      for (int r = 0; r < rank; r++) {
        sum += a[r * n + k] * y[r];
      }
      for (int r = 0; r < m; r++) {
        sum += scaled[r * width + k] * lambda[r];
      }
      residual[k] = sum;
    }
  }

  private void addUnknowns(double[] of, double[] sums) {
    for (int r = 0; r < rank; r++) {
      for (int k = 0; k < n; k++) {
        sums[r] += a[r * n + k] * of[k];
      }
    }
  }

  double dualResidual() {
    double worst = 0;
    for (double r : residual) {
      worst = Math.max(worst, Math.abs(r));
    }
    return worst;
  }

  double gap() {
    double sum = 0;
    for (double l : lambda) {
      sum += l * l;
    }
    return sum;
  }

  /** h'dual: this patch's part of the dual's value. */
  double sideValue() {
    double sum = 0;
    for (int r = 0; r < m; r++) {
      sum += scaled[r * width + n] * lambda[r];
    }
    return sum;
  }

  /** Eliminates the patch's unknowns and adds its part to the balance's matrix. */
  void factorise(double[] schur) {
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        for (int r = 0; r < m; r++) {
          sum += scaled[r * width + i] * scaled[r * width + j];
        }
        hessian[i * n + j] = sum;
      }
    }
    ConeSolver.choleskyInPlace(hessian, n);
    System.arraycopy(a, 0, solved, 0, rank * n);
    for (int r = 0; r < rank; r++) {
      ConeSolver.solveLower(hessian, n, solved, r * n);
    }
    for (int i = 0; i < rank; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        for (int k = 0; k < n; k++) {
          sum += solved[i * n + k] * solved[j * n + k];
        }
        schur[i * rank + j] += sum;
      }
    }
  }

  /**
   * Nesterov-Todd scaling W of the slacks and multipliers, which are given in the scaling of the
   * step before: lambda = W dual = W^-1 slack, and W^-1 goes into the rows of G and h. Composing
   * scalings so keeps the digits that slacks near the border would lose.
   */
  private void rescale() {
    int at = 0;
    for (int c : cones) {
      if (c == 1) {
        lambda[at] = Math.sqrt(slack[at] * dual[at]);
        double w = Math.sqrt(slack[at] / dual[at]);
        for (int k = 0; k < width; k++) {
          scaled[at * width + k] /= w;
        }
      } else {
        rescaleCone(at, c);
      }
      at += c;
    }
  }

  /** One cone: W = beta (2 v v' - J). */
  private void rescaleCone(int at, int c) {
    double sNorm = Math.sqrt(det(slack, at, c));
    double zNorm = Math.sqrt(det(dual, at, c));
    double dot = 0;
    for (int k = 0; k < c; k++) {
      dot += slack[at + k] / sNorm * (dual[at + k] / zNorm);
    }
    double gamma = 2 * Math.sqrt((1 + dot) / 2);
    double beta = Math.sqrt(sNorm / zNorm);
    double first = (slack[at] / sNorm + dual[at] / zNorm) / gamma + 1;
    double root = Math.sqrt(2 * first);
    v[0] = first / root;
    double vz = v[0] * dual[at];
    for (int k = 1; k < c; k++) {
      v[k] = (slack[at + k] / sNorm - dual[at + k] / zNorm) / gamma / root;
      vz += v[k] * dual[at + k];
    }
    for (int k = 0; k < c; k++) {
      lambda[at + k] = beta * (2 * v[k] * vz - (k == 0 ? dual[at] : -dual[at + k]));
    }
    for (int col = 0; col < width; col++) {
      double vg = v[0] * scaled[at * width + col];
      for (int k = 1; k < c; k++) {
        vg -= v[k] * scaled[(at + k) * width + col];
      }
      scaled[at * width + col] = (2 * v[0] * vg - scaled[at * width + col]) / beta;
      for (int k = 1; k < c; k++) {
        int cell = (at + k) * width + col;
        scaled[cell] = (scaled[cell] - 2 * v[k] * vg) / beta;
      }
    }
  }

  /** Right side of the step; adds this patch's part to the balance's. */
  void prepare(double target, boolean corrector, double[] towards) {
    int at = 0;
    for (int c : cones) {
      aimCone(at, c, target, corrector);
      at += c;
    }
    for (int k = 0; k < n; k++) {
      double sum = -residual[k];
      for (int r = 0; r < m; r++) {
        sum -= scaled[r * width + k] * aim[r];
      }
      side[k] = sum;
    }
    System.arraycopy(side, 0, dz, 0, n);
    ConeSolver.solveLower(hessian, n, dz, 0);
    for (int r = 0; r < rank; r++) {
      double sum = 0;
      for (int k = 0; k < n; k++) {
        sum += solved[r * n + k] * dz[k];
      }
      towards[r] += sum;
    }
  }

  /** aim = lambda \ (target e - lambda o lambda - affine product), for one cone. */
  private void aimCone(int at, int c, double target, boolean corrector) {
    double r0 = target;
    for (int k = 0; k < c; k++) {
      r0 -= lambda[at + k] * lambda[at + k];
      if (corrector) {
        r0 -= ds[at + k] * dDual[at + k];
      }
    }
    double[] r = aim;
    for (int k = 1; k < c; k++) {
      r[at + k] = -2 * lambda[at] * lambda[at + k];
      if (corrector) {
        r[at + k] -= ds[at] * dDual[at + k] + dDual[at] * ds[at + k];
      }
    }
    double u0 = lambda[at] * r0;
    for (int k = 1; k < c; k++) {
      u0 -= lambda[at + k] * r[at + k];
    }
    u0 /= c == 1 ? lambda[at] * lambda[at] : det(lambda, at, c);
    for (int k = 1; k < c; k++) {
      r[at + k] = (r[at + k] - u0 * lambda[at + k]) / lambda[at];
    }
    r[at] = u0;
  }

  /** Step of the unknowns for a step of the balance's multipliers; slacks and duals scaled. */
  void step(double[] dy) {
    for (int k = 0; k < n; k++) {
      double sum = side[k];
      for (int r = 0; r < rank; r++) {
        sum -= a[r * n + k] * dy[r];
      }
      dz[k] = sum;
    }
    ConeSolver.solveCholesky(hessian, n, dz);
    for (int r = 0; r < m; r++) {
      double sum = 0;
      for (int k = 0; k < n; k++) {
        sum += scaled[r * width + k] * dz[k];
      }
      ds[r] = -sum;
      dDual[r] = aim[r] + sum;
    }
  }

  /** Adds A times the step of the unknowns. */
  void addStep(double[] sum) {
    addUnknowns(dz, sum);
  }

  /** Longest step up to {@code most} that stays in the cones. */
  double longest(double most) {
    double step = most;
    int at = 0;
    for (int c : cones) {
      step = Math.min(step, border(at, c, ds));
      step = Math.min(step, border(at, c, dDual));
      at += c;
    }
    return step;
  }

  private double border(int at, int c, double[] u) {
    if (c == 1) {
      return u[at] < 0 ? -lambda[at] / u[at] : Double.POSITIVE_INFINITY;
    }
    double b = lambda[at] * u[at];
    for (int k = 1; k < c; k++) {
      b -= lambda[at + k] * u[at + k];
    }
    double inside = det(lambda, at, c);
    double root = b * b - det(u, at, c) * inside;
    double way = root >= 0 ? Math.sqrt(root) - b : -b;
    return root >= 0 && way > 0 ? inside / way : Double.POSITIVE_INFINITY;
  }

  void advance(double step) {
    for (int k = 0; k < n; k++) {
      z[k] += step * dz[k];
    }
    for (int r = 0; r < m; r++) {
      slack[r] = lambda[r] + step * ds[r];
      dual[r] = lambda[r] + step * dDual[r];
    }
    rescale();
  }
}
