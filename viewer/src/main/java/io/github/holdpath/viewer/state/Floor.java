package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The grid on the floor below what is shown.
 *
 * @param x0 least x, a whole number of steps, m
 * @param x1 largest x, m
 * @param y0 least y, m
 * @param y1 largest y, m
 * @param z height: that of the world's origin where it is near, m
 * @param step between lines, m
 */
public record Floor(double x0, double x1, double y0, double y1, double z, double step) {
  /** Lines wanted along the longer side. */
  private static final double CELLS = 7;

  /** Below this part of the extent the world's origin counts as near. */
  private static final double NEAR = 1.0;

  static Floor below(List<Vec3> points) {
    double[] lo = {points.get(0).x(), points.get(0).y(), points.get(0).z()};
    double[] hi = lo.clone();
    for (Vec3 p : points) {
      double[] v = {p.x(), p.y(), p.z()};
      for (int k = 0; k < 3; k++) {
        lo[k] = Math.min(lo[k], v[k]);
        hi[k] = Math.max(hi[k], v[k]);
      }
    }
    double across = Math.max(1e-3, Math.max(hi[0] - lo[0], hi[1] - lo[1]));
    double size = Math.max(across, hi[2] - lo[2]);
    double step = roundUp(size / CELLS);
    boolean near = lo[2] > -1e-6 && lo[2] < NEAR * size;
    double z = near ? 0 : Math.floor(lo[2] / step + 1e-9) * step;
    return new Floor(
        Math.floor(lo[0] / step - 0.5) * step,
        Math.ceil(hi[0] / step + 0.5) * step,
        Math.floor(lo[1] / step - 0.5) * step,
        Math.ceil(hi[1] / step + 0.5) * step,
        z,
        step);
  }

  /** The least of 1, 2, 5 times a power of ten that is not less. */
  private static double roundUp(double v) {
    double ten = Math.pow(10, Math.floor(Math.log10(v)));
    for (double m : new double[] {1, 2, 5}) {
      if (m * ten >= v * (1 - 1e-9)) {
        return m * ten;
      }
    }
    return 10 * ten;
  }

  List<Vec3> lines() {
    List<Vec3> ends = new ArrayList<>();
    for (double x : ticks(x0, x1)) {
      ends.add(new Vec3(x, y0, z));
      ends.add(new Vec3(x, y1, z));
    }
    for (double y : ticks(y0, y1)) {
      ends.add(new Vec3(x0, y, z));
      ends.add(new Vec3(x1, y, z));
    }
    return ends;
  }

  List<Double> ticks(double from, double to) {
    List<Double> all = new ArrayList<>();
    long n = Math.round((to - from) / step);
    for (long i = 0; i <= n; i++) {
      all.add(Math.rint(from / step + i) * step);
    }
    return all;
  }

  List<Vec3> corners() {
    return List.of(
        new Vec3(x0, y0, z), new Vec3(x1, y0, z), new Vec3(x0, y1, z), new Vec3(x1, y1, z));
  }

  boolean contains(Vec3 p) {
    return p.x() >= x0 && p.x() <= x1 && p.y() >= y0 && p.y() <= y1 && z == 0;
  }
}
