package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * An even turn about an axis fixed in the world, along the shortest arc between two rotations
 * (theory, eq. 5.11). Immutable.
 */
final class EvenTurn {
  /** How near to half a turn the shortest arc is no longer told apart from its opposite, rad. */
  static final double AMBIGUOUS_WITHIN = 1e-6;

  /** Angles below this are the rounding of rotations that are meant equal, rad. */
  static final double ROUNDING = 1e-12;

  private final Quaternion from;
  private final Quaternion to;
  private final double angle;
  private final double ax;
  private final double ay;
  private final double az;

  private EvenTurn(Quaternion from, Quaternion to, Vec3 axis, double angle) {
    this.from = from;
    this.to = to;
    this.angle = angle;
    ax = axis.x();
    ay = axis.y();
    az = axis.z();
  }

  /**
   * The turn between two rotations.
   *
   * @throws IllegalArgumentException if they are half a turn apart
   */
  static EvenTurn between(Quaternion from, Quaternion to) {
    if (isAmbiguous(from, to)) {
      throw new IllegalArgumentException(
          "a turn of 180 degrees has no shortest arc; put a point between");
    }
    Vec3 turn = vector(from, to);
    double angle = turn.norm();
    boolean turns = angle >= ROUNDING;
    boolean flip = from.dot(to) < 0;
    return new EvenTurn(
        from, flip ? to.negated() : to, turns ? turn.unit() : Vec3.ZERO, turns ? angle : 0);
  }

  /** Whether two rotations are so near half a turn apart that no arc is the shortest. */
  static boolean isAmbiguous(Quaternion from, Quaternion to) {
    return vector(from, to).norm() > Math.PI - AMBIGUOUS_WITHIN;
  }

  /** Shortest turn from one rotation to the other, a rotation vector in the world, rad. */
  static Vec3 vector(Quaternion from, Quaternion to) {
    return to.times(from.inverse()).rotationVector();
  }

  /** The last rotation; of its two quaternions the one that the turn arrives at. */
  Quaternion to() {
    return to;
  }

  /** Angle turned through, rad, 0 to pi; 0 where it does not turn. */
  double angle() {
    return angle;
  }

  /** Turn about the axis, then the first rotation: the product of eq. 5.11 written out. */
  void rotation(double u, double[] out, int at) {
    double c = Math.cos(u * angle / 2);
    double s = Math.sin(u * angle / 2);
    double x = s * ax;
    double y = s * ay;
    double z = s * az;
    Quaternion q = from;
    out[at] = c * q.w() - x * q.x() - y * q.y() - z * q.z();
    out[at + 1] = c * q.x() + x * q.w() + y * q.z() - z * q.y();
    out[at + 2] = c * q.y() - x * q.z() + y * q.w() + z * q.x();
    out[at + 3] = c * q.z() + x * q.y() - y * q.x() + z * q.w();
  }

  /** Rotation vector of the rate times the whole angle: {@code rate A n}. */
  void turning(double rate, double[] out, int at) {
    double k = rate * angle;
    out[at] = k * ax;
    out[at + 1] = k * ay;
    out[at + 2] = k * az;
  }
}
