package io.github.holdpath.dynamics.margin;

import java.util.Arrays;

/**
 * Primal-dual interior-point method for one question: the largest {@code x} up to a cap such that
 * unknowns of all patches lie in their cones and {@code sum A_i z_i = right + x load}. Steps by
 * Mehrotra's predictor and corrector in the scaling of Nesterov and Todd; the unknowns of each
 * patch are eliminated by themselves, which leaves a system of the size of the balance. Every solve
 * starts anew, in memory that is made once.
 *
 * @see "Andersen, Dahl, Liu, Vandenberghe: Interior-point methods for large-scale cone programming,
 *     in Optimization for Machine Learning, MIT Press, 2011"
 */
final class ConeSolver {
  /** Up to here what the balance misses is small beside the unknowns, and its worth is linear. */
  private static final double BALANCE = 1e-5;

  /** Bounds are worth their price from this gap on, of x or of 1. */
  private static final double NEAR = 1e-2;

  private static final double NEAR_BORDER = 0.99;
  private static final int MOST_STEPS = 60;
  private static final int REFINEMENTS = 2;

  /** What a step may miss of the balance, of what it should take away and by itself. */
  private static final double MISSED_PART = 1e-3;

  private static final double MISSED = 1e-11;

  /** Part of the largest diagonal that keeps a system with free directions solvable. */
  private static final double STEADY = 1e-9;

  /** A twist presses a patch that it leaves more than this to spare; 1 were all of it. */
  private static final double PRESSED = 1e-2;

  private final double[] right;
  private final int rank;
  private final Block[] blocks;
  private final int degree;

  private double[] load = new double[0];
  private double cap;
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

  private final double[] press;
  private final Bounds bounds;
  private int steps;

  /**
   * For one grip and one thread.
   *
   * @param patches limits
   * @param a what each patch's unknowns give to the balance, {@code rank} numbers an unknown
   * @param right side of the balance
   */
  ConeSolver(ConePatch[] patches, double[][] a, double[] right) {
    this.right = right;
    this.rank = right.length;
    this.blocks = new Block[patches.length];
    int count = 1;
    for (int i = 0; i < blocks.length; i++) {
      blocks[i] = new Block(patches[i], a[i], rank);
      count += blocks[i].degree();
    }
    this.degree = count;
    this.y = new double[rank];
    this.balance = new double[rank];
    this.schur = new double[rank * rank];
    this.towards = new double[rank];
    this.dy = new double[rank];
    this.loadResponse = new double[rank];
    this.press = press(a);
    this.bounds = new Bounds(spares(press));
  }

  /** The multipliers whose weights on all normal forces are nearest to 1. */
  private double[] press(double[][] a) {
    double[] matrix = new double[rank * rank];
    double[] twist = new double[rank];
    for (double[] columns : a) {
      Rows.addSquare(matrix, 1, columns, ConePatch.NORMAL * rank, rank);
      Rows.add(twist, 1, columns, ConePatch.NORMAL * rank, rank);
    }
    double size = 0;
    for (int r = 0; r < rank; r++) {
      size = Math.max(size, matrix[r * rank + r]);
    }
    for (int r = 0; r < rank; r++) {
      matrix[r * rank + r] += STEADY * size;
    }
    Cholesky.factorise(matrix, rank);
    Cholesky.solve(matrix, rank, twist);
    return twist;
  }

  /** What multipliers leave each patch to spare; empty if it is little for one. */
  private double[] spares(double[] of) {
    double[] spares = new double[blocks.length];
    for (int i = 0; i < blocks.length; i++) {
      spares[i] = blocks[i].spare(of);
      if (!(spares[i] > PRESSED)) {
        return new double[0];
      }
    }
    return spares;
  }

  /** Largest x for which unknowns were found. */
  double low() {
    return bounds.low();
  }

  /** An x beyond which there are none. */
  double high() {
    return bounds.high();
  }

  /** Steps that the last solve took. */
  int steps() {
    return steps;
  }

