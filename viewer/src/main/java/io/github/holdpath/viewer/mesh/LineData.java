package io.github.holdpath.viewer.mesh;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Straight lines one pixel wide.
 *
 * @param points two ends of each line, x, y, z, world axes, m
 * @param rgb colour of all
 */
public record LineData(double[] points, int rgb) {
  /** Refuses half a line and numbers that are not finite; keeps the array. */
  public LineData {
    if (points.length % 6 != 0) {
      throw new IllegalArgumentException(
          "points must be six numbers for each line, but are " + points.length);
    }
    for (double v : points) {
      if (!Double.isFinite(v)) {
        throw new IllegalArgumentException("points must be finite, but one was " + v);
      }
    }
  }

  /** Lines between pairs of points. */
  public static LineData of(List<Vec3> ends, int rgb) {
    double[] points = new double[3 * ends.size()];
    for (int i = 0; i < ends.size(); i++) {
      points[3 * i] = ends.get(i).x();
      points[3 * i + 1] = ends.get(i).y();
      points[3 * i + 2] = ends.get(i).z();
    }
    return new LineData(points, rgb);
  }

  /** Lines along a chain of points. */
  public static LineData chain(List<Vec3> chain, int rgb) {
    List<Vec3> ends = new ArrayList<>();
    for (int i = 1; i < chain.size(); i++) {
      ends.add(chain.get(i - 1));
      ends.add(chain.get(i));
    }
    return of(ends, rgb);
  }
}
