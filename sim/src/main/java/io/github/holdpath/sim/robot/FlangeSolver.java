package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.MotionState;
import java.util.Arrays;

/**
 * One look at a robot in given joint values: how far its flange is from where it should be, and
 * which change of joint values, or which joint speeds, the Jacobian asks for. Lengths count in
 * units of the robot's length, so that they weigh against angles (theory, eq. 8.11). A workspace.
 */
final class FlangeSolver {
  /** Condition up to which the plain inverse serves; it loses as many digits. */
  private static final double WELL = 1e4;

  private final RobotMotion motion;
  private final double length;
  private final double[] unit;
  private final double[] jacobian;
  private final SingularValues values;
  private final SquareInverse inverse = new SquareInverse();
  private boolean plain;
  private boolean apart;
  private final double[] state = new double[MotionState.SIZE];
  private final double[] gap = new double[6];
  private final double[] wanted = new double[6];
  private final double[] zero;

  FlangeSolver(Robot robot) {
    motion = robot.motion();
    length = robot.length();
    unit =
        robot.joints().stream().mapToDouble(j -> j.kind().turns() ? 1 : robot.length()).toArray();
    jacobian = new double[6 * unit.length];
    values = new SingularValues(unit.length);
    zero = new double[unit.length];
  }

  int drives() {
    return unit.length;
  }

  /**
   * Looks where the flange is.
   *
   * @param target flat motion state whose pose the flange should have
   * @return false if the joint values fit no pose
   */
  boolean look(double[] q, double[] target) {
    if (!motion.moveTo(q)) {
      return false;
    }
    motion.flange(state);
    poseGap(target);
    return true;
  }

  /** The Jacobian where it was looked last, ready to be solved with. */
  private void takeJacobian() {
    motion.jacobian(jacobian);
    for (int row = 0; row < 6; row++) {
      for (int k = 0; k < unit.length; k++) {
        jacobian[row * unit.length + k] *= row < 3 ? unit[k] / length : unit[k];
      }
    }
    plain = unit.length == SquareInverse.N && inverse.of(jacobian) && inverse.bound() < WELL;
    apart = false;
  }

  private void takeApart() {
    if (!apart) {
      values.of(jacobian);
      apart = true;
    }
  }

  private void solve(double[] y, double damping, double[] x) {
    if (plain && damping == 0) {
      inverse.solve(y, x);
    } else {
      takeApart();
      values.solve(y, damping, x);
    }
  }

  private void poseGap(double[] t) {
    for (int i = 0; i < 3; i++) {
      gap[i] = (t[i] - state[i]) / length;
    }
    // Rotation vector of target times the inverse of where it is, the shorter way round.
    double tw = t[3];
    double tx = t[4];
    double ty = t[5];
    double tz = t[6];
    double w = tw * state[3] + tx * state[4] + ty * state[5] + tz * state[6];
    double x = -tw * state[4] + tx * state[3] - ty * state[6] + tz * state[5];
    double y = -tw * state[5] + tx * state[6] + ty * state[3] - tz * state[4];
    double z = -tw * state[6] - tx * state[5] + ty * state[4] + tz * state[3];
    double s = Math.sqrt(x * x + y * y + z * z);
    double k = s < 1e-9 ? 2 / w : 2 * Math.atan2(s, Math.abs(w)) / Math.copySign(s, w);
    gap[3] = k * x;
    gap[4] = k * y;
    gap[5] = k * z;
  }

  /** How far the flange is from its target, in units of the robot's length and rad together. */
  double gap() {
    return norm(gap);
  }

  /**
   * Change of joint values that closes the gap.
   *
   * @return its size, lengths in units of the robot's length
   */
  double step(double damping, double[] dq) {
    takeJacobian();
    return close(damping, dq);
  }

  /**
   * The same by the Jacobian of the last {@link #step}, which need not be from here: nearly as good
   * beside where that was, and cheaper.
   *
   * @return its size; not a number before the first step
   */
  double stepAsBefore(double[] dq) {
    return plain ? close(0, dq) : Double.NaN;
  }

  private double close(double damping, double[] dq) {
    solve(gap, damping, dq);
    double size = norm(dq);
    for (int k = 0; k < unit.length; k++) {
      dq[k] *= unit[k];
    }
    return size;
  }

  /** The part of the gap that no change of joint values closes, to first order. */
  double openGap(double[] dq) {
    double sum = 0;
    for (int row = 0; row < 6; row++) {
      double left = gap[row];
      for (int k = 0; k < unit.length; k++) {
        left -= jacobian[row * unit.length + k] * dq[k] / unit[k];
      }
      sum += left * left;
    }
    return Math.sqrt(sum);
  }

  /** Size of a difference of joint values, lengths in units of the robot's length. */
  double size(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < unit.length; k++) {
      double d = (a[k] - b[k]) / unit[k];
      sum += d * d;
    }
    return Math.sqrt(sum);
  }

  /**
   * Joint speeds and accelerations for a flange's motion, in the joint values last looked at: the
   * nearest to those that are given where several fit.
   *
   * @param target flat motion state of the flange
   * @param qd nearest wanted speeds, overwritten by the answer
   * @param qdd nearest wanted accelerations, overwritten by the answer
   * @param scratch as long as they
   */
  boolean rates(double[] q, double[] target, double[] qd, double[] qdd, double[] scratch) {
    if (rests(qd)) {
      Arrays.fill(state, MotionState.VELOCITY, MotionState.VELOCITY + 6, 0);
    } else if (motion.move(q, qd, zero)) {
      motion.flange(state);
    } else {
      return false;
    }
    correct(target, MotionState.VELOCITY, qd, scratch);
    if (!motion.move(q, qd, qdd)) {
      return false;
    }
    motion.flange(state);
    correct(target, MotionState.ACCELERATION, qdd, scratch);
    return true;
  }

  /** Whether the flange rests, so that there is no need to look. */
  private static boolean rests(double[] qd) {
    for (double x : qd) {
      if (x != 0) {
        return false;
      }
    }
    return true;
  }

  private void correct(double[] target, int at, double[] rate, double[] scratch) {
    for (int i = 0; i < 6; i++) {
      double missing = target[at + i] - state[at + i];
      wanted[i] = i < 3 ? missing / length : missing;
    }
    solve(wanted, 0, scratch);
    for (int k = 0; k < unit.length; k++) {
      rate[k] += unit[k] * scratch[k];
    }
  }

  /** Condition in other joint values; 0 if they fit no pose. */
  double conditionAt(double[] q) {
    if (!motion.moveTo(q)) {
      return 0;
    }
    takeJacobian();
    return condition();
  }

  /** Whether the condition is at most a share, without its value where that is plain to see. */
  boolean singular(double share) {
    return !(plain && inverse.bound() * share < 1) && condition() <= share;
  }

  /** Least singular value as a share of the greatest. */
  double condition() {
    takeApart();
    return values.least() / values.greatest();
  }

  private static double norm(double[] x) {
    double sum = 0;
    for (double v : x) {
      sum += v * v;
    }
    return Math.sqrt(sum);
  }
}
