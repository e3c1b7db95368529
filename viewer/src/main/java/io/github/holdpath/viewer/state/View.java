package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A camera in the world, Z up, and the size of its image.
 *
 * @param eye where it is, m
 * @param forward unit vector of its line of sight, not straight up or down
 * @param halfAngle half its vertical field of view, rad
 * @param width of the image, pixels
 * @param height of the image, pixels
 * @param depth of the farthest thing that must be seen, m, positive
 */
public record View(Vec3 eye, Vec3 forward, double halfAngle, int width, int height, double depth) {
  /** A point of the image: pixels from its left and upper edge, and the depth in front, m. */
  public record Spot(double x, double y, double depth) {}

  /** Part of an image, pixels from its left and upper edge. */
  public record Area(double left, double top, double right, double bottom) {}

  private static final Vec3 UP = new Vec3(0, 0, 1);

  /** Half the vertical field of view of a fitted view, rad: little distortion. */
  static final double HALF_ANGLE = Math.toRadians(14);

  /** How far fitted views look down, rad. */
  private static final double DOWN = Math.toRadians(24);

  private static final int ROUNDS = 40;

  /** Directions that are tried, degrees from +x about +z; the first of equals is taken. */
  private static final int[] BEARINGS = {-35, -60, 35, 60, -120, 120, -145, 145};

  /** Depth from which things are drawn, m. */
  public double near() {
    return depth * 0.002;
  }

  /** Depth up to which things are drawn, m. */
  public double far() {
    return depth * 20;
  }

  /** Unit vector to the right of the image. */
  public Vec3 right() {
    return forward.cross(UP).unit();
  }

  /** Unit vector to the top of the image. */
  public Vec3 up() {
    return right().cross(forward);
  }

  /** Where a point of the world is seen; depth is not positive behind the camera. */
  public Spot project(Vec3 point) {
    return project(point, right(), up());
  }

  private Spot project(Vec3 point, Vec3 right, Vec3 up) {
    Vec3 from = point.minus(eye);
    double depth = from.dot(forward);
    double scale = height / 2.0 / Math.tan(halfAngle) / depth;
    return new Spot(
        width / 2.0 + from.dot(right) * scale, height / 2.0 - from.dot(up) * scale, depth);
  }

  /**
   * A three-quarter view from above, from the side on which the points spread widest, with all of
   * them inside an area of the image.
   *
   * @param points to show, at least one
   * @param area to show them in
   * @param width of the image, pixels
   * @param height of the image, pixels
   */
  public static View fitted(List<Vec3> points, Area area, int width, int height) {
    View best = null;
    double widest = -1;
    for (int bearing : BEARINGS) {
      double a = Math.toRadians(bearing);
      Vec3 forward =
          new Vec3(-Math.cos(a) * Math.cos(DOWN), -Math.sin(a) * Math.cos(DOWN), -Math.sin(DOWN));
      View view = fitted(points, forward, area, width, height);
      double spread = spread(points, view);
      if (best == null || spread > widest * 1.05) {
        widest = spread;
        best = view;
      }
    }
    return java.util.Objects.requireNonNull(best);
  }

  /** Extent across times extent upwards as seen along a direction, m^2. */
  private static double spread(List<Vec3> points, View view) {
    double[] x = range(points, view.right());
    double[] y = range(points, view.up());
    return (x[1] - x[0]) * (y[1] - y[0]);
  }

  private static double[] range(List<Vec3> points, Vec3 along) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Vec3 p : points) {
      least = Math.min(least, p.dot(along));
      most = Math.max(most, p.dot(along));
    }
    return new double[] {least, most};
  }

  /** A view along a unit vector, not straight up or down, with all points inside an area. */
  public static View fitted(List<Vec3> points, Vec3 forward, Area area, int width, int height) {
    Vec3 middle = points.get(0);
    View at = new View(middle, forward, HALF_ANGLE, width, height, 1);
    double[] x = range(points, at.right());
    double[] y = range(points, at.up());
    double[] z = range(points, forward);
    double size = Math.max(1e-3, Math.hypot(x[1] - x[0], Math.hypot(y[1] - y[0], z[1] - z[0])));
    Vec3 eye =
        at.right()
            .times((x[0] + x[1]) / 2)
            .plus(at.up().times((y[0] + y[1]) / 2))
            .plus(forward.times(z[0] - 4 * size));
    for (int i = 0; i < ROUNDS; i++) {
      at = new View(eye, forward, HALF_ANGLE, width, height, 1);
      eye = better(points, at, area, z[0], size);
    }
    double farthest = Math.max(1e-3, z[1] - eye.dot(forward));
    return new View(eye, forward, HALF_ANGLE, width, height, farthest);
  }

  /** Moves the eye towards the place from which the points just fill the area. */
  private static Vec3 better(List<Vec3> points, View at, Area area, double near, double size) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    Vec3 aside = at.right();
    Vec3 up = at.up();
    for (Vec3 p : points) {
      Spot s = at.project(p, aside, up);
      left = Math.min(left, s.x());
      right = Math.max(right, s.x());
      top = Math.min(top, s.y());
      bottom = Math.max(bottom, s.y());
    }
    double distance = near - at.eye().dot(at.forward()) + size / 2;
    double fill =
        Math.max(
            (right - left) / (area.right() - area.left()),
            (bottom - top) / (area.bottom() - area.top()));
    double least = 1.5 * size;
    double wanted = Math.max(least, distance * Math.min(2, Math.max(0.5, fill)));
    double perPixel = 2 * Math.tan(at.halfAngle()) / at.height() * distance;
    double across = ((left + right) - (area.left() + area.right())) / 2 * perPixel;
    double upwards = ((area.top() + area.bottom()) - (top + bottom)) / 2 * perPixel;
    return at.eye()
        .plus(at.forward().times(distance - wanted))
        .plus(at.right().times(across))
        .plus(at.up().times(upwards));
  }
}
