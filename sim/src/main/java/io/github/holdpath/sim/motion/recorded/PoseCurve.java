package io.github.holdpath.sim.motion.recorded;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A smooth curve of poses: the position, and a quaternion p that is not of length 1. The rotation
 * is {@code p / |p|}; angular velocity and acceleration are its exact derivatives (theory, eq. 6.5
 * to 6.7).
 */
final class PoseCurve implements RecordedCurve {
  private static final int DIMENSIONS = 7;
  private static final int P = MotionState.ROTATION;

  private final QuinticCurve curve;

  private PoseCurve(QuinticCurve curve) {
    this.curve = curve;
  }

  /** Fits poses; of the two quaternions of each rotation the one nearer to the last is taken. */
  static PoseCurve fit(double[] times, List<Pose> poses, double cutoff) {
    double[] y = new double[times.length * DIMENSIONS];
    Quaternion last = poses.get(0).rotation();
    for (int i = 0; i < times.length; i++) {
      Vec3 x = poses.get(i).position();
      Quaternion q = poses.get(i).rotation();
      last = q.dot(last) < 0 ? q.negated() : q;
      double[] row = {x.x(), x.y(), x.z(), last.w(), last.x(), last.y(), last.z()};
      System.arraycopy(row, 0, y, i * DIMENSIONS, DIMENSIONS);
    }
    return new PoseCurve(SmoothingFit.fit(times, y, DIMENSIONS, cutoff));
  }

  /** Number of even cells of the time axis, inside which the curve is a polynomial. */
  @Override
  public int cells() {
    return curve.cells();
  }

  /** Length of a cell, s. */
  @Override
  public double step() {
    return curve.step();
  }

  /** Cell that holds a time. */
  @Override
  public int cell(double time) {
    return curve.cell(time);
  }

  /**
   * State at a time; allocates nothing.
   *
   * @param time s
   * @param out flat form of {@link MotionState}, overwritten
   */
  @Override
  public void state(double time, double[] out) {
    // The twelve numbers of p, p' and p'' wait in places that are filled for good afterwards.
    for (int d = 0; d < 4; d++) {
      curve.evaluate(P + d, time, out, P + d, P + 4 + d, P + 8 + d);
    }
    rotation(out);
    for (int d = 0; d < 3; d++) {
      curve.evaluate(d, time, out, d, MotionState.VELOCITY + d, MotionState.ACCELERATION + d);
    }
  }

  /** Length of the quaternion before it is scaled to 1; near 1 where the fit can be trusted. */
  @Override
  public double quaternionLength(double time, double[] scratch) {
    double sum = 0;
    for (int d = 0; d < 4; d++) {
      curve.evaluate(P + d, time, scratch, 0, 1, 2);
      sum += scratch[0] * scratch[0];
    }
    return Math.sqrt(sum);
  }

  private static void rotation(double[] s) {
    double w = s[P];
    double x = s[P + 1];
    double y = s[P + 2];
    double z = s[P + 3];
    double w1 = s[P + 4];
    double x1 = s[P + 5];
    double y1 = s[P + 6];
    double z1 = s[P + 7];
    double w2 = s[P + 8];
    double x2 = s[P + 9];
    double y2 = s[P + 10];
    double z2 = s[P + 11];
    double n = w * w + x * x + y * y + z * z;
    double k = 2 / n;
    double ox = k * (x1 * w - w1 * x - y1 * z + z1 * y);
    double oy = k * (y1 * w - w1 * y - z1 * x + x1 * z);
    double oz = k * (z1 * w - w1 * z - x1 * y + y1 * x);
    double stretch = k * (w * w1 + x * x1 + y * y1 + z * z1);
    int at = MotionState.ANGULAR_VELOCITY;
    s[at] = ox;
    s[at + 1] = oy;
    s[at + 2] = oz;
    at = MotionState.ANGULAR_ACCELERATION;
    s[at] = k * (x2 * w - w2 * x - y2 * z + z2 * y) - stretch * ox;
    s[at + 1] = k * (y2 * w - w2 * y - z2 * x + x2 * z) - stretch * oy;
    s[at + 2] = k * (z2 * w - w2 * z - x2 * y + y2 * x) - stretch * oz;
    double length = Math.sqrt(n);
    s[P] = w / length;
    s[P + 1] = x / length;
    s[P + 2] = y / length;
    s[P + 3] = z / length;
  }

  @Override
  public void jerks(double time, double[] out) {
    out[0] = jerk(time);
    out[1] = turnJerk(time);
  }

  /** Length of the third derivative of the position, m/s^3. */
  private double jerk(double time) {
    double sum = 0;
    for (int d = 0; d < 3; d++) {
      double j = curve.third(d, time);
      sum += j * j;
    }
    return Math.sqrt(sum);
  }

  /** Length of the derivative of the angular acceleration, rad/s^3 (eq. 6.8). */
  private double turnJerk(double time) {
    double[] s = new double[MotionState.SIZE];
    double[][] p = new double[4][4];
    for (int d = 0; d < 4; d++) {
      curve.evaluate(P + d, time, s, 0, 1, 2);
      System.arraycopy(s, 0, p[d], 0, 3);
      p[d][3] = curve.third(P + d, time);
    }
    state(time, s);
    double n = dot(p, 0, 0);
    double n1 = 2 * dot(p, 0, 1);
    double n2 = 2 * (dot(p, 1, 1) + dot(p, 0, 2));
    double sum = 0;
    for (int axis = 0; axis < 3; axis++) {
      double w2 = 2 * (turned(p, 3, 0, axis) + turned(p, 2, 1, axis));
      double alpha = s[MotionState.ANGULAR_ACCELERATION + axis];
      double omega = s[MotionState.ANGULAR_VELOCITY + axis];
      double j = (w2 - 2 * n1 * alpha - n2 * omega) / n;
      sum += j * j;
    }
    return Math.sqrt(sum);
  }

  private static double dot(double[][] p, int a, int b) {
    double sum = 0;
    for (double[] part : p) {
      sum += part[a] * part[b];
    }
    return sum;
  }

  /** One component of the vector part of {@code p^(a) conj(p^(b))}. */
  private static double turned(double[][] p, int a, int b, int axis) {
    int i = axis + 1;
    int j = (axis + 1) % 3 + 1;
    int k = (axis + 2) % 3 + 1;
    return p[i][a] * p[0][b] - p[0][a] * p[i][b] - p[j][a] * p[k][b] + p[k][a] * p[j][b];
  }
}
