package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The limits of one patch as second-order cones {@code s0 >= |(s1, ...)|} (theory, eqs. 3.12).
 * Unknowns are its contact wrench in patch axes and helpers t, u, v that stand for the parts of the
 * friction limit. Scaled: forces by one unit, lengths by another.
 *
 * <p>They hang together like a short tree, which the solver uses: the normal force and the helpers
 * are <em>roots</em>, tied to each other by the friction cone alone; every other component is a
 * <em>leaf</em> in a cone with one root, as {@code |mz| <= e t} or {@code hypot(fx, fy) <= u}.
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

  /**
   * Leaves bounded by a root: {@code norm(leaves) <= factor * root}.
   *
   * @param root unknown that bounds
   * @param factor dimensionless
   * @param leaves one or two unknowns, numbered in a row
   */
  record Bound(int root, double factor, int[] leaves) {}

  /** Index of the normal force, the first root. */
  static final int NORMAL = 0;

  private static final int FX = 0;
  private static final int FY = 1;
  private static final int N = 2;
  private static final int MX = 3;
  private static final int MY = 4;
  private static final int MZ = 5;

  /** Part of the friction that each helper takes at the start. */
  private static final double INSIDE = 0.35;

  private static final double NEARLY = 0.99;

  private final int[] at = new int[6];

  /** Number of roots: the normal force, then t, u and, where the shape is not round, v. */
  final int roots;

  /** Number of unknowns, roots and leaves. */
  final int size;

  private final double mu;
  private final double crossX;
  private final double crossY;

  /** Friction cone over the roots, row-major, roots x roots; empty without friction. */
  final double[] friction;

  /** Cones of the leaves. */
  final List<Bound> bounds;

  /** The same for a loop that runs often. */
  private final Bound[] spared;

  /** Largest permitted normal force, scaled; infinite where there is none. */
  final double mostNormal;

  /** Unknowns strictly inside all cones. */
  final double[] start;

  ConePatch(ContactPatch patch, Limits limits, double force, double length, double ledgeStart) {
    PatchShape s = patch.shape();
    mu = patch.friction();
    crossX = limits == Limits.OUTER ? 0 : s.crossX();
    crossY = limits == Limits.OUTER || s.round() ? 0 : s.crossY();
    boolean rubs = mu > 0;
    Arrays.fill(at, -1);
    at[N] = NORMAL;
    roots = rubs ? (s.round() ? 3 : 4) : 1;
    int count = roots;
    List<Bound> list = new ArrayList<>();
    if (rubs) {
      list.add(bound(1, s.torsionRadius() / length, count, MZ));
      count++;
      if (s.round()) {
        list.add(bound(2, 1, count, FX, FY));
      } else {
        list.add(bound(2, 1, count, FX));
        list.add(bound(3, 1, count + 1, FY));
      }
      count += 2;
    }
    boolean sealed = limits == Limits.SEALED && s.sealed();
    double edgeX = (sealed ? s.kernX() : s.edgeX()) / length;
    double edgeY = (sealed ? s.kernY() : s.edgeY()) / length;
    if (s.round()) {
      list.add(bound(NORMAL, edgeX, count, MX, MY));
      count += 2;
    } else {
      // A line cannot carry a moment about itself.
      if (Double.isFinite(edgeX)) {
        list.add(bound(NORMAL, edgeX, count++, MX));
      }
      list.add(bound(NORMAL, edgeY, count++, MY));
    }
    bounds = List.copyOf(list);
    spared = list.toArray(Bound[]::new);
    size = count;
    friction = rubs ? friction() : new double[0];
    mostNormal = patch.maxNormal() / force;
    start = new double[size];
    // Inside all cones: pressed a little where nothing presses, and below what is permitted.
    double pressed = patch.preload() > 0 ? patch.preload() / force : ledgeStart;
    double normal = Math.min(pressed, NEARLY * mostNormal);
    start[NORMAL] = normal;
    for (int k = 1; k < roots; k++) {
      start[k] = INSIDE * mu * normal;
    }
  }

  private Bound bound(int root, double factor, int first, int... components) {
    int[] leaves = new int[components.length];
    for (int i = 0; i < leaves.length; i++) {
      leaves[i] = first + i;
      at[components[i]] = first + i;
    }
    return new Bound(root, factor, leaves);
  }

  /** Rows mu N; u + cx t; v + cy t; the rest of t. Columns N, t, u, v. */
  private double[] friction() {
    double[] m = new double[roots * roots];
    m[0] = mu;
    m[roots + 1] = crossX;
    m[roots + 2] = 1;
    if (roots == 4) {
      m[2 * roots + 1] = crossY;
      m[2 * roots + 3] = 1;
    }
    m[(roots - 1) * roots + 1] = Math.sqrt(1 - crossX * crossX - crossY * crossY);
    return m;
  }

  /**
   * What is left of the weight on the normal force when the patch has done all that friction and
   * edge permit for the other weights: not negative exactly where no wrench inside the limits has a
   * negative sum of products with the weights (theory, eq. 3.13).
   *
   * @param weights one number for each unknown; those of the helpers are not looked at
   */
  double spare(double[] weights) {
    double left = weights[NORMAL];
    double t = 0;
    double u = 0;
    double v = 0;
    for (Bound b : spared) {
      double most = b.factor() * norm(weights, b.leaves());
      switch (b.root()) {
        case NORMAL -> left -= most;
        case 1 -> t = most;
        case 2 -> u = most;
        default -> v = most;
      }
    }
    return left - mu * friction(t, u, v);
  }

  private static double norm(double[] weights, int[] of) {
    double first = weights[of[0]];
    double last = weights[of[of.length - 1]];
    return of.length == 1 ? Math.abs(first) : Math.sqrt(first * first + last * last);
  }

  /** Most that helpers of a friction limit of 1 do for weights on them that are not negative. */
  private double friction(double t, double u, double v) {
    if (roots < 4) {
      return with(t, u, crossX);
    }
    double rest = 1 - crossX * crossX - crossY * crossY;
    double w = (t - crossX * u - crossY * v) / rest;
    if (w > 0 && u >= crossX * w && v >= crossY * w) {
      return Math.sqrt(u * u + v * v + rest * w * w);
    }
    return Math.max(Math.sqrt(u * u + v * v), Math.max(with(t, u, crossX), with(t, v, crossY)));
  }

  private static double with(double t, double u, double cross) {
    if (t <= cross * u) {
      return u;
    }
    return u <= cross * t
        ? t
        : Math.sqrt((u * u + t * t - 2 * cross * u * t) / (1 - cross * cross));
  }

  /** Index among the unknowns of a component of the contact wrench (0 to 5), -1 if it has none. */
  int unknown(int component) {
    return at[component];
  }
}
