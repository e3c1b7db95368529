package io.github.holdpath.sim.robot;

import java.util.Arrays;
import java.util.List;

/**
 * Which of several postures to go to from where the joints stand. The rule: of those inside the
 * joint limits the one whose largest change of a joint is least, angles in rad, slides in units of
 * the robot's length ({@link Robot#length}). Each joint that turns takes of all whole turns the
 * nearest inside its limits: without limits, the shorter way round. Where no posture is inside, the
 * nearest counts all the same. Ties go to the first.
 */
public final class NearestPosture {
  private NearestPosture() {}

  /**
   * Joint values to go to.
   *
   * @param robot the robot
   * @param postures as it answered, at least one
   * @param from where its joints stand, rad or m
   */
  public static double[] of(Robot robot, List<Posture> postures, double[] from) {
    double[] best = {};
    boolean bestInside = false;
    double least = Double.POSITIVE_INFINITY;
    for (Posture posture : postures) {
      double[] q = turned(robot, posture.values(), from);
      boolean inside = inside(robot, q);
      double change = largestChange(robot, q, from);
      if (best.length == 0 || (inside == bestInside ? change < least : inside)) {
        best = q;
        bestInside = inside;
        least = change;
      }
    }
    if (best.length != from.length) {
      throw new IllegalArgumentException(
          "from must have a value for each joint and postures must not be empty, but from was "
              + Arrays.toString(from)
              + " and postures "
              + postures);
    }
    return best;
  }

  private static double[] turned(Robot robot, double[] q, double[] from) {
    for (int k = 0; k < q.length; k++) {
      RobotJoint joint = robot.joints().get(k);
      if (joint.kind().turns()) {
        q[k] = nearest(joint.limits(), q[k], from[k]);
      }
    }
    return q;
  }

  /** The angle, of all that are whole turns from this one and inside, that is nearest another. */
  private static double nearest(JointLimits limits, double angle, double from) {
    double turn = 2 * Math.PI;
    double near = angle + turn * Math.rint((from - angle) / turn);
    if (limits.allow(near)) {
      return near;
    }
    double other = near + (near < limits.lower() ? turn : -turn);
    return limits.allow(other) ? other : near;
  }

  private static boolean inside(Robot robot, double[] q) {
    for (int k = 0; k < q.length; k++) {
      if (!robot.joints().get(k).limits().allow(q[k])) {
        return false;
      }
    }
    return true;
  }

  private static double largestChange(Robot robot, double[] q, double[] from) {
    double largest = 0;
    for (int k = 0; k < q.length; k++) {
      double unit = robot.joints().get(k).kind().turns() ? 1 : robot.length();
      largest = Math.max(largest, Math.abs(q[k] - from[k]) / unit);
    }
    return largest;
  }
}
