package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A camera that looks at a place and goes around it.
 *
 * @param target what it looks at, world axes, m
 * @param bearing where it stands as seen from the target, rad from +x about +z
 * @param elevation how far above the target's level, rad, short of straight up or down
 * @param distance from the target, m, positive
 */
public record Orbit(Vec3 target, double bearing, double elevation, double distance) {
  /** Nearly straight down, so that up in the image stays defined, rad. */
  public static final double STEEPEST = Math.toRadians(89);

  /** Elevation of the views along the axes of the cell, rad. */
  private static final double LEVEL = Math.toRadians(4);

  /** Turn for a pull of one pixel in an image as high as a usual window, rad. */
  private static final double PER_HEIGHT = Math.toRadians(240);

  private static final double NEAREST = 1e-3;
  private static final double FARTHEST = 1e4;

  /** Keeps the values where a view can be made of them. */
  public Orbit {
    if (!Double.isFinite(bearing + elevation) || !(distance > 0)) {
      throw new IllegalArgumentException(
          "no camera at bearing " + bearing + ", elevation " + elevation + ", " + distance + " m");
    }
    bearing = Math.IEEEremainder(bearing, 2 * Math.PI);
    elevation = Math.max(-STEEPEST, Math.min(STEEPEST, elevation));
    distance = Math.max(NEAREST, Math.min(FARTHEST, distance));
  }

  /** Directions to look from. */
  public enum Preset {
    /** Three-quarter, from the side on which most is seen. */
    CORNER,
    /** From -y, so that x goes to the right. */
    FRONT,
    /** From +x, so that y goes to the right. */
    SIDE,
    /** From above, x to the right. */
    TOP
  }

  /** The orbit of a view about the middle of some points. */
  public static Orbit of(View view, List<Vec3> points) {
    Vec3 sum = Vec3.ZERO;
    for (Vec3 p : points) {
      sum = sum.plus(p);
    }
    double ahead = sum.times(1.0 / points.size()).minus(view.eye()).dot(view.forward());
    double distance = Math.max(NEAREST, ahead);
    Vec3 f = view.forward();
    return new Orbit(
        view.eye().plus(f.times(distance)),
        Math.atan2(-f.y(), -f.x()),
        Math.asin(Math.max(-1, Math.min(1, -f.z()))),
        distance);
  }

  /** Seen from a preset direction, with all points inside an area of the image. */
  public static Orbit fitted(
      Preset preset, List<Vec3> points, View.Area area, int width, int height) {
    return switch (preset) {
      case CORNER -> of(View.fitted(points, area, width, height), points);
      case FRONT -> fitted(-Math.PI / 2, LEVEL, points, area, width, height);
      case SIDE -> fitted(0, LEVEL, points, area, width, height);
      case TOP -> fitted(-Math.PI / 2, STEEPEST, points, area, width, height);
    };
  }

  /** Seen along a direction from behind and a little above, with all points inside an area. */
  public static Orbit along(
      Vec3 direction, List<Vec3> points, View.Area area, int width, int height) {
    double bearing = Math.atan2(-direction.y(), -direction.x());
    return fitted(bearing, Math.toRadians(28), points, area, width, height);
  }

  private static Orbit fitted(
      double bearing, double elevation, List<Vec3> points, View.Area area, int width, int height) {
    Vec3 forward = new Orbit(Vec3.ZERO, bearing, elevation, 1).forward();
    return of(View.fitted(points, forward, area, width, height), points);
  }

  /** Unit vector from the camera to its target. */
  public Vec3 forward() {
    return new Vec3(
        -Math.cos(bearing) * Math.cos(elevation),
        -Math.sin(bearing) * Math.cos(elevation),
        -Math.sin(elevation));
  }

  /**
   * What it sees.
   *
   * @param points that must not be cut off behind
   * @param width of the image, pixels
   * @param height of the image, pixels
   */
  public View view(List<Vec3> points, int width, int height) {
    Vec3 forward = forward();
    Vec3 eye = target.minus(forward.times(distance));
    double depth = distance;
    for (Vec3 p : points) {
      depth = Math.max(depth, p.minus(eye).dot(forward));
    }
    return new View(eye, forward, View.HALF_ANGLE, width, height, depth);
  }

  /**
   * Turned as a pull on the image turns the scene.
   *
   * @param across pull to the right, parts of the image's height
   * @param down pull downwards, likewise
   */
  public Orbit turned(double across, double down) {
    return new Orbit(
        target, bearing - across * PER_HEIGHT, elevation + down * PER_HEIGHT, distance);
  }

  /** Shifted so that what is at the target's depth follows a pull, parts of the image's height. */
  public Orbit panned(double across, double down) {
    View view = view(List.of(), 1, 1);
    double size = 2 * distance * Math.tan(View.HALF_ANGLE);
    Vec3 shift = view.up().times(down * size).minus(view.right().times(across * size));
    return new Orbit(target.plus(shift), bearing, elevation, distance);
  }

  /** Nearer by a factor above 1, farther by one below. */
  public Orbit zoomed(double factor) {
    return new Orbit(target, bearing, elevation, distance / factor);
  }

  /** From the same direction, with all points inside an area of the image. */
  public Orbit refitted(List<Vec3> points, View.Area area, int width, int height) {
    return fitted(bearing, elevation, points, area, width, height);
  }
}
