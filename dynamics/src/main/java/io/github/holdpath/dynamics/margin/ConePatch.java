package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import java.util.ArrayList;
import java.util.List;

/**
 * The limits of one patch as second-order cones (theory, eqs. 3.12): {@code s = h - G z} lies in a
 * product of half-lines and cones {@code s0 >= |(s1, ...)|}. Unknown z: fx, fy, N, mx, my, mz in
 * patch axes and helpers t, u, v that stand for the parts of the friction limit. Scaled: forces by
 * one unit, lengths by another.
 */
final class ConePatch {
  /** Which limits are taken. */
  enum Limits {
    /** Friction with cross terms, edges for tilting. */
    PLAIN,
    /** Friction without cross terms: nothing holds beyond it with even pressure. */
    OUTER,
    /** As plain, but the lips of cups may not open. */
    SEALED
  }

  private static final int FX = 0;
  private static final int FY = 1;
  private static final int N = 2;
  private static final int MX = 3;
  private static final int MY = 4;
  private static final int MZ = 5;
  private static final int T = 6;
  private static final int U = 7;
  private static final int V = 8;

  /** Part of the friction that each helper takes at the start. */
  private static final double INSIDE = 0.35;

  /** Index in z of each unknown, -1 where the patch does not have it. */
  private final int[] at = new int[9];

  /** Number of unknowns. */
  final int size;

  /** Sizes of the cones in order; 1 is a half-line. */
  final int[] cones;

  /** Number of rows of G. */
  final int rows;

  /** Row-major, rows x size. */
  final double[] g;

  /** Right side, rows numbers. */
  final double[] h;

  /** A z strictly inside all cones. */
  final double[] start;

  private final List<double[]> rowList = new ArrayList<>();
  private final List<Double> sides = new ArrayList<>();
  private final List<Integer> coneList = new ArrayList<>();

  ConePatch(ContactPatch patch, Limits limits, double force, double length, double ledgeStart) {
    PatchShape s = patch.shape();
    boolean rubs = patch.friction() > 0;
    boolean tiltsX = Double.isFinite(s.edgeX());
    boolean round = s.round();
    boolean[] has = {rubs, rubs, true, tiltsX, true, rubs, rubs, rubs, rubs && !round};
    int count = 0;
    for (int k = 0; k < 9; k++) {
      at[k] = has[k] ? count++ : -1;
    }
    size = count;
    double mu = patch.friction();
    if (rubs) {
      friction(s, limits, mu, length);
    }
    double edgeX = s.edgeX() / length;
    double edgeY = s.edgeY() / length;
    if (limits == Limits.SEALED && s.sealed()) {
      edgeX = s.kernX() / length;
      edgeY = s.kernY() / length;
    }
    if (round) {
      cone(row(N, edgeX), row(MX, 1), row(MY, 1));
    } else {
      if (tiltsX) {
        between(N, edgeX, MX);
      }
      between(N, edgeY, MY);
    }
    if (patch.maxNormal() < Double.POSITIVE_INFINITY) {
      half(row(N, -1), patch.maxNormal() / force);
    }
    rows = rowList.size();
    g = new double[rows * size];
    h = new double[rows];
    for (int r = 0; r < rows; r++) {
      h[r] = sides.get(r);
      for (int k = 0; k < size; k++) {
        g[r * size + k] = -rowList.get(r)[k];
      }
    }
    cones = coneList.stream().mapToInt(Integer::intValue).toArray();
    start = new double[size];
    double normal = patch.ledge() ? ledgeStart : patch.preload() / force;
    start[at[N]] = normal;
    for (int k = T; k <= V; k++) {
      if (at[k] >= 0) {
        start[at[k]] = INSIDE * mu * normal;
      }
    }
  }

  private void friction(PatchShape s, Limits limits, double mu, double length) {
    double cx = limits == Limits.OUTER ? 0 : s.crossX();
    double cy = limits == Limits.OUTER ? 0 : s.crossY();
    between(T, s.torsionRadius() / length, MZ);
    double[] alongX = row(U, 1);
    alongX[at[T]] = cx;
    if (s.round()) {
      cone(row(U, 1), row(FX, 1), row(FY, 1));
      cone(row(N, mu), alongX, row(T, Math.sqrt(1 - cx * cx)));
      return;
    }
    between(U, 1, FX);
    between(V, 1, FY);
    double[] alongY = row(V, 1);
    alongY[at[T]] = cy;
    cone(row(N, mu), alongX, alongY, row(T, Math.sqrt(1 - cx * cx - cy * cy)));
  }

  private double[] row(int unknown, double value) {
    double[] r = new double[size];
    r[at[unknown]] = value;
    return r;
  }

  /** {@code |small| <= factor * large}. */
  private void between(int large, double factor, int small) {
    for (int sign = -1; sign <= 1; sign += 2) {
      double[] r = row(large, factor);
      r[at[small]] = sign;
      half(r, 0);
    }
  }

  private void half(double[] r, double side) {
    coneList.add(1);
    rowList.add(r);
    sides.add(side);
  }

  private void cone(double[]... list) {
    coneList.add(list.length);
    for (double[] r : list) {
      rowList.add(r);
      sides.add(0.0);
    }
  }

  /** Index in z of a component of the contact wrench (0 to 5), -1 if the patch cannot carry it. */
  int unknown(int component) {
    return at[component];
  }
}
