package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import java.util.ArrayList;
import java.util.List;

/**
 * Joint values for a pose by damped least squares, from one start or from many (theory, eq. 8.12).
 * The damping is half the square of the gap that is left, so that steps are short far away and
 * Newton's in the end.
 *
 * @see "Sugihara: Solvability-unconcerned inverse kinematics by the Levenberg-Marquardt method,
 *     IEEE Transactions on Robotics 27, 2011 (from memory)"
 */
final class PoseSearch {
  /** Gap at which a pose counts as reached; that of poses written with six digits. */
  static final double REACHED = 2e-6;

  /** Steps below this are rounding. */
  private static final double STILL = 1e-13;

  /** Postures nearer to each other than this are the same. */
  private static final double SAME = 1e-4;

  private static final int MOST_STEPS = 80;
  private static final int STARTS = 96;
  private static final int MOST_POSTURES = 16;
  private static final int[] PRIMES = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};

  private final List<RobotJoint> joints;
  private final FlangeSolver solver;
  private final double[] step;
  private final double[] best;

  PoseSearch(Robot robot) {
    joints = robot.joints();
    solver = new FlangeSolver(robot);
    step = new double[joints.size()];
    best = new double[joints.size()];
  }

  /**
   * Improves joint values until the flange is as near to its pose as it comes.
   *
   * @param q where to begin; overwritten
   * @return gap that is left
   */
  double refine(double[] q, Pose pose) {
    double[] target = MotionState.atRest(pose).toArray();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST_STEPS; i++) {
      if (!solver.look(q, target)) {
        break;
      }
      double gap = solver.gap();
      if (gap < least) {
        least = gap;
        System.arraycopy(q, 0, best, 0, q.length);
      } else if (gap < REACHED) {
        break;
      }
      double size = solver.step(gap > 1e-5 ? gap * gap / 2 : 0, step);
      if (size < STILL || !(size < 1e6)) {
        break;
      }
      for (int k = 0; k < q.length; k++) {
        q[k] += step[k];
      }
    }
    System.arraycopy(best, 0, q, 0, q.length);
    return least;
  }

  /** All postures found from given starts. */
  List<Posture> from(List<Posture> starts, Pose pose) {
    List<Posture> found = new ArrayList<>();
    for (Posture start : starts) {
      double[] q = start.values();
      if (refine(q, pose) < REACHED) {
        add(q, start.branch(), found);
      }
    }
    return List.copyOf(found);
  }

  /** All postures found from starts spread evenly over the ranges. */
  Reach everywhere(Pose pose, double length) {
    List<Posture> found = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < STARTS && found.size() < MOST_POSTURES; i++) {
      double[] q = new double[joints.size()];
      for (int k = 0; k < q.length; k++) {
        q[k] = spread(joints.get(k), i, PRIMES[k % PRIMES.length]);
      }
      double gap = refine(q, pose);
      least = Math.min(least, gap);
      if (gap < REACHED) {
        add(q, "posture " + (found.size() + 1), found);
      }
    }
    if (found.isEmpty()) {
      return new Reach.Unreachable(
          Reach.Cause.NOT_FOUND,
          "the arm does not reach it: no posture found from " + STARTS + " starts",
          least * length);
    }
    return new Reach.Reached(found);
  }

  /** Place in a joint's range by the radical inverse of a counter, which fills it evenly. */
  private static double spread(RobotJoint joint, int index, int base) {
    double share = 0;
    double digit = 1.0 / base;
    for (int i = index + 1; i > 0; i /= base) {
      share += digit * (i % base);
      digit /= base;
    }
    double lower = joint.limits().lower();
    double upper = joint.limits().upper();
    if (Double.isInfinite(upper - lower)) {
      double half = joint.kind().turns() ? Math.PI : 1;
      return (2 * share - 1) * half;
    }
    return lower + share * (upper - lower);
  }

  private void add(double[] q, String branch, List<Posture> found) {
    for (int k = 0; k < q.length; k++) {
      if (joints.get(k).kind().turns()) {
        q[k] = joints.get(k).limits().turnedIn(q[k]);
      }
    }
    for (Posture other : found) {
      if (solver.size(q, other.values()) < SAME) {
        return;
      }
    }
    found.add(new Posture(branch, q));
  }
}
