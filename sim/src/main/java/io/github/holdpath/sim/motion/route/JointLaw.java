package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.path.Search;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.LawProfile;
import io.github.holdpath.sim.timelaw.RestToRest;
import java.util.List;
import java.util.Optional;

/**
 * Plans the law of a move along the joints: within limits of the parameter, with some caps on its
 * speed, and each then played as fast as keeps every limit of the grip frame and of the joints; of
 * these the shortest (theory, eq. 5.69 and 5.70).
 */
final class JointLaw {
  /** Caps that are tried lie so many to 1. */
  private static final int CAPS = 8;

  /** A law must be shorter by more than rounding to be preferred. */
  private static final double SHORTER = 1 - 1e-12;

  private final JointWay way;
  private final MoveLimits limits;
  private final LawKind law;

  JointLaw(JointWay way, MoveLimits limits, LawKind law) {
    this.way = way;
    this.limits = limits;
    this.law = law;
  }

  /** The limits of the parameter from what bounds it at its quickest place (eq. 5.69). */
  private LawLimits bounds() {
    double moves = way.length() > 0 ? largest(MotionState.VELOCITY) : 0;
    double turns = way.turn() > 0 ? largest(MotionState.ANGULAR_VELOCITY) : 0;
    double speed = Math.min(limits.speed() / moves, limits.turnSpeed() / turns);
    double acceleration =
        Math.min(limits.acceleration() / moves, limits.turnAcceleration() / turns);
    List<RobotJoint> joints = way.states().robot().joints();
    for (int k = 0; k < joints.size(); k++) {
      double change = Math.abs(way.states().change(k));
      JointLimits own = joints.get(k).limits();
      speed = Math.min(speed, own.speed() / change);
      acceleration = Math.min(acceleration, own.acceleration() / change);
    }
    double jerk = Math.min(limits.jerk() / moves, limits.turnJerk() / turns);
    return LawLimits.symmetric(speed, acceleration, jerk);
  }

  private double largest(int offset) {
    double[] s = new double[MotionState.SIZE];
    return Search.largest(
        u -> {
          way.states().state(u, 1, 0, s);
          return Flat.norm(s, offset);
        },
        0,
        1,
        JointWay.CELLS);
  }

  /** What no limit bounds though the law needs it, and what to do; empty if nothing. */
  Optional<String> missing() {
    LawLimits bounds = bounds();
    if (Double.isInfinite(bounds.speed())) {
      return Optional.of(missing("speed", " or a speed to an axis of the robot that moves"));
    }
    if (Double.isInfinite(bounds.acceleration())) {
      return Optional.of(
          missing("acceleration", " or an acceleration to an axis of the robot that moves"));
    }
    if (law.boundsJerk() && Double.isInfinite(bounds.jerk())) {
      return Optional.of(missing("jerk", "; joints have no limit of it"));
    }
    return Optional.empty();
  }

  private String missing(String name, String or) {
    boolean moves = way.length() > 0;
    String limit =
        moves ? name : "turn" + Character.toUpperCase(name.charAt(0)) + name.substring(1);
    return "nothing bounds the " + name + " of this move; give limits/" + limit + or;
  }

  /**
   * The law, its position the parameter from 0 to 1.
   *
   * @param override the share of full speed at which it is played, above 0 up to 1
   */
  LawProfile plan(double override) {
    LawLimits bounds = bounds();
    LawLimits best = bounds;
    double least = Double.POSITIVE_INFINITY;
    double known = Double.POSITIVE_INFINITY;
    for (int i = CAPS; i >= 1; i--) {
      LawLimits capped = capped(bounds, i / (double) CAPS);
      LawProfile shape = RestToRest.plan(law, capped, 1);
      double reached = shape.peakSpeed();
      if (reached == known) {
        continue; // the cap is above what the law reaches anyway
      }
      known = reached;
      double duration = shape.duration() / room(shape, JointPeaks.roughly(way, law, shape));
      if (duration < least * SHORTER) {
        least = duration;
        best = capped;
      }
    }
    LawProfile shape = RestToRest.plan(law, best, 1);
    double k = room(shape, JointPeaks.of(way, law, shape));
    return RestToRest.plan(law, scaled(best, k * override), 1);
  }

  private static LawLimits capped(LawLimits l, double cap) {
    return LawLimits.symmetric(l.speed() * cap, l.acceleration(), l.jerk());
  }

  private static LawLimits scaled(LawLimits l, double k) {
    return LawLimits.symmetric(l.speed() * k, l.acceleration() * k * k, l.jerk() * k * k * k);
  }

  /** The k by which a law may be played until the grip frame or a joint meets a limit. */
  private double room(LawProfile shape, JointPeaks peaks) {
    double k = peaks.room(limits);
    double most = Math.max(shape.peakAcceleration(), shape.peakDeceleration());
    List<RobotJoint> joints = way.states().robot().joints();
    for (int i = 0; i < joints.size(); i++) {
      double change = Math.abs(way.states().change(i));
      JointLimits own = joints.get(i).limits();
      k = Math.min(k, own.speed() / (change * shape.peakSpeed()));
      k = Math.min(k, Math.sqrt(own.acceleration() / (change * most)));
    }
    return k;
  }
}
