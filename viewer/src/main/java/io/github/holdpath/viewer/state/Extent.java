package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * The least box along the world's axes about some points.
 *
 * @param lo least x, y, z, m; above {@code hi} where there are no points
 * @param hi greatest x, y, z, m
 */
record Extent(Vec3 lo, Vec3 hi) {
  /** What reaches out by less than this share of the size counts as inside: views have borders. */
  private static final double OUT = 0.01;

  /** About points. */
  static Extent of(List<Vec3> points) {
    double[] lo = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] hi = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Vec3 p : points) {
      double[] v = {p.x(), p.y(), p.z()};
      for (int k = 0; k < 3; k++) {
        lo[k] = Math.min(lo[k], v[k]);
        hi[k] = Math.max(hi[k], v[k]);
      }
    }
    return new Extent(new Vec3(lo[0], lo[1], lo[2]), new Vec3(hi[0], hi[1], hi[2]));
  }

  /** Its diagonal, m, at least a millimetre. */
  double size() {
    return Math.max(1e-3, hi.minus(lo).norm());
  }

  /** Whether the other box lies inside, as far as can be seen. */
  boolean contains(Extent other) {
    double out = OUT * size();
    return other.lo.x() >= lo.x() - out
        && other.lo.y() >= lo.y() - out
        && other.lo.z() >= lo.z() - out
        && other.hi.x() <= hi.x() + out
        && other.hi.y() <= hi.y() + out
        && other.hi.z() <= hi.z() + out;
  }
}
