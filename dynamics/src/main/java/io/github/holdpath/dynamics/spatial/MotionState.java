package io.github.holdpath.dynamics.spatial;

/**
 * Motion of the grip frame T at one instant, seen from and in the axes of the world W.
 *
 * <p>Loops use the flat form of {@link #SIZE} numbers: position at {@link #POSITION}, unit
 * quaternion (w, x, y, z) at {@link #ROTATION}, then velocity, angular velocity, acceleration and
 * angular acceleration at the offsets named here.
 *
 * @param pose {@code X_WT}
 * @param velocity of T's origin, m/s
 * @param angularVelocity rad/s
 * @param acceleration of T's origin, gravity not in it, m/s^2
 * @param angularAcceleration rad/s^2
 */
public record MotionState(
    Pose pose, Vec3 velocity, Vec3 angularVelocity, Vec3 acceleration, Vec3 angularAcceleration) {
  /** Offset of the position in the flat form. */
  public static final int POSITION = 0;

  /** Offset of the quaternion in the flat form. */
  public static final int ROTATION = 3;

  /** Offset of the velocity in the flat form. */
  public static final int VELOCITY = 7;

  /** Offset of the angular velocity in the flat form. */
  public static final int ANGULAR_VELOCITY = 10;

  /** Offset of the acceleration in the flat form. */
  public static final int ACCELERATION = 13;

  /** Offset of the angular acceleration in the flat form. */
  public static final int ANGULAR_ACCELERATION = 16;

  /** Length of the flat form. */
  public static final int SIZE = 19;

  /** At rest in a pose. */
  public static MotionState atRest(Pose pose) {
    return new MotionState(pose, Vec3.ZERO, Vec3.ZERO, Vec3.ZERO, Vec3.ZERO);
  }

  /** From the flat form. */
  public static MotionState of(double[] s) {
    return new MotionState(
        new Pose(vec(s, POSITION), new Quaternion(s[3], s[4], s[5], s[6])),
        vec(s, VELOCITY),
        vec(s, ANGULAR_VELOCITY),
        vec(s, ACCELERATION),
        vec(s, ANGULAR_ACCELERATION));
  }

  /** The flat form. */
  public double[] toArray() {
    double[] s = new double[SIZE];
    put(pose.position(), s, POSITION);
    s[3] = pose.rotation().w();
    s[4] = pose.rotation().x();
    s[5] = pose.rotation().y();
    s[6] = pose.rotation().z();
    put(velocity, s, VELOCITY);
    put(angularVelocity, s, ANGULAR_VELOCITY);
    put(acceleration, s, ACCELERATION);
    put(angularAcceleration, s, ANGULAR_ACCELERATION);
    return s;
  }

  private static Vec3 vec(double[] s, int at) {
    return new Vec3(s[at], s[at + 1], s[at + 2]);
  }

  private static void put(Vec3 v, double[] s, int at) {
    s[at] = v.x();
    s[at + 1] = v.y();
    s[at + 2] = v.z();
  }
}
