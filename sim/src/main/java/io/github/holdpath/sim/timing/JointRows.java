package io.github.holdpath.sim.timing;

import io.github.holdpath.sim.timelaw.AxisLimits;
import java.util.List;

/**
 * The limits of speed and acceleration of each joint along a path (theory, eq. 5.52). The jerk of
 * the limits is not looked at. Holds scratch memory: one instance per thread.
 */
public final class JointRows implements PathRows {
  private final JointCurve curve;
  private final int joints;
  private final double[] minSpeed;
  private final double[] maxSpeed;
  private final double[] minAcceleration;
  private final double[] maxAcceleration;
  private final double[] q;
  private final double[] dq;
  private final double[] ddq;

  /**
   * The rows of a curve.
   *
   * @param curve the path of the joints
   * @param limits one for each joint, in its order and unit
   * @throws IllegalArgumentException if there are more or fewer limits than joints
   */
  public JointRows(JointCurve curve, List<AxisLimits> limits) {
    this.curve = curve;
    joints = curve.joints();
    if (limits.size() != joints) {
      throw new IllegalArgumentException(
          "limits must be one for each of " + joints + " joints, but were " + limits.size());
    }
    minSpeed = limits.stream().mapToDouble(AxisLimits::minSpeed).toArray();
    maxSpeed = limits.stream().mapToDouble(AxisLimits::maxSpeed).toArray();
    minAcceleration = limits.stream().mapToDouble(AxisLimits::minAcceleration).toArray();
    maxAcceleration = limits.stream().mapToDouble(AxisLimits::maxAcceleration).toArray();
    q = new double[joints];
    dq = new double[joints];
    ddq = new double[joints];
  }

  @Override
  public double length() {
    return curve.length();
  }

  @Override
  public int rows() {
    return 2 * joints;
  }

  @Override
  public int pieces() {
    return curve.pieces();
  }

  @Override
  public double start(int piece) {
    return curve.start(piece);
  }

  @Override
  public double at(int piece, double s, double[] a, double[] b, double[] c, int offset) {
    curve.at(piece, s, q, dq, ddq);
    double cap = Double.POSITIVE_INFINITY;
    int row = offset;
    for (int j = 0; j < joints; j++) {
      a[row] = dq[j];
      b[row] = ddq[j];
      c[row] = maxAcceleration[j];
      a[row + 1] = -dq[j];
      b[row + 1] = -ddq[j];
      c[row + 1] = -minAcceleration[j];
      row += 2;
      cap = Math.min(cap, cap(j));
    }
    return cap;
  }

  /** Largest x by the speed of one joint, from the last place asked for. */
  private double cap(int j) {
    double rate = (dq[j] > 0 ? maxSpeed[j] : minSpeed[j]) / dq[j];
    return rate * rate;
  }

  /**
   * Largest part of a bound that a derivative of s alone, times dq/ds, makes for a joint.
   *
   * @param derivative s'', s''' or the like
   * @param most bound of that derivative of each joint
   */
  double along(int piece, double s, double derivative, double[] most) {
    curve.at(piece, s, q, dq, ddq);
    double part = 0;
    for (int j = 0; j < joints; j++) {
      part = Math.max(part, Math.abs(dq[j] * derivative) / most[j]);
    }
    return part;
  }

  @Override
  public String name(int row) {
    return "joint " + (row / 2 + 1) + (row % 2 == 0 ? " acceleration" : " deceleration");
  }

  @Override
  public String capName(int piece, double s) {
    curve.at(piece, s, q, dq, ddq);
    int least = 0;
    for (int j = 1; j < joints; j++) {
      if (cap(j) < cap(least)) {
        least = j;
      }
    }
    return "joint " + (least + 1) + " speed";
  }
}
