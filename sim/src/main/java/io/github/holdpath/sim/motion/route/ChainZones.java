package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.path.CurveBounds;
import io.github.holdpath.sim.path.PathChain;
import io.github.holdpath.sim.path.PathPiece;
import io.github.holdpath.sim.timelaw.ChainLaw;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.LawZone;
import java.util.ArrayList;
import java.util.List;

/**
 * What each piece of a chain leaves the law of its move's limits (theory, section 5.14). Where the
 * path bends, part of the acceleration is across it: in a blend all of it, as trapezoid and S-curve
 * cross it at constant speed; on an arc, along joints, and in blends under a cam law, a share.
 */
final class ChainZones {
  /** Maxima in blends and along joints are searched for; they are taken this much larger. */
  static final double SEARCHED = 1 + 1e-6;

  /** Shares that are tried lie so many to 1. */
  private static final int SHARES = 32;

  /** A law must be shorter by more than rounding to be preferred. */
  private static final double SHORTER = 1 - 1e-12;

  /** Up to as many bends get a share of their own. */
  private static final int MOST_SINGLE = 8;

  private final List<PathPiece> pieces;
  private final List<RouteStep.Move> moves;
  private final LawKind law;
  private final JointBounds joints;

  private ChainZones(
      List<PathPiece> pieces, List<RouteStep.Move> moves, LawKind law, JointBounds joints) {
    this.pieces = pieces;
    this.moves = moves;
    this.law = law;
    this.joints = joints;
  }

  /** The law along a chain with one zone for each of its pieces. */
  static ChainLaw plan(PathChain chain, List<RouteStep.Move> moves, LawKind law) {
    return plan(chain, moves, law, new JointBounds(List.of()));
  }

  /** The same with the limits of joints beside those of the moves. */
  static ChainLaw plan(
      PathChain chain, List<RouteStep.Move> moves, LawKind law, JointBounds joints) {
    return new ChainZones(chain.pieces(), moves, law, joints).plan();
  }

  /** The shortest of the laws with the shares that are tried: first alike, then one by one. */
  private ChainLaw plan() {
    double[] shares = new double[pieces.size()];
    List<Integer> bends = new ArrayList<>();
    for (int i = 0; i < shares.length; i++) {
      shares[i] = 1;
      if ((bent(pieces.get(i)) || joints.bent(i)) && !steady(i)) {
        bends.add(i);
      }
    }
    if (bends.isEmpty()) {
      return law(shares);
    }
    ChainLaw best = shortest(shares, bends);
    if (bends.size() > 1 && bends.size() <= MOST_SINGLE) {
      for (int bend : bends) {
        best = shortest(shares, List.of(bend));
      }
    }
    return best;
  }

  /** Gives some bends the share, alike, with which the law is shortest. */
  private ChainLaw shortest(double[] shares, List<Integer> bends) {
    double best = 0;
    double least = Double.MAX_VALUE;
    for (int k = 1; k < SHARES; k++) {
      double share = k / (double) SHARES;
      set(shares, bends, share);
      double duration = law(shares).duration();
      if (duration < least * SHORTER) {
        least = duration;
        best = share;
      }
    }
    set(shares, bends, best);
    return law(shares);
  }

  private static void set(double[] shares, List<Integer> bends, double share) {
    for (int bend : bends) {
      shares[bend] = share;
    }
  }

  private ChainLaw law(double[] shares) {
    List<LawZone> zones = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      zones.add(new LawZone(pieces.get(i).length(), limits(i, shares[i]), steady(i)));
    }
    return ChainLaw.plan(law, zones);
  }

  private static boolean bent(PathPiece piece) {
    return piece.bounds().maxCurvature() > 0 || piece.bounds().maxTurnSecond() > 0;
  }

  /** A blend, unless it begins or ends at a stop as its zone takes all of the move. */
  private boolean steady(int i) {
    boolean ramps = law == LawKind.TRAPEZOID || law == LawKind.S_CURVE;
    return ramps && pieces.get(i).blend() && i > 0 && i < pieces.size() - 1;
  }

  /** Eq. 5.60 to 5.63; what a piece does not do divides to infinity. */
  private LawLimits limits(int i, double share) {
    PathPiece piece = pieces.get(i);
    MoveLimits l = moves.get(piece.move()).played();
    CurveBounds b = piece.bounds();
    double safety = piece.curve().even() ? 1 : SEARCHED;
    double way = b.maxTangent();
    double turn = b.maxTurn() * safety;
    double bend = b.maxCurvature() * safety;
    double turnBend = b.maxTurnSecond() * safety;
    double speed = Math.min(l.speed() / way, l.turnSpeed() / turn);
    if (bend > 0) {
      speed = Math.min(speed, Math.sqrt(share * l.acceleration() / bend));
    }
    if (turnBend > 0) {
      speed = Math.min(speed, Math.sqrt(share * l.turnAcceleration() / turnBend));
    }
    speed = Math.min(speed, joints.speed(i, share));
    double jerk = Math.min(l.jerk() / way, l.turnJerk() / turn);
    if (steady(i)) {
      return new LawLimits(
          speed, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    double along = l.acceleration();
    if (bend > 0 && along < Double.POSITIVE_INFINITY) {
      double across = Math.min(1, speed * speed * bend / along);
      along *= Math.sqrt((1 - across) * (1 + across));
    }
    double turning = l.turnAcceleration();
    if (turnBend > 0 && turning < Double.POSITIVE_INFINITY) {
      turning -= speed * speed * turnBend;
    }
    double least = Math.min(Math.min(along / way, turning / turn), joints.along(i, speed));
    return LawLimits.symmetric(speed, least, jerk);
  }
}
