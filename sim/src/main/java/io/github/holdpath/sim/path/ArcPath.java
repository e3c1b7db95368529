package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Arrays;
import java.util.Optional;

/**
 * An arc of a circle, by the arc length s of the origin. Orientation turns evenly along s, by the
 * shortest arc from the first orientation to the last; the arc's own axis does not matter to it
 * (theory, eq. 5.41 and 5.42). Immutable.
 */
public final class ArcPath implements PathCurve {
  /**
   * Three points whose triangle has an angle with a smaller sine than this are taken for a straight
   * line, dimensionless.
   */
  public static final double STRAIGHT_WITHIN = 1e-6;

  /** Points nearer to each other than this are one, m. */
  private static final double COINCIDENT = 1e-9;

  private final Vec3 from;
  private final EvenTurn turn;
  private final double radius;
  private final double angle;

  /** Direction of the way at the start. */
  private final Vec3 ahead;

  /** From the start to the centre, square to {@link #ahead}. */
  private final Vec3 inward;

  private ArcPath(Vec3 from, EvenTurn turn, Vec3 ahead, Vec3 inward, double radius, double angle) {
    this.from = from;
    this.turn = turn;
    this.ahead = ahead;
    this.inward = inward;
    this.radius = radius;
    this.angle = angle;
  }

  /**
   * The arc through a point. A full circle cannot be given in this way, as its ends are one point.
   *
   * @param from {@code X_WT} at the start
   * @param via a point of the arc between its ends, in the world, m; no orientation belongs to it
   * @param to {@code X_WT} at the end
   * @throws IllegalArgumentException with the words of {@link #fault}
   */
  public static ArcPath through(Pose from, Vec3 via, Pose to) {
    fault(from, via, to)
        .ifPresent(
            reason -> {
              throw new IllegalArgumentException(reason);
            });
    Vec3 a = via.minus(from.position());
    Vec3 b = to.position().minus(via);
    Vec3 chord = to.position().minus(from.position());
    Vec3 normal = a.cross(b);
    double half = Math.atan2(normal.norm(), a.dot(b));
    double radius = chord.norm() / (2 * Math.sin(half));
    Vec3 along = chord.unit();
    // Square to the chord again: rounding of the normal must not move the end.
    Vec3 axis = normal.minus(along.times(along.dot(normal))).unit();
    Vec3 across = axis.cross(along);
    Vec3 ahead = along.times(Math.cos(half)).minus(across.times(Math.sin(half)));
    return new ArcPath(
        from.position(),
        EvenTurn.between(from.rotation(), to.rotation()),
        ahead,
        axis.cross(ahead),
        radius,
        2 * half);
  }

  /** Why no arc leads through three places, in words for the user; empty where one does. */
  public static Optional<String> fault(Pose from, Vec3 via, Pose to) {
    Vec3 a = via.minus(from.position());
    Vec3 b = to.position().minus(via);
    Vec3 chord = to.position().minus(from.position());
    if (chord.norm() < COINCIDENT) {
      return Optional.of(
          "the arc ends where it begins; a full circle needs its centre, axis and angle");
    }
    if (a.norm() < COINCIDENT) {
      return Optional.of("the point on the arc is its start; put it between start and end");
    }
    if (b.norm() < COINCIDENT) {
      return Optional.of("the point on the arc is its end; put it between start and end");
    }
    double area = a.cross(b).norm();
    double longest = Math.max(chord.norm(), Math.max(a.norm(), b.norm()));
    double shortest = Math.min(chord.norm(), Math.min(a.norm(), b.norm()));
    // The least sine of the three angles is the area over the two longest sides.
    double middle = a.norm() + b.norm() + chord.norm() - longest - shortest;
    if (area < STRAIGHT_WITHIN * longest * middle) {
      return Optional.of(
          "the three points of the arc lie on a straight line; take a line, or move the point");
    }
    return halfTurn(from.rotation(), to.rotation());
  }