  /**
   * Solves for one load.
   *
   * @param load of the balance, kept until the next solve
   * @param most the cap on x
   * @param fine sum of slacks times multipliers that is asked for, of x or of 1: the gap of the two
   *     bounds but for rounding
   */
  void solve(double[] load, double most, double fine) {
    reset(load, most);
    for (steps = 0; steps < MOST_STEPS; steps++) {
      double gap = gap();
      double part = gap / Math.max(1, x);
      boolean near = part < NEAR;
      double missed = residuals(near);
      if (near) {
        prove(missed);
        if (part < fine) {
          return;
        }
      }
      factorise();
      direction(0, false);
      double sigma = Math.pow(1 - longest(1), 3);
      direction(sigma * gap / degree, true);
      advance(Math.min(1, NEAR_BORDER * longest(1 / NEAR_BORDER)));
      if (!Double.isFinite(x)) {
        return;
      }
    }
  }

  private void reset(double[] load, double most) {
    this.load = load;
    cap = most;
    x = 0;
    capSlack = cap;
    capDual = 1 / cap;
    bounds.reset();
    Arrays.fill(y, 0);
    for (Block b : blocks) {
      b.reset();
    }
  }

  private double gap() {
    double gap = capSlack * capDual;
    for (Block b : blocks) {
      gap += b.gap();
    }
    return gap;
  }

  /** Takes what y proves, and x less what its balance still misses is worth. */
  private void prove(double missed) {
    if (max(balance) < BALANCE) {
      bounds.offerLow(x - Rows.dot(balance, 0, y, rank));
    }
    double part = bounds.pressing(blocks, missed);
    if (part >= 0) {
      bounds.offerHigh(
          blocks,
          part,
          Rows.dot(right, 0, y, rank) + part * Rows.dot(right, 0, press, rank),
          Rows.dot(load, 0, y, rank) + part * Rows.dot(load, 0, press, rank),
          cap);
    }
  }

  /** Updates all residuals; returns the largest of the dual ones. */
  private double residuals(boolean near) {
    for (int r = 0; r < rank; r++) {
      balance[r] = -right[r] - x * load[r];
    }
    double worst = 0;
    for (Block b : blocks) {
      b.residuals(y, balance, near);
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

  private void factorise() {
    Arrays.fill(schur, 0);
    for (Block b : blocks) {
      b.factorise(schur);
    }
    Cholesky.factorise(schur, rank);
    System.arraycopy(load, 0, loadResponse, 0, rank);
    Cholesky.solve(schur, rank, loadResponse);
  }

  /** Solves for a step; the corrector takes the predictor's second-order part with it. */
  private void direction(double target, boolean corrector) {
    System.arraycopy(balance, 0, towards, 0, rank);
    for (Block b : blocks) {
      b.prepare(target, corrector, towards);
    }
    // The cap: s dz + z ds = target - s z (- affine product)
    double aim = target - capSlack * capDual - (corrector ? affineCap : 0);
    double side = -capResidual - aim / capSlack;
    double bottom = capDual / capSlack;
    for (int r = 0; r < rank; r++) {
      bottom += load[r] * loadResponse[r];
    }
    Arrays.fill(dy, 0);
    dx = 0;
    correct(side, bottom);
    if (corrector) {
      refine(bottom);
    }
    for (Block b : blocks) {
      b.stepCones();
    }
    dCapSlack = -dx;
    dCapDual = (aim - capDual * dCapSlack) / capSlack;
    affineCap = dCapSlack * dCapDual;
  }

  /** Near the end the balance loses digits in the elimination: puts back what is missing. */
  private void refine(double bottom) {
    double enough = Math.max(MISSED, MISSED_PART * max(balance));
    for (int pass = 0; pass < REFINEMENTS; pass++) {
      for (int r = 0; r < rank; r++) {
        towards[r] = balance[r] - load[r] * dx;
      }
      for (Block b : blocks) {
        b.addStep(towards);
      }
      if (max(towards) < enough) {
        return;
      }
      correct(0, bottom);
    }
  }

  /**
   * Adds the solution of {@code S dy + load dx = towards, -load' dy + weight dx = side} to the
   * step.
   */
  private void correct(double side, double bottom) {
    Cholesky.solve(schur, rank, towards);
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
}
