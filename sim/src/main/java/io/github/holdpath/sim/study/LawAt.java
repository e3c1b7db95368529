package io.github.holdpath.sim.study;

import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.LawStretch;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** By what law the tool moves at an instant. */
public sealed interface LawAt {
  /** It stands still. */
  record Still() implements LawAt {}

  /** It follows a recording, and so no law. */
  record Recorded() implements LawAt {}

  /**
   * It follows the law of a planned move.
   *
   * @param law its kind
   * @param move with its peaks
   * @param limits that the move keeps
   * @param phases of the move in order of time
   * @param current index of the phase in which the instant lies
   * @param alongJoints whether it goes along the joints; then the speed changes by place, and
   *     phases tell that of an even way of the same length
   */
  record Planned(
      LawKind law,
      MotionSegment move,
      MoveLimits limits,
      List<Phase> phases,
      int current,
      boolean alongJoints)
      implements LawAt {
    /** Copies the list; refuses an index outside it. */
    public Planned {
      phases = List.copyOf(phases);
      if (current < 0 || current >= phases.size()) {
        throw new IllegalArgumentException("current must be a phase, but was " + current);
      }
    }

    /** Every limit that counts in this move, beside what the move reaches. */
    public List<LimitReached> limitsReached() {
      List<LimitReached> list = new ArrayList<>();
      if (move.length() > 0) {
        list.add(new LimitReached("speed", "m/s", move.peakSpeed(), limits.speed()));
        list.add(
            new LimitReached(
                "acceleration", "m/s^2", move.peakAcceleration(), limits.acceleration()));
        if (law.boundsJerk()) {
          list.add(new LimitReached("jerk", "m/s^3", move.peakJerk(), limits.jerk()));
        }
      }
      if (move.turn() > 0) {
        list.add(new LimitReached("turn speed", "rad/s", move.peakTurnSpeed(), limits.turnSpeed()));
        list.add(
            new LimitReached(
                "turn acceleration",
                "rad/s^2",
                move.peakTurnAcceleration(),
                limits.turnAcceleration()));
        if (law.boundsJerk()) {
          list.add(
              new LimitReached("turn jerk", "rad/s^3", move.peakTurnJerk(), limits.turnJerk()));
        }
      }
      return list;
    }
  }

  /**
   * A phase of a law; speeds and accelerations along the path, in m, or in rad where the move only
   * turns.
   *
   * @param from start, s
   * @param to end, s
   * @param startSpeed m/s or rad/s
   * @param endSpeed likewise
   * @param startAcceleration m/s^2 or rad/s^2, negative while slowing down
   * @param endAcceleration likewise
   */
  record Phase(
      double from,
      double to,
      double startSpeed,
      double endSpeed,
      double startAcceleration,
      double endAcceleration) {}

  /**
   * A limit of a move.
   *
   * @param quantity in words
   * @param unit of both numbers, SI
   * @param peak reached in the move
   * @param limit infinite where none is set
   */
  record LimitReached(String quantity, String unit, double peak, double limit) {
    /**
     * Peaks of a law follow from a few products; where the path bends they stay 1e-6 below, as its
     * sharpest place is searched for.
     */
    private static final double ROUNDING = 3e-6;

    /** Whether the move is held back by this limit. */
    public boolean governs() {
      return peak >= limit * (1 - ROUNDING);
    }
  }

  /** The law in a piece of a motion. */
  static LawAt of(Motion motion, MotionPiece piece) {
    Optional<LawStretch> here = piece.law();
    if (here.isEmpty()) {
      return piece.still() ? new Still() : new Recorded();
    }
    List<Phase> phases = new ArrayList<>();
    int current = 0;
    for (MotionPiece other : motion.pieces()) {
      Optional<LawStretch> law = other.law();
      if (other.segment() == piece.segment() && law.isPresent()) {
        current = other == piece ? phases.size() : current;
        phases.add(phase(law.get()));
      }
    }
    return new Planned(
        here.get().law(),
        motion.segments().get(piece.segment() - 1),
        here.get().limits(),
        phases,
        current,
        piece instanceof JointedPiece jointed && !jointed.alongPath());
  }

  private static Phase phase(LawStretch law) {
    double unit = law.length() > 0 ? law.length() : law.turn();
    LawPhase p = law.phase();
    return new Phase(
        p.from(),
        p.to(),
        unit * p.speedAt(p.from()),
        unit * p.speedAt(p.to()),
        unit * p.accelerationAt(p.from()),
        unit * p.accelerationAt(p.to()));
  }
}
