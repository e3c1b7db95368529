package io.github.holdpath.sim.robot;

import io.github.holdpath.sim.path.PathPoint;
import java.util.Arrays;

/**
 * Reads a {@link JointPath}: joint values and their derivatives by the path parameter at any place,
 * exact to rounding, from the fifth-order curve between two knots and Newton steps from there
 * (theory, eq. 8.23). A workspace: make one per thread; nothing allocates.
 */
public final class JointPathSampler {
  private final JointPath path;
  private final JointMotion motion;
  private final double[] point = new double[PathPoint.SIZE];

  JointPathSampler(JointPath path) {
    this.path = path;
    motion = new JointMotion(path.robot, path.grip);
  }

  /**
   * Joint values and derivatives at a place.
   *
   * @param s path parameter, 0 to the path's length
   * @param q joint values, rad or m, overwritten
   * @param q1 first derivatives by s, overwritten
   * @param q2 second derivatives by s, overwritten
   * @return what {@link JointMotion} says of the place; on a path that was followed, FOLLOWED
   */
  public JointMotion.Outcome at(double s, double[] q, double[] q1, double[] q2) {
    if (!(s >= 0) || !(s <= path.length())) {
      throw new IllegalArgumentException("s must be 0 to " + path.length() + ", but was " + s);
    }
    int found = Arrays.binarySearch(path.s, s);
    int cell = Math.min(found >= 0 ? found : -found - 2, path.s.length - 2);
    hermite(cell, s, q, q1, q2);
    path.curve.at(s, point);
    return motion.solve(point, q, q1, q2);
  }

  /** Condition of the Jacobian where it was read last, 0 to 1. */
  public double condition() {
    return motion.condition();
  }

  /** The polynomial of fifth order that has values, slopes and second derivatives of both knots. */
  private void hermite(int cell, double s, double[] q, double[] q1, double[] q2) {
    double h = path.s[cell + 1] - path.s[cell];
    double u = (s - path.s[cell]) / h;
    double[] a = path.q[cell];
    double[] b = path.q[cell + 1];
    double[] a1 = path.q1[cell];
    double[] b1 = path.q1[cell + 1];
    double[] a2 = path.q2[cell];
    double[] b2 = path.q2[cell + 1];
    for (int k = 0; k < q.length; k++) {
      // What value, slope and curvature at the end differ from the start's own parabola.
      double value = b[k] - a[k] - h * a1[k] - h * h * a2[k] / 2;
      double slope = h * (b1[k] - a1[k]) - h * h * a2[k];
      double second = h * h * (b2[k] - a2[k]);
      double c3 = 10 * value - 4 * slope + second / 2;
      double c4 = -15 * value + 7 * slope - second;
      double c5 = 6 * value - 3 * slope + second / 2;
      q[k] = a[k] + u * (h * a1[k] + u * (h * h * a2[k] / 2 + u * (c3 + u * (c4 + u * c5))));
      q1[k] = a1[k] + u * h * a2[k] + u * u * (3 * c3 + u * (4 * c4 + u * 5 * c5)) / h;
      q2[k] = a2[k] + u * (6 * c3 + u * (12 * c4 + u * 20 * c5)) / (h * h);
    }
  }
}
