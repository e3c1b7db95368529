package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * A straight line between two poses of the grip frame, orientation turned evenly along the shortest
 * arc, both by one path parameter u from 0 to 1 (theory, eq. 5.10 to 5.12). Immutable.
 *
 * @see "Shoemake: Animating rotation with quaternion curves, SIGGRAPH 1985 (from memory)"
 */
public final class LinePath {
  /** How near to half a turn the shortest arc is no longer told apart from its opposite, rad. */
  public static final double AMBIGUOUS_WITHIN = 1e-6;

  /** Lengths (m) and angles (rad) below this are the rounding of poses that are meant equal. */
  private static final double ROUNDING = 1e-12;

  private final Pose from;
  private final Pose to;
  private final double length;
  private final double angle;
  private final double dx;
  private final double dy;
  private final double dz;
  private final double ax;
  private final double ay;
  private final double az;

  private LinePath(Pose from, Pose to, Vec3 step, double length, Vec3 axis, double angle) {
    this.from = from;
    this.to = to;
    this.length = length;
    this.angle = angle;
    dx = step.x();
    dy = step.y();
    dz = step.z();
    ax = axis.x();
    ay = axis.y();
    az = axis.z();
  }

  /**
   * The path between two poses.
   *
   * @param from {@code X_WT} at u = 0
   * @param to {@code X_WT} at u = 1
   * @throws IllegalArgumentException if the poses are the same, or half a turn apart
   */
  public static LinePath between(Pose from, Pose to) {
    if (turnIsAmbiguous(from, to)) {
      throw new IllegalArgumentException(
          "a turn of 180 degrees has no shortest arc; put a point between");
    }
    Vec3 step = to.position().minus(from.position());
    double length = step.norm();
    Vec3 turn = turn(from, to);
    double angle = turn.norm();
    boolean moves = length >= ROUNDING;
    boolean turns = angle >= ROUNDING;
    if (!moves && !turns) {
      throw new IllegalArgumentException("a path needs two poses that differ");
    }
    boolean flip = from.rotation().dot(to.rotation()) < 0;
    Quaternion end = flip ? to.rotation().negated() : to.rotation();
    return new LinePath(
        from,
        new Pose(to.position(), end),
        moves ? step : Vec3.ZERO,
        moves ? length : 0,
        turns ? turn.unit() : Vec3.ZERO,
        turns ? angle : 0);
  }

  /** Whether two poses are so near half a turn apart that no arc is the shortest. */
  public static boolean turnIsAmbiguous(Pose from, Pose to) {
    return turn(from, to).norm() > Math.PI - AMBIGUOUS_WITHIN;
  }

  /** Whether two poses are the same but for rounding, so that no path joins them. */
  public static boolean standsStill(Pose from, Pose to) {
    return to.position().minus(from.position()).norm() < ROUNDING
        && turn(from, to).norm() < ROUNDING;
  }

  /** Shortest turn from one pose to the other, a rotation vector in the world, rad. */
  private static Vec3 turn(Pose from, Pose to) {
    return to.rotation().times(from.rotation().inverse()).rotationVector();
  }

  /** {@code X_WT} at u = 0. */
  public Pose from() {
    return from;
  }

  /**
   * {@code X_WT} at u = 1; of the two quaternions of that rotation the one that the path arrives
   * at.
   */
  public Pose to() {
    return to;
  }

  /** Length of the line, m; 0 where it only turns. */
  public double length() {
    return length;
  }

  /** Angle turned through, rad, 0 to pi; 0 where it does not turn. */
  public double angle() {
    return angle;
  }

  /**
   * Motion state at a place of the path. Allocates nothing.
   *
   * @param u path parameter, 0 to 1
   * @param du its rate, 1/s
   * @param ddu its second derivative by time, 1/s^2
   * @param out flat form of {@link MotionState}, overwritten
   */
  public void state(double u, double du, double ddu, double[] out) {
    Vec3 p = from.position();
    put(p.x() + u * dx, p.y() + u * dy, p.z() + u * dz, out, MotionState.POSITION);
    rotation(u, out);
    put(du * dx, du * dy, du * dz, out, MotionState.VELOCITY);
    put(ddu * dx, ddu * dy, ddu * dz, out, MotionState.ACCELERATION);
    double turning = du * angle;
    put(turning * ax, turning * ay, turning * az, out, MotionState.ANGULAR_VELOCITY);
    double turningUp = ddu * angle;
    put(turningUp * ax, turningUp * ay, turningUp * az, out, MotionState.ANGULAR_ACCELERATION);
  }

  /** Turn about the axis, then the first rotation: the product of eq. 5.11 written out. */
  private void rotation(double u, double[] out) {
    Quaternion q = from.rotation();
    double c = Math.cos(u * angle / 2);
    double s = Math.sin(u * angle / 2);
    double x = s * ax;
    double y = s * ay;
    double z = s * az;
    int at = MotionState.ROTATION;
    out[at] = c * q.w() - x * q.x() - y * q.y() - z * q.z();
    out[at + 1] = c * q.x() + x * q.w() + y * q.z() - z * q.y();
    out[at + 2] = c * q.y() - x * q.z() + y * q.w() + z * q.x();
    out[at + 3] = c * q.z() + x * q.y() - y * q.x() + z * q.w();
  }

  private static void put(double x, double y, double z, double[] out, int at) {
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }
}
