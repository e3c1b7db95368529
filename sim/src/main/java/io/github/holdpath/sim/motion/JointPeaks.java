package io.github.holdpath.sim.motion;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.path.Search;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;
import java.util.function.ToDoubleBiFunction;

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

  /** Searches every phase of a law. */
  static JointPeaks of(JointWay way, LawKind law, LawProfile profile) {
    JointStates states = way.states();
    boolean moves = way.length() > 0;
    boolean turns = way.turn() > 0;
    boolean smooth = law.boundsJerk();
    double jump = Double.POSITIVE_INFINITY;
    return new JointPeaks(
        moves ? state(states, profile, MotionState.VELOCITY) : 0,
        moves ? state(states, profile, MotionState.ACCELERATION) : 0,
        moves ? smooth ? jerk(states, profile, false) : jump : 0,
        turns ? state(states, profile, MotionState.ANGULAR_VELOCITY) : 0,
        turns ? state(states, profile, MotionState.ANGULAR_ACCELERATION) : 0,
        turns ? smooth ? jerk(states, profile, true) : jump : 0);
  }

  private static double state(JointStates states, LawProfile profile, int offset) {
    double[] s = new double[MotionState.SIZE];
    return largest(
        profile,
        (p, t) -> {
          states.state(p.positionAt(t), p.speedAt(t), p.accelerationAt(t), s);
          return RecordedPiece.norm(s, offset);
        });
  }

  private static double jerk(JointStates states, LawProfile profile, boolean turning) {
    return largest(
        profile,
        (p, t) ->
            states.jerk(turning, p.positionAt(t), p.speedAt(t), p.accelerationAt(t), p.jerkAt(t)));
  }

  private static double largest(LawProfile profile, ToDoubleBiFunction<LawPhase, Double> norm) {
    double most = 0;
    for (LawPhase phase : profile.phases()) {
      most =
          Math.max(
              most,
              Search.largest(t -> norm.applyAsDouble(phase, t), phase.from(), phase.to(), CELLS));
    }
    return most;
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
