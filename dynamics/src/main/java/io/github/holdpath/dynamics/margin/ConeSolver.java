package io.github.holdpath.dynamics.margin;

import java.util.Arrays;

/**
 * Primal-dual interior-point method for one question: the largest {@code x} up to a cap such that
 * unknowns of all patches lie in their cones and {@code sum A_i z_i = right + x load}. Steps by
 * Mehrotra's predictor and corrector in the scaling of Nesterov and Todd; the unknowns of each
 * patch are eliminated by themselves, which leaves a system of the size of the balance.
 *
 * @see "Andersen, Dahl, Liu, Vandenberghe: Interior-point methods for large-scale cone programming,
 *     in Optimization for Machine Learning, MIT Press, 2011"
 */
final class ConeSolver {
  private static final double GAP = 1e-9;
  private static final double BALANCE = 1e-8;
  private static final double NEAR_BORDER = 0.99;
  private static final int MOST_STEPS = 60;
  private static final int REFINEMENTS = 3;
  private static final double LEAST_PIVOT = 1e-15;

  private final double[] right;
  private final double[] load;
  private final double cap;
  private final int rank;

  private final Block[] blocks;
  private double x;
  private double capSlack;
  private double capDual;
  private double capResidual;
  private double dx;
  private double dCapSlack;
  private double dCapDual;
  private double affineCap;
  private final double[] y;
  private final double[] balance;
  private final double[] schur;
  private final double[] towards;
  private final double[] dy;
  private final double[] loadResponse;

  ConeSolver(ConePatch[] patches, double[][] a, double[] right, double[] load, double cap) {
    this.right = right;
    this.load = load;
    this.cap = cap;
    this.rank = right.length;
    this.blocks = new Block[patches.length];
    for (int i = 0; i < blocks.length; i++) {
      blocks[i] = new Block(patches[i], a[i], rank);
    }
    this.capSlack = cap;
    this.capDual = 1 / cap;
    this.y = new double[rank];
    this.balance = new double[rank];
    this.schur = new double[rank * rank];
    this.towards = new double[rank];
    this.dy = new double[rank];
    this.loadResponse = new double[rank];
  }

  WholeGripFactor solve(double scale) {
    int degree = 1;
    for (Block b : blocks) {
      degree += b.cones.length;
    }
    double bestLow = 0;
    double bestHigh = Double.POSITIVE_INFINITY;
    int step = 0;
    for (; step < MOST_STEPS; step++) {
      double dual = residuals();
      double gap = capSlack * capDual;
      for (Block b : blocks) {
        gap += b.gap();
      }
      double unbalanced = max(balance);
      double upper = upperBound();
      if (unbalanced < BALANCE) {
        bestLow = Math.max(bestLow, x);
      }
      if (dual < BALANCE) {
        bestHigh = Math.min(bestHigh, upper);
      }
      if (gap < GAP * Math.max(1, x) && unbalanced < BALANCE && dual < BALANCE) {
        break;
      }
      factorise();
      double mu = gap / degree;
      direction(0, false);
      double affine = longest(1);
      double sigma = Math.pow(1 - affine, 3);
      direction(sigma * mu, true);
      advance(Math.min(1, NEAR_BORDER * longest(1 / NEAR_BORDER)));
      if (!Double.isFinite(x)) {
        break;
      }
    }
    double limit = HoldModel.NO_LIMIT;
    return new WholeGripFactor(
        Math.min(limit, bestLow * scale), Math.min(limit, bestHigh * scale), step);
  }

  /** Updates all residuals; returns the largest of the dual ones. */
  private double residuals() {
    for (int r = 0; r < rank; r++) {
      balance[r] = -right[r] - x * load[r];
    }
    double worst = 0;
    for (Block b : blocks) {
      b.residuals(y, balance);
      worst = Math.max(worst, b.dualResidual());
    }
    double slope = 0;
    for (int r = 0; r < rank; r++) {
      slope += load[r] * y[r];
    }
    // maximise x: gradient -1, load's row and the cap
    capResidual = -1 - slope + capDual;
    return Math.max(worst, Math.abs(capResidual));
  }

  /** Value of the dual: an upper bound where the dual residuals vanish. */
  private double upperBound() {
    double value = cap * capDual;
    for (int r = 0; r < rank; r++) {
      value += right[r] * y[r];
    }
    for (Block b : blocks) {
      value += b.sideValue();
    }
    return value;
  }

