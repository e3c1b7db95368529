package io.github.holdpath.dynamics.margin;

import java.util.List;

/**
 * Two unknowns in a round cone. With {@code W^-2 = (2 w w' - J) / beta^2} and {@code gamma = 2 w0^2
 * - 1} they fall apart into one along w, with the pivot {@code gamma / beta^2}, and one across it,
 * with {@code 1 / beta^2}. What is left for the root is taken from the cone's own rows, so that
 * elimination and step agree to the last digit where gamma is large.
 */
final class RoundLeaf extends Leaf {
  private final int root;
  private final double factor;
  private final int first;
  private final int rank;
  private final RoundCone cone;

  /** Columns of the balance along w and across it. */
  private final double[] along;

  private final double[] across;

  /** Direction of w among the leaves. */
  private double eX = 1;

  private double eY;
  private double perAlong;
  private double perAcross;
  private double coupling;

  RoundLeaf(ConePatch.Bound bound, double[] z, int rank) {
    root = bound.root();
    factor = bound.factor();
    first = bound.leaves()[0];
    this.rank = rank;
    along = new double[rank];
    across = new double[rank];
    cone =
        new RoundCone(
            new double[] {factor, 0, 0, 0, 1, 0, 0, 0, 1}, new int[] {root, first, first + 1}, z);
  }

  @Override
  List<Cone> cones() {
    return List.of(cone);
  }

  @Override
  void factorise(double[] a, double[] roots, double[] hessian, int count, double[] schur) {
    double scale = cone.beta() * cone.beta();
    double gamma = scale * cone.product(0, 0) / (factor * factor);
    double m1 = cone.product(1, 0);
    double m2 = cone.product(2, 0);
    double size = Math.sqrt(m1 * m1 + m2 * m2);
    eX = size > 0 ? m1 / size : 1;
    eY = size > 0 ? m2 / size : 0;
    perAcross = scale;
    perAlong = scale / gamma;
    coupling = size * perAlong;
    hessian[root * count + root] += cone.rest(coupling * eX, coupling * eY);
    int at = first * rank;
    for (int r = 0; r < rank; r++) {
      double x = a[at + r];
      double y = a[at + rank + r];
      along[r] = eX * x + eY * y;
      across[r] = eX * y - eY * x;
      roots[root * rank + r] -= coupling * along[r];
    }
    Rows.addSquare(schur, perAlong, along, 0, rank);
    Rows.addSquare(schur, perAcross, across, 0, rank);
  }

  @Override
  void reduce(double[] side, double[] roots, double[] towards) {
    double l = along(side);
    roots[root] -= coupling * l;
    Rows.add(towards, perAlong * l, along, 0, rank);
    Rows.add(towards, perAcross * across(side), across, 0, rank);
  }

  @Override
  void reduce(double[] side, double[] roots) {
    roots[root] -= coupling * along(side);
  }

  @Override
  void expand(double[] solution) {
    double l = perAlong * along(solution) - coupling * solution[root];
    double c = perAcross * across(solution);
    solution[first] = eX * l - eY * c;
    solution[first + 1] = eY * l + eX * c;
  }

  private double along(double[] v) {
    return eX * v[first] + eY * v[first + 1];
  }

  private double across(double[] v) {
    return eX * v[first + 1] - eY * v[first];
  }
}