  /**
   * The arc about an axis.
   *
   * @param from {@code X_WT} at the start
   * @param onAxis any point of the axis, in the world, m; the circle's centre is the point of the
   *     axis nearest to the start
   * @param axis direction of the axis in the world, of any length but 0
   * @param angle rad, right-handed about the axis; negative ones go the other way, and it may be
   *     more than a whole turn
   * @param end orientation at the end
   * @throws IllegalArgumentException if the start lies on the axis, the angle is 0 or the
   *     orientations are half a turn apart
   */
  public static ArcPath about(Pose from, Vec3 onAxis, Vec3 axis, double angle, Quaternion end) {
    aboutFault(from, onAxis, axis, angle, end)
        .ifPresent(
            reason -> {
              throw new IllegalArgumentException(reason);
            });
    Vec3 n = axis.unit().times(Math.signum(angle));
    Vec3 in = inwards(from, onAxis, n);
    Vec3 inward = in.unit();
    return new ArcPath(
        from.position(),
        EvenTurn.between(from.rotation(), end),
        inward.cross(n),
        inward,
        in.norm(),
        Math.abs(angle));
  }

  /** Why no arc about an axis leads on, in words for the user; empty where one does. */
  public static Optional<String> aboutFault(
      Pose from, Vec3 onAxis, Vec3 axis, double angle, Quaternion end) {
    if (!(axis.norm() > 0)) {
      return Optional.of("the axis of the arc has no direction");
    }
    if (!Double.isFinite(angle)) {
      return Optional.of("the angle of the arc must be finite, but was " + angle);
    }
    double radius = inwards(from, onAxis, axis.unit()).norm();
    if (radius < COINCIDENT) {
      return Optional.of(
          "the arc begins on its own axis, so it has no radius; put its centre elsewhere");
    }
    if (radius * Math.abs(angle) < COINCIDENT) {
      return Optional.of("the angle of the arc is 0; give one that moves");
    }
    return halfTurn(from.rotation(), end);
  }

  /** From the start to the nearest point of an axis of direction n. */
  private static Vec3 inwards(Pose from, Vec3 onAxis, Vec3 n) {
    Vec3 d = onAxis.minus(from.position());
    return d.minus(n.times(n.dot(d)));
  }

  private static Optional<String> halfTurn(Quaternion from, Quaternion to) {
    return EvenTurn.isAmbiguous(from, to)
        ? Optional.of("a turn of 180 degrees has no shortest arc; put a point between")
        : Optional.empty();
  }

  /** Radius, m. */
  public double radius() {
    return radius;
  }

  /** Angle at the centre, rad, positive. */
  public double angle() {
    return angle;
  }

  /** Centre in the world, m. */
  public Vec3 centre() {
    return from.plus(inward.times(radius));
  }

  /** Axis in the world, a unit vector; the arc goes right-handed about it. */
  public Vec3 axis() {
    return ahead.cross(inward);
  }

  /** Position of its end in the world, m. */
  public Vec3 end() {
    double[] point = new double[PathPoint.SIZE];
    at(length(), point);
    return Flat.vec(point, PathPoint.POSITION);
  }

  @Override
  public double length() {
    return radius * angle;
  }

  @Override
  public void at(double s, double[] out) {
    double k = 1 / radius;
    double sin = Math.sin(s * k);
    double cos = Math.cos(s * k);
    double half = Math.sin(s * k / 2);
    // From the start, not from the centre: of a large radius nothing is left to cancel.
    double x = radius * sin;
    double y = 2 * radius * half * half;
    put(x, y, out, PathPoint.POSITION);
    out[PathPoint.POSITION] += from.x();
    out[PathPoint.POSITION + 1] += from.y();
    out[PathPoint.POSITION + 2] += from.z();
    put(cos, sin, out, PathPoint.TANGENT);
    put(-k * sin, k * cos, out, PathPoint.SECOND);
    put(-k * k * cos, -k * k * sin, out, PathPoint.THIRD);
    double rate = 1 / length();
    turn.rotation(s * rate, out, PathPoint.ROTATION);
    turn.turning(rate, out, PathPoint.TURN);
    Arrays.fill(out, PathPoint.TURN_SECOND, PathPoint.TURN_SECOND + 3, 0);
    Arrays.fill(out, PathPoint.TURN_THIRD, PathPoint.TURN_THIRD + 3, 0);
  }

  private void put(double x, double y, double[] out, int at) {
    out[at] = x * ahead.x() + y * inward.x();
    out[at + 1] = x * ahead.y() + y * inward.y();
    out[at + 2] = x * ahead.z() + y * inward.z();
  }
}
