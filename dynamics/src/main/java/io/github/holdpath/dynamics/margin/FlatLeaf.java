package io.github.holdpath.dynamics.margin;

import java.util.List;

/**
 * One unknown between two half-lines. With their weights p and q it has the pivot {@code p + q};
 * {@code 4 factor^2 p q / (p + q)} is left for the root.
 */
final class FlatLeaf extends Leaf {
  private final int root;
  private final double factor;
  private final int leaf;
  private final int rank;
  private final HalfLine low;
  private final HalfLine high;
  private final double[] column;
  private double per;
  private double coupling;

  FlatLeaf(ConePatch.Bound bound, double[] z, int rank) {
    root = bound.root();
    factor = bound.factor();
    leaf = bound.leaves()[0];
    this.rank = rank;
    column = new double[rank];
    low = new HalfLine(0, factor, root, 1, leaf, z);
    high = new HalfLine(0, factor, root, -1, leaf, z);
  }

  @Override
  List<Cone> cones() {
    return List.of(low, high);
  }

  @Override
  void factorise(double[] a, double[] roots, double[] hessian, int count, double[] schur) {
    double p = low.weight();
    double q = high.weight();
    per = 1 / (p + q);
    coupling = factor * (p - q) * per;
    hessian[root * count + root] += 4 * factor * factor * p * q * per;
    System.arraycopy(a, leaf * rank, column, 0, rank);
    Rows.add(roots, root * rank, -coupling, column, 0, rank);
    Rows.addSquare(schur, per, column, 0, rank);
  }

  @Override
  void reduce(double[] side, double[] roots, double[] towards) {
    reduce(side, roots);
    Rows.add(towards, per * side[leaf], column, 0, rank);
  }

  @Override
  void reduce(double[] side, double[] roots) {
    roots[root] -= coupling * side[leaf];
  }

  @Override
  void expand(double[] solution) {
    solution[leaf] = per * solution[leaf] - coupling * solution[root];
  }
}
