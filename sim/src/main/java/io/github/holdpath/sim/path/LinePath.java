package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * A straight line between two poses of the grip frame, orientation turned evenly along the shortest
 * arc, both by one path parameter u from 0 to 1 (theory, eq. 5.10 to 5.12). Immutable.
 *
 * @see "Shoemake: Animating rotation with quaternion curves, SIGGRAPH 1985 (from memory)"
 */
public final class LinePath {
  /** How near to half a turn the shortest arc is no longer told apart from its opposite, rad. */
  public static final double AMBIGUOUS_WITHIN = EvenTurn.AMBIGUOUS_WITHIN;

  /** Lengths below this are the rounding of poses that are meant equal, m. */
  private static final double ROUNDING = 1e-12;

  private final Pose from;
  private final Pose to;
  private final EvenTurn turn;
  private final double length;
  private final double dx;
  private final double dy;
  private final double dz;

  private LinePath(Pose from, EvenTurn turn, Vec3 end, Vec3 step, double length) {
    this.from = from;
    this.to = new Pose(end, turn.to());
    this.turn = turn;
    this.length = length;
    dx = step.x();
    dy = step.y();
    dz = step.z();
  }

  /**
   * The path between two poses.
   *
   * @param from {@code X_WT} at u = 0
   * @param to {@code X_WT} at u = 1
   * @throws IllegalArgumentException if the poses are the same, or half a turn apart
   */
  public static LinePath between(Pose from, Pose to) {
    EvenTurn turn = EvenTurn.between(from.rotation(), to.rotation());
    Vec3 step = to.position().minus(from.position());
    double length = step.norm();
    boolean moves = length >= ROUNDING;
    if (!moves && turn.angle() == 0) {
      throw new IllegalArgumentException("a path needs two poses that differ");
    }
    return new LinePath(from, turn, to.position(), moves ? step : Vec3.ZERO, moves ? length : 0);
  }

  /** Whether two poses are so near half a turn apart that no arc is the shortest. */
  public static boolean turnIsAmbiguous(Pose from, Pose to) {
    return EvenTurn.isAmbiguous(from.rotation(), to.rotation());
  }

  /** Whether two poses are the same but for rounding, so that no path joins them. */
  public static boolean standsStill(Pose from, Pose to) {
    return to.position().minus(from.position()).norm() < ROUNDING
        && EvenTurn.vector(from.rotation(), to.rotation()).norm() < EvenTurn.ROUNDING;
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
    return turn.angle();
  }

  /** The turn on the way, evenly by u. */
  EvenTurn turn() {
    return turn;
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
    turn.rotation(u, out, MotionState.ROTATION);
    put(du * dx, du * dy, du * dz, out, MotionState.VELOCITY);
    put(ddu * dx, ddu * dy, ddu * dz, out, MotionState.ACCELERATION);
    turn.turning(du, out, MotionState.ANGULAR_VELOCITY);
    turn.turning(ddu, out, MotionState.ANGULAR_ACCELERATION);
  }

  private static void put(double x, double y, double z, double[] out, int at) {
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }
}
