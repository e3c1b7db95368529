package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.path.PathCurve;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.robot.JointMotion.Outcome;
import io.github.holdpath.sim.robot.JointPath.Knot;
import java.util.ArrayList;
import java.util.List;

/**
 * Follows a path of the grip frame with the joints of a robot, without jumps: each knot is found
 * from the one before, by a step so short that the parabola through it foretells the next (theory,
 * eq. 8.22). Range, reach and singularities are looked at between knots too, at a quarter of their
 * distance and where a joint turns round or the condition is least.
 *
 * <p><b>Caution.</b> Nothing here knows of collisions.
 */
public final class PathFollower {
  /** Most by which joint values may differ from what was foretold, rad or of robot's length. */
  private static final double SURPRISE = 1e-3;

  /** Shortest and longest steps as shares of the path. */
  private static final double SHORTEST = 1e-8;

  private static final double LONGEST = 1.0 / 16;

  /** Step of differences as a share of the path. */
  private static final double DIFFERENCE = 1e-4;

  private final Robot robot;
  private final PathCurve curve;
  private final Pose grip;
  private final JointMotion motion;
  private final double[] point = new double[PathPoint.SIZE];

  private PathFollower(Robot robot, PathCurve curve, Pose grip) {
    if (!(curve.length() > 0)) {
      throw new IllegalArgumentException(
          "curve must have a length, but its length is " + curve.length());
    }
    this.robot = robot;
    this.curve = curve;
    this.grip = grip;
    motion = new JointMotion(robot, grip);
  }

  /**
   * Follows from the best start: the postures that reach the path's beginning are tried in the
   * order of {@link StartChoice} until one can follow to the end. If none can, the answer is that
   * of the first.
   *
   * @param robot the robot
   * @param curve path of the grip frame in the world
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   */
  public static Following follow(Robot robot, PathCurve curve, Pose grip) {
    PathFollower follower = new PathFollower(robot, curve, grip);
    Reach reach = robot.inverse(ReachScan.flangeAt(curve, 0, grip));
    if (reach instanceof Reach.Unreachable out) {
      return ReachScan.fromStart(robot, curve, grip, out);
    }
    Reach.Reached reached = (Reach.Reached) reach;
    List<Posture> starts = StartChoice.ranked(robot, reached.postures());
    if (starts.isEmpty()) {
      return pastAtStart(robot, reached.postures().get(0));
    }
    Following first = follower.run(starts.get(0).values());
    for (int i = 1; i < starts.size() && !(first instanceof Following.Followed); i++) {
      Following other = follower.run(starts.get(i).values());
      if (other instanceof Following.Followed) {
        return other;
      }
    }
    return first;
  }

  /**
   * Follows from given joint values.
   *
   * @param robot the robot
   * @param curve path of the grip frame in the world
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param start joint values at the path's beginning, or near them, rad or m
   */
  public static Following follow(Robot robot, PathCurve curve, Pose grip, double[] start) {
    return new PathFollower(robot, curve, grip).run(start.clone());
  }

  private static Following pastAtStart(Robot robot, Posture posture) {
    double[] q = posture.values();
    int worst = 0;
    for (int k = 1; k < q.length; k++) {
      if (robot.joints().get(k).limits().room(q[k])
          < robot.joints().get(worst).limits().room(q[worst])) {
        worst = k;
      }
    }
    RobotJoint joint = robot.joints().get(worst);
    return new Following.PastLimit(joint.name(), 0, q[worst], joint.limits().beyond(q[worst]), 0);
  }

  private Following run(double[] q) {
    double length = curve.length();
    int n = q.length;
    double[] q1 = new double[n];
    double[] q2 = new double[n];
    double[] next = new double[n];
    double[] next1 = new double[n];
    double[] next2 = new double[n];
    double[] foretold = new double[n];
    curve.at(0, point);
    Outcome outcome = motion.solveFromRest(point, q, q1, q2);
    if (outcome != Outcome.FOLLOWED) {
      return stuck(0, q, outcome == Outcome.LOST ? 0 : motion.condition());
    }
    curveOfShortest(0, q, q1, q2);
    List<Knot> knots = new ArrayList<>();
    knots.add(new Knot(0, q.clone(), q1.clone(), q2.clone()));
    double s = 0;
    double h = length / 64;
    double condition = motion.condition();
    while (s < length) {
      // No crumb is left for a last step.
      boolean last = s + 1.01 * h >= length;
      double to = last ? length : s + h;
      double step = to - s;
      for (int k = 0; k < n; k++) {
        foretold[k] = q[k] + step * (q1[k] + step * q2[k] / 2);
        next[k] = foretold[k];
      }
      curve.at(to, point);
      outcome = motion.solveFromRest(point, next, next1, next2);
      double surprise = outcome == Outcome.FOLLOWED ? motion.size(next, foretold) : 1;
      if (surprise > SURPRISE) {
        h = step / 2;
        if (h < SHORTEST * length) {
          return stuck(s, q, outcome == Outcome.SINGULAR ? motion.condition() : condition);
        }
        continue;
      }
      System.arraycopy(next, 0, q, 0, n);
      System.arraycopy(next1, 0, q1, 0, n);
      System.arraycopy(next2, 0, q2, 0, n);
      s = to;
      condition = motion.condition();
      curveOfShortest(s, q, q1, q2);
      knots.add(new Knot(s, q.clone(), q1.clone(), q2.clone()));
      h = Math.min(step * (surprise < SURPRISE / 16 ? 2 : 1), LONGEST * length);
    }
    return new PathAudit(new JointPath(robot, grip, curve, knots)).answer();
  }

  /**
   * Second derivatives of an arm with joints to spare. Its first derivatives are the shortest that
   * fit; the shortest second ones would not be their derivatives, so these are taken from
   * differences, of which {@link JointMotion} keeps what the path leaves free.
   */
  private void curveOfShortest(double s, double[] q, double[] q1, double[] q2) {
    if (q.length <= 6) {
      return;
    }
    double from = Math.max(0, s - DIFFERENCE * curve.length());
    double to = Math.min(curve.length(), s + DIFFERENCE * curve.length());
    double[] back = shortest(from, from - s, q, q1, q2);
    double[] ahead = shortest(to, to - s, q, q1, q2);
    for (int k = 0; k < q.length; k++) {
      q2[k] = (ahead[k] - back[k]) / (to - from);
    }
    curve.at(s, point);
    motion.solve(point, q, q1, q2);
  }

  /** First derivatives a little way off. */
  private double[] shortest(double at, double step, double[] q, double[] q1, double[] q2) {
    double[] near = new double[q.length];
    for (int k = 0; k < near.length; k++) {
      near[k] = q[k] + step * (q1[k] + step * q2[k] / 2);
    }
    double[] first = new double[q.length];
    curve.at(at, point);
    motion.solveFromRest(point, near, first, new double[q.length]);
    return first;
  }

  /** Why it did not get on. */
  private Following stuck(double s, double[] q, double condition) {
    return new ReachScan(robot, curve, grip, q)
        .from(s)
        .map(out -> (Following) out)
        .orElseGet(() -> new Following.Singular(s, condition));
  }
}
