package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.robot.FlangeToGrip;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotMotion;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Motion states of the grip frame while all joints go in proportion from one posture to another by
 * a parameter u from 0 to 1 (theory, eq. 5.66 to 5.68). The workspace is lent to one caller at a
 * time; a second one at the same time makes its own.
 */
final class JointStates {
  /** Spacing of the differences for third derivatives; their error goes by its fourth power. */
  private static final double STEP = 1e-3;

  /** A joint that changes less stands still, rad or m. */
  private static final double ROUNDING = 1e-13;

  private final Robot robot;
  private final Pose grip;
  private final double[] from;
  private final double[] change;
  private final double sign;
  private final AtomicReference<@Nullable Work> spare = new AtomicReference<>();

  /** What one caller needs at a time. */
  private static final class Work {
    private final RobotMotion motion;
    private final FlangeToGrip toGrip;
    private final double[] q;
    private final double[] qd;
    private final double[] qdd;
    private final double[] state = new double[MotionState.SIZE];
    private final double[] sum = new double[6];

    Work(Robot robot, Pose grip) {
      motion = robot.motion();
      toGrip = new FlangeToGrip(grip);
      q = new double[motion.drives()];
      qd = q.clone();
      qdd = q.clone();
    }
  }

  /**
   * Joins two postures.
   *
   * @param robot the robot
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param from joint values at u = 0, rad or m, which fit a place of the flange
   * @param to joint values at u = 1
   * @param before of the two quaternions of the grip at u = 0 the one to begin with
   */
  JointStates(Robot robot, Pose grip, double[] from, double[] to, Quaternion before) {
    this.robot = robot;
    this.grip = grip;
    this.from = from.clone();
    change = new double[from.length];
    for (int k = 0; k < change.length; k++) {
      double d = to[k] - from[k];
      change[k] = Math.abs(d) > ROUNDING ? d : 0;
    }
    Pose start = robot.flangeAt(from).orElseThrow().times(grip);
    sign = start.rotation().dot(before) < 0 ? -1 : 1;
  }

  Robot robot() {
    return robot;
  }

  /** By how much a joint changes, rad or m. */
  double change(int joint) {
    return change[joint];
  }

  /** Whether the joints fit a place of the flange there. */
  boolean fits(double u) {
    double[] q = new double[from.length];
    joints(u, 0, 0, q, q.clone(), q.clone());
    return robot.flangeAt(q).isPresent();
  }

  /** Pose of the grip at a place. */
  Pose pose(double u) {
    double[] s = new double[MotionState.SIZE];
    state(u, 0, 0, s);
    int r = MotionState.ROTATION;
    return new Pose(new Vec3(s[0], s[1], s[2]), new Quaternion(s[r], s[r + 1], s[r + 2], s[r + 3]));
  }

  /** Joint values and their rates, by a place and its rates (theory, eq. 5.66). */
  void joints(double u, double du, double ddu, double[] q, double[] qd, double[] qdd) {
    for (int k = 0; k < q.length; k++) {
      q[k] = from[k] + u * change[k];
      qd[k] = du * change[k];
      qdd[k] = ddu * change[k];
    }
  }

  /**
   * Motion state of the grip frame (theory, eq. 5.67).
   *
   * @param u place
   * @param du its rate, 1/s
   * @param ddu its second rate, 1/s^2
   * @param out flat form of {@link MotionState}, overwritten
   */
  void state(double u, double du, double ddu, double[] out) {
    Work work = borrow();
    state(work, u, du, ddu, out);
    spare.set(work);
  }

  private Work borrow() {
    Work lent = spare.getAndSet(null);
    return lent == null ? new Work(robot, grip) : lent;
  }

  private void state(Work work, double u, double du, double ddu, double[] out) {
    joints(u, du, ddu, work.q, work.qd, work.qdd);
    if (!work.motion.move(work.q, work.qd, work.qdd)) {
      throw new IllegalStateException("the joints fit no place of the flange at u = " + u);
    }
    work.motion.flange(out);
    work.toGrip.apply(out);
    for (int i = 0; i < 4; i++) {
      out[MotionState.ROTATION + i] *= sign;
    }
  }

  /**
   * Pose of the grip frame and its derivatives by u, the third ones exact too.
   *
   * @param out flat form of {@link PathPoint}, with u in place of s, overwritten
   */
  void path(double u, double[] out) {
    Work work = borrow();
    double[] s = work.state;
    state(work, u, 1, 0, s);
    work.motion.third(work.sum);
    work.toGrip.applyThird(work.sum);
    System.arraycopy(s, MotionState.POSITION, out, PathPoint.POSITION, 3);
    System.arraycopy(s, MotionState.ROTATION, out, PathPoint.ROTATION, 4);
    System.arraycopy(s, MotionState.VELOCITY, out, PathPoint.TANGENT, 3);
    System.arraycopy(s, MotionState.ANGULAR_VELOCITY, out, PathPoint.TURN, 3);
    System.arraycopy(s, MotionState.ACCELERATION, out, PathPoint.SECOND, 3);
    System.arraycopy(s, MotionState.ANGULAR_ACCELERATION, out, PathPoint.TURN_SECOND, 3);
    System.arraycopy(work.sum, 0, out, PathPoint.THIRD, 3);
    System.arraycopy(work.sum, 3, out, PathPoint.TURN_THIRD, 3);
    spare.set(work);
  }

  /**
   * Whole jerk of the origin and of the turning (theory, eq. 5.68).
   *
   * @param u place
   * @param du its rate, 1/s
   * @param ddu its second rate, 1/s^2
   * @param dddu its third rate, 1/s^3
   * @param out norms of both, m/s^3 and rad/s^3, overwritten
   */
  void jerk(double u, double du, double ddu, double dddu, double[] out) {
    Work work = borrow();
    double[] s = work.state;
    double[] sum = work.sum;
    state(work, u, 1, 0, s);
    double cross = 3 * du * ddu;
    for (int k = 0; k < 3; k++) {
      sum[k] = dddu * s[MotionState.VELOCITY + k] + cross * s[MotionState.ACCELERATION + k];
      sum[3 + k] =
          dddu * s[MotionState.ANGULAR_VELOCITY + k]
              + cross * s[MotionState.ANGULAR_ACCELERATION + k];
    }
    // At the ends du is so small that the third derivative of a neighbour will do.
    double at = Math.max(2 * STEP, Math.min(1 - 2 * STEP, u));
    double cube = du * du * du / (12 * STEP);
    for (int i = -2; i <= 2; i++) {
      if (i != 0) {
        state(work, at + i * STEP, 1, 0, s);
        double weight = cube * (Math.abs(i) == 1 ? 8 : -1) * Integer.signum(i);
        for (int k = 0; k < 3; k++) {
          sum[k] += weight * s[MotionState.ACCELERATION + k];
          sum[3 + k] += weight * s[MotionState.ANGULAR_ACCELERATION + k];
        }
      }
    }
    out[0] = Flat.norm(sum, 0);
    out[1] = Flat.norm(sum, 3);
    spare.set(work);
  }
}
