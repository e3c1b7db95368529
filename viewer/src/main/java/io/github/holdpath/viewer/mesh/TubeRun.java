package io.github.holdpath.viewer.mesh;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A stretch of path in one colour.
 *
 * @param points along its middle, world axes, m; one point alone makes a ball
 * @param rgb colour
 * @param radius of the tube, m, positive
 * @param ribbed whether the radius swells and shrinks along the way, seen by any eye
 * @param roundStart whether the start is a dome, to close a corner or an end; flat where the tube
 *     goes on in another colour
 * @param roundEnd the same of the end
 */
public record TubeRun(
    List<Vec3> points,
    int rgb,
    double radius,
    boolean ribbed,
    boolean roundStart,
    boolean roundEnd) {
  /** Copies the list; refuses an empty one and points that fall together. */
  public TubeRun {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("points must not be empty");
    }
    if (!(radius > 0) || !Double.isFinite(radius)) {
      throw new IllegalArgumentException("radius must be positive, but was " + radius);
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).equals(points.get(i - 1))) {
        throw new IllegalArgumentException("points must differ, but two are " + points.get(i));
      }
    }
  }
}
