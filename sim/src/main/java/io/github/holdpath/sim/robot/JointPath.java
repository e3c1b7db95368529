package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.path.PathCurve;
import java.util.List;

/**
 * Joint values of a robot along a path of its grip frame. Immutable: knots that were followed one
 * from the other; a {@link JointPathSampler} finds the exact values anywhere between.
 */
public final class JointPath {
  final Robot robot;
  final Pose grip;
  final PathCurve curve;
  final double[] s;
  final double[][] q;
  final double[][] q1;
  final double[][] q2;

  JointPath(Robot robot, Pose grip, PathCurve curve, List<Knot> knots) {
    this.robot = robot;
    this.grip = grip;
    this.curve = curve;
    s = knots.stream().mapToDouble(Knot::s).toArray();
    q = knots.stream().map(k -> k.q().clone()).toArray(double[][]::new);
    q1 = knots.stream().map(k -> k.q1().clone()).toArray(double[][]::new);
    q2 = knots.stream().map(k -> k.q2().clone()).toArray(double[][]::new);
  }

  /** The robot. */
  public Robot robot() {
    return robot;
  }

  /** Where the path parameter ends, m or rad. */
  public double length() {
    return s[s.length - 1];
  }

  /** Number of knots. */
  public int knots() {
    return s.length;
  }

  /**
   * Path parameter of a knot.
   *
   * @param index 0 to {@link #knots} less 1
   */
  public double knot(int index) {
    return s[index];
  }

  /** A new workspace that reads this path. */
  public JointPathSampler sampler() {
    return new JointPathSampler(this);
  }

  /** A place that was followed: arrays are not shared. */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this package, never compared
  record Knot(double s, double[] q, double[] q1, double[] q2) {}
}
