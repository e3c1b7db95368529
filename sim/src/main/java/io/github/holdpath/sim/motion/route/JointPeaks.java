package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.path.Search;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;

/**
 * What the grip frame reaches in a move along the joints, each the largest norm over the move.
 *
 * @param speed m/s
 * @param acceleration m/s^2
 * @param jerk m/s^3; infinite where the law's acceleration jumps and the grip moves
 * @param turnSpeed rad/s
 * @param turnAcceleration rad/s^2
 * @param turnJerk rad/s^3; infinite likewise
 */
record JointPeaks(
    double speed,
    double acceleration,
    double jerk,
    double turnSpeed,
    double turnAcceleration,
    double turnJerk) {
  /** Cells of a phase between which a norm has one crest at most. */
  private static final int CELLS = 32;

  /** Cells for a first look. */
  private static final int FEW = 8;

  /** What is looked at, in the order of this record, at one instant. */
  private static final class Look {
    private final JointStates states;
    private final boolean smooth;
    private final double[] state = new double[MotionState.SIZE];
    private final double[] jerk = new double[2];

    Look(JointStates states, boolean smooth) {
      this.states = states;
      this.smooth = smooth;
    }

    double at(LawPhase p, double t, int quantity) {
      if (quantity % 3 == 2) {
        states.jerk(p.positionAt(t), p.speedAt(t), p.accelerationAt(t), p.jerkAt(t), jerk);
        return jerk[quantity / 3];
      }
      states.state(p.positionAt(t), p.speedAt(t), p.accelerationAt(t), state);
      return norm(quantity);
    }

    private double norm(int quantity) {
      return Flat.norm(
          state,
          switch (quantity) {
            case 0 -> MotionState.VELOCITY;
            case 1 -> MotionState.ACCELERATION;
            case 3 -> MotionState.ANGULAR_VELOCITY;
            default -> MotionState.ANGULAR_ACCELERATION;
          });
    }

    void all(LawPhase p, double t, double[] most) {
      for (int quantity : new int[] {0, 1, 3, 4}) {
        most[quantity] = Math.max(most[quantity], quantity == 0 ? at(p, t, 0) : norm(quantity));
      }
      if (smooth) {
        most[2] = Math.max(most[2], at(p, t, 2));
        most[5] = Math.max(most[5], jerk[1]);
      }
    }
  }

  /** A first look at a few places of every phase. */
  static JointPeaks roughly(JointWay way, LawKind law, LawProfile profile) {
    Look look = new Look(way.states(), law.boundsJerk());
    double[] most = new double[6];
    for (LawPhase phase : profile.phases()) {
      for (int i = 0; i <= FEW; i++) {
        look.all(phase, phase.from() + phase.duration() * i / FEW, most);
      }
    }
    return of(way, law, most);
  }

  /** Searches every phase of a law. */
  static JointPeaks of(JointWay way, LawKind law, LawProfile profile) {
    Look look = new Look(way.states(), law.boundsJerk());
    double[] most = new double[6];
    for (int quantity = 0; quantity < most.length; quantity++) {
      if (quantity % 3 < 2 || law.boundsJerk()) {
        int which = quantity;
        for (LawPhase p : profile.phases()) {
          double largest = Search.largest(t -> look.at(p, t, which), p.from(), p.to(), CELLS);
          most[quantity] = Math.max(most[quantity], largest);
        }
      }
    }
    return of(way, law, most);
  }

  /** Where it does not move, or not turn, what was found is rounding. */
  private static JointPeaks of(JointWay way, LawKind law, double[] most) {
    boolean moves = way.length() > 0;
    boolean turns = way.turn() > 0;
    boolean jumps = !law.boundsJerk();
    return new JointPeaks(
        moves ? most[0] : 0,
        moves ? most[1] : 0,
        moves ? jumps ? Double.POSITIVE_INFINITY : most[2] : 0,
        turns ? most[3] : 0,
        turns ? most[4] : 0,
        turns ? jumps ? Double.POSITIVE_INFINITY : most[5] : 0);
  }

  /** The k by which the move may be played, above or below 1, until a limit is met (eq. 5.70). */
  double room(MoveLimits limits) {
    double first = Math.min(limits.speed() / speed, limits.turnSpeed() / turnSpeed);
    double second =
        Math.min(
            limits.acceleration() / acceleration, limits.turnAcceleration() / turnAcceleration);
    double third = Math.min(bounded(limits.jerk(), jerk), bounded(limits.turnJerk(), turnJerk));
    return Math.min(first, Math.min(Math.sqrt(second), Math.cbrt(third)));
  }

  /** A law whose acceleration jumps leaves the jerk out of account. */
  private static double bounded(double limit, double peak) {
    return Double.isInfinite(peak) ? peak : limit / peak;
  }

  MotionSegment segment(int index, RouteStep.Move move, double from, double to, JointWay way) {
    return new MotionSegment(
        index,
        move.pointer(),
        move.name(),
        from,
        to,
        way.length(),
        way.turn(),
        speed,
        acceleration,
        jerk,
        turnSpeed,
        turnAcceleration,
        turnJerk);
  }
}