  private void factorise() {
    Arrays.fill(schur, 0);
    for (Block b : blocks) {
      b.factorise(schur);
    }
    choleskyInPlace(schur, rank);
  }

  /** Solves for a step; the corrector takes the predictor's second-order part with it. */
  private void direction(double target, boolean corrector) {
    for (int r = 0; r < rank; r++) {
      towards[r] = balance[r];
    }
    for (Block b : blocks) {
      b.prepare(target, corrector, towards);
    }
    // The cap: s dz + z ds = target - s z (- affine product)
    double aim = target - capSlack * capDual - (corrector ? affineCap : 0);
    double weight = capDual / capSlack;
    double side = -capResidual - aim / capSlack;
    System.arraycopy(load, 0, loadResponse, 0, rank);
    solveCholesky(schur, rank, loadResponse);
    double bottom = weight;
    for (int r = 0; r < rank; r++) {
      bottom += load[r] * loadResponse[r];
    }
    Arrays.fill(dy, 0);
    dx = 0;
    correct(side, bottom);
    // Near the end the balance loses digits in the elimination: put back what is missing.
    for (int pass = 0; pass < REFINEMENTS; pass++) {
      for (int r = 0; r < rank; r++) {
        towards[r] = balance[r] - load[r] * dx;
      }
      for (Block b : blocks) {
        b.addStep(towards);
      }
      correct(0, bottom);
    }
    dCapSlack = -dx;
    dCapDual = (aim - capDual * dCapSlack) / capSlack;
    affineCap = dCapSlack * dCapDual;
  }

  /**
   * Adds the solution of {@code S dy + load dx = towards, -load' dy + weight dx = side} to the
   * step.
   */
  private void correct(double side, double bottom) {
    solveCholesky(schur, rank, towards);
    double top = side;
    for (int r = 0; r < rank; r++) {
      top += load[r] * towards[r];
    }
    double more = top / bottom;
    dx += more;
    for (int r = 0; r < rank; r++) {
      dy[r] += towards[r] - loadResponse[r] * more;
    }
    for (Block b : blocks) {
      b.step(dy);
    }
  }

  private double longest(double most) {
    double step = most;
    if (dCapSlack < 0) {
      step = Math.min(step, -capSlack / dCapSlack);
    }
    if (dCapDual < 0) {
      step = Math.min(step, -capDual / dCapDual);
    }
    for (Block b : blocks) {
      step = b.longest(step);
    }
    return Math.min(step, most);
  }

  private void advance(double step) {
    x += step * dx;
    capSlack += step * dCapSlack;
    capDual += step * dCapDual;
    for (int r = 0; r < rank; r++) {
      y[r] += step * dy[r];
    }
    for (Block b : blocks) {
      b.advance(step);
    }
  }

  private static double max(double[] v) {
    double m = 0;
    for (double d : v) {
      m = Math.max(m, Math.abs(d));
    }
    return m;
  }

  /**
   * Lower Cholesky factor of a symmetric positive definite matrix, row-major. A pivot that rounding
   * has eaten is held at a small part of its diagonal; the refinement of the step makes up for it.
   */
  static void choleskyInPlace(double[] m, int n) {
    for (int j = 0; j < n; j++) {
      double least = LEAST_PIVOT * m[j * n + j];
      for (int i = j; i < n; i++) {
        double sum = m[i * n + j];
        for (int k = 0; k < j; k++) {
          sum -= m[i * n + k] * m[j * n + k];
        }
        m[i * n + j] = i == j ? Math.sqrt(Math.max(sum, least)) : sum / m[j * n + j];
      }
    }
  }

  static void solveCholesky(double[] l, int n, double[] v) {
    solveLower(l, n, v, 0);
    solveUpper(l, n, v);
  }

  static void solveLower(double[] l, int n, double[] v, int at) {
    for (int i = 0; i < n; i++) {
      double sum = v[at + i];
      for (int k = 0; k < i; k++) {
        sum -= l[i * n + k] * v[at + k];
      }
      v[at + i] = sum / l[i * n + i];
    }
  }

  static void solveUpper(double[] l, int n, double[] v) {
    for (int i = n - 1; i >= 0; i--) {
      double sum = v[i];
      for (int k = i + 1; k < n; k++) {
        sum -= l[k * n + i] * v[k];
      }
      v[i] = sum / l[i * n + i];
    }
  }
}
