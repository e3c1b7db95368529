package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.PathCurve;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.robot.Following.OutOfReach;
import io.github.holdpath.sim.robot.Reach.Unreachable;
import java.util.Optional;

/** Looks along a path, from where a robot did not get on, for what is out of its reach. */
final class ReachScan {
  private static final int LOOKS = 64;
  private static final int HALVINGS = 40;

  /** Looks within which the path must leave the reach for that to be why it did not get on. */
  private static final int SOON = 2;

  private final Robot robot;
  private final PathCurve curve;
  private final Pose grip;
  private final boolean closedForm;
  private final double[] near;

  /**
   * Begins where the robot stood.
   *
   * @param near joint values to search from, where there is no closed form
   */
  ReachScan(Robot robot, PathCurve curve, Pose grip, double[] near) {
    this.robot = robot;
    this.curve = curve;
    this.grip = grip;
    this.near = near.clone();
    closedForm = hasClosedForm(robot);
  }

  private static boolean hasClosedForm(Robot robot) {
    return !(robot instanceof SerialArm arm) || arm.hasClosedForm();
  }

  /**
   * The answer for a path that begins out of reach. Where that took a search the rest of the path
   * is not looked at: each look would take as long.
   */
  static OutOfReach fromStart(Robot robot, PathCurve curve, Pose grip, Unreachable atStart) {
    OutOfReach start = new OutOfReach(0, 0, atStart);
    if (!hasClosedForm(robot)) {
      return start;
    }
    Optional<OutOfReach> more = new ReachScan(robot, curve, grip, new double[0]).from(0);
    return more.filter(out -> out.why().measure() > atStart.measure())
        .map(out -> new OutOfReach(0, out.worstAt(), out.why()))
        .orElse(start);
  }

  /** Pose of the flange in the world at a place of the path; allocates. */
  static Pose flangeAt(PathCurve curve, double s, Pose grip) {
    double[] p = new double[PathPoint.SIZE];
    curve.at(s, p);
    Pose pose = new Pose(new Vec3(p[0], p[1], p[2]), new Quaternion(p[3], p[4], p[5], p[6]));
    return pose.times(grip.inverse());
  }

  private Optional<Unreachable> at(double s) {
    Pose flange = flangeAt(curve, s, grip);
    if (closedForm) {
      return robot.inverse(flange) instanceof Unreachable out ? Optional.of(out) : Optional.empty();
    }
    double gap = new PoseSearch(robot).refine(near.clone(), flange);
    if (gap < PoseSearch.REACHED) {
      return Optional.empty();
    }
    String words = "the arm does not reach it from where it stood";
    return Optional.of(new Unreachable(Reach.Cause.NOT_FOUND, words, gap * robot.length()));
  }

  /** What is out of reach soon after a place; empty if nothing is. */
  Optional<OutOfReach> from(double start) {
    double step = (curve.length() - start) / LOOKS;
    double first = -1;
    double worstAt = 0;
    Optional<Unreachable> worst = Optional.empty();
    // A path that is turned back at once may leave the reach for less than a step.
    double soonest = Math.min(start + 1e-6 * curve.length(), curve.length());
    for (int i = 0; i <= LOOKS; i++) {
      double s = i == 0 ? soonest : Math.min(start + i * step, curve.length());
      Optional<Unreachable> out = at(s);
      if (out.isPresent()) {
        first = first < 0 ? s : first;
        if (worst.isEmpty() || out.get().measure() > worst.get().measure()) {
          worst = out;
          worstAt = s;
        }
      }
      if (i >= SOON && worst.isEmpty()) {
        return Optional.empty();
      }
    }
    if (worst.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new OutOfReach(edge(start, first), worstAt, worst.get()));
  }

  private double edge(double inside, double outside) {
    double in = inside;
    double out = outside;
    if (at(in).isPresent()) {
      return in;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (in + out) / 2;
      if (at(middle).isPresent()) {
        out = middle;
      } else {
        in = middle;
      }
    }
    return out;
  }
}
