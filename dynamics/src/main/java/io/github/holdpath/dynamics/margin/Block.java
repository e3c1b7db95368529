package io.github.holdpath.dynamics.margin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Unknowns, cones and multipliers of one patch inside {@link ConeSolver}, and the patch's own
 * elimination: first the leaves, then the few roots.
 */
final class Block {
  private final ConePatch patch;
  private final double[] a;
  private final int rank;
  private final int n;
  private final int roots;
  private final double[] start;

  private final Leaf[] leaves;
  private final Cone[] cones;
  private @Nullable RoundCone friction;
  private @Nullable HalfLine most;

  private double spare;
  private final double[] z;
  private final double[] residual;
  private final double[] side;
  private final double[] dz;
  private final double[] reduced;
  private final double[] hessian;

  /** Columns of the roots, after elimination {@code L^-1} times them. */
  private final double[] solved;

  /**
   * One patch.
   *
   * @param patch its cones
   * @param a what each unknown gives to the balance: {@code rank} numbers an unknown
   */
  Block(ConePatch patch, double[] a, int rank) {
    this.patch = patch;
    this.a = a;
    this.rank = rank;
    this.n = patch.size;
    this.roots = patch.roots;
    this.start = patch.start;
    this.z = start.clone();
    this.residual = new double[n];
    this.side = new double[n];
    this.dz = new double[n];
    this.reduced = new double[roots];
    this.hessian = new double[roots * roots];
    this.solved = new double[roots * rank];
    List<Cone> all = new ArrayList<>();
    leaves = patch.bounds.stream().map(b -> Leaf.of(b, z, rank)).toArray(Leaf[]::new);
    if (patch.friction.length > 0) {
      friction = new RoundCone(patch.friction, IntStream.range(0, roots).toArray(), z);
      all.add(friction);
    }
    if (patch.mostNormal < Double.POSITIVE_INFINITY) {
      most = new HalfLine(patch.mostNormal, -1, ConePatch.NORMAL, 0, ConePatch.NORMAL, z);
      all.add(most);
    }
    for (Leaf leaf : leaves) {
      all.addAll(leaf.cones());
    }
    cones = all.toArray(Cone[]::new);
  }

  void reset() {
    System.arraycopy(start, 0, z, 0, n);
    for (Cone c : cones) {
      c.reset();
    }
  }

  int degree() {
    return cones.length;
  }

  /**
   * Adds A z to the balance and refreshes the dual residual A'y - R'multiplier.
   *
   * @param look whether {@link #spare} is wanted too
   */
  void residuals(double[] y, double[] balance, boolean look) {
    addUnknowns(z, balance);
    for (int k = 0; k < n; k++) {
      residual[k] = weighed(k, y);
    }
    if (look) {
      spare = patch.spare(residual);
    }
    for (Cone c : cones) {
      c.takeMultiplier(residual);
    }
  }

  private void addUnknowns(double[] of, double[] sums) {
    for (int k = 0; k < n; k++) {
      // Of the roots the normal force alone has a place in the balance.
      if (k == ConePatch.NORMAL || k >= roots) {
        Rows.add(sums, of[k], a, k * rank, rank);
      }
    }
  }

  private double weighed(int k, double[] y) {
    if (k != ConePatch.NORMAL && k < roots) {
      return 0;
    }
    return Rows.dot(a, k * rank, y, rank);
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
    for (Cone c : cones) {
      sum += c.gap();
    }
    return sum;
  }

  /** {@link ConePatch#spare} of the weights A'y of other multipliers; spoils the residual. */
  double spare(double[] y) {
    for (int k = 0; k < n; k++) {
      residual[k] = weighed(k, y);
    }
    return patch.spare(residual);
  }

  /** {@link ConePatch#spare} of the weights A'y, as last looked at. */
  double spare() {
    return spare;
  }

  /** Largest normal force permitted, infinite where there is none. */
  double mostNormal() {
    return patch.mostNormal;
  }

  /** Eliminates the patch's unknowns and adds its part to the balance's matrix. */
  void factorise(double[] schur) {
    Arrays.fill(hessian, 0);
    Arrays.fill(solved, 0);
    System.arraycopy(a, 0, solved, 0, rank);
    if (friction != null) {
      for (int i = 0; i < roots; i++) {
        for (int j = 0; j <= i; j++) {
          hessian[i * roots + j] = friction.product(i, j);
        }
      }
    }
    if (most != null) {
      hessian[0] += most.weight();
    }
    for (Leaf leaf : leaves) {
      leaf.factorise(a, solved, hessian, roots, schur);
    }
    Cholesky.factorise(hessian, roots);
    Cholesky.solveLowerRows(hessian, roots, solved, rank);
    for (int k = 0; k < roots; k++) {
      Rows.addSquare(schur, 1, solved, k * rank, rank);
    }
  }

  /** Right side of the step; adds this patch's part to the balance's. */
  void prepare(double target, boolean corrector, double[] towards) {
    for (int k = 0; k < n; k++) {
      side[k] = -residual[k];
    }
    for (Cone c : cones) {
      c.aim(target, corrector, side);
    }
    System.arraycopy(side, 0, reduced, 0, roots);
    for (Leaf leaf : leaves) {
      leaf.reduce(side, reduced, towards);
    }
    Cholesky.solveLower(hessian, roots, reduced);
    for (int k = 0; k < roots; k++) {
      Rows.add(towards, reduced[k], solved, k * rank, rank);
    }
  }

  /** Step of the unknowns for a step of the balance's multipliers. */
  void step(double[] dy) {
    // dz is used for the right side and then for the solution.
    for (int k = 0; k < n; k++) {
      dz[k] = side[k] - weighed(k, dy);
    }
    System.arraycopy(dz, 0, reduced, 0, roots);
    for (Leaf leaf : leaves) {
      leaf.reduce(dz, reduced);
    }
    Cholesky.solve(hessian, roots, reduced);
    System.arraycopy(reduced, 0, dz, 0, roots);
    for (Leaf leaf : leaves) {
      leaf.expand(dz);
    }
  }

  /** Slacks and multipliers of the step of the unknowns. */
  void stepCones() {
    for (Cone c : cones) {
      c.step(dz);
    }
  }

  /** Adds A times the step of the unknowns. */
  void addStep(double[] sum) {
    addUnknowns(dz, sum);
  }

  /** Longest step up to {@code most} that stays in the cones. */
  double longest(double most) {
    double step = most;
    for (Cone c : cones) {
      step = c.longest(step);
    }
    return step;
  }

  void advance(double step) {
    for (int k = 0; k < n; k++) {
      z[k] += step * dz[k];
    }
    for (Cone c : cones) {
      c.advance(step);
    }
  }
}
