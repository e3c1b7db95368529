package io.github.holdpath.dynamics.margin;

import java.util.List;

/**
 * Unknowns bounded by a root, {@code norm(leaves) <= factor * root}, inside a solve: their limits
 * and their elimination, which leaves a number for the root and a part for the balance.
 */
abstract sealed class Leaf permits FlatLeaf, RoundLeaf {
  static Leaf of(ConePatch.Bound bound, double[] z, int rank) {
    return bound.leaves().length == 1
        ? new FlatLeaf(bound, z, rank)
        : new RoundLeaf(bound, z, rank);
  }

  /** Limits, in the order of the factor's rows. */
  abstract List<Cone> cones();

  /**
   * Eliminates the leaves.
   *
   * @param a balance's columns, those of unknown k from {@code k rank}
   * @param roots columns of the roots, from which the coupled part is taken
   * @param hessian of the roots, {@code count x count}, to whose diagonal the rest is added
   * @param schur matrix of the balance, lower half
   */
  abstract void factorise(double[] a, double[] roots, double[] hessian, int count, double[] schur);

  /** Takes the leaves out of the roots' right side; adds their part to the balance's. */
  abstract void reduce(double[] side, double[] roots, double[] towards);

  /** Takes the leaves out of the roots' right side. */
  abstract void reduce(double[] side, double[] roots);

  /** Puts the leaves of the solution, whose roots are known, in place of their right side. */
  abstract void expand(double[] solution);
}
