package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.path.CurveBounds;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.path.PathPiece;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.path.Search;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;

/** Gathers what one move of a chain reaches, phase by phase. */
final class ChainSegment {
  /** Cells of a phase or piece between which there is one crest at most. */
  private static final int CELLS = 32;

  private final boolean smooth;
  private double length;
  private double turn;
  private double speed;
  private double acceleration;
  private double jerk;
  private double turnSpeed;
  private double turnAcceleration;
  private double turnJerk;

  ChainSegment(LawKind law) {
    smooth = law.boundsJerk();
  }

  /** One more piece of the path. */
  void piece(PathPiece piece) {
    length += piece.length() * piece.bounds().maxTangent();
    turn += turned(piece);
  }

  /** One more phase, on a piece of the path. */
  void phase(ChainPiece piece, PathPiece path) {
    LawPhase phase = piece.phase();
    CurveBounds b = path.bounds();
    boolean steady = phase.accelerationAt(phase.from()) == 0 && phase.jerkAt(phase.from()) == 0;
    if (steady) {
      double v = phase.speedAt(phase.from());
      speed = Math.max(speed, v * b.maxTangent());
      turnSpeed = Math.max(turnSpeed, v * b.maxTurn());
      acceleration = Math.max(acceleration, v * v * b.maxCurvature());
      turnAcceleration = Math.max(turnAcceleration, v * v * b.maxTurnSecond());
      return;
    }
    speed = Math.max(speed, peak(piece, MotionState.VELOCITY));
    turnSpeed = Math.max(turnSpeed, peak(piece, MotionState.ANGULAR_VELOCITY));
    acceleration = Math.max(acceleration, peak(piece, MotionState.ACCELERATION));
    turnAcceleration = Math.max(turnAcceleration, peak(piece, MotionState.ANGULAR_ACCELERATION));
    double j =
        smooth
            ? Math.max(Math.abs(phase.jerkAt(phase.from())), Math.abs(phase.jerkAt(phase.to())))
            : Double.POSITIVE_INFINITY;
    jerk = Math.max(jerk, times(j, b.maxTangent()));
    turnJerk = Math.max(turnJerk, times(j, b.maxTurn()));
  }

  private static double times(double jerk, double size) {
    return size > 0 ? jerk * size : 0;
  }

  MotionSegment segment(int index, RouteStep.Move move, double from, double to) {
    return new MotionSegment(
        index,
        move.pointer(),
        move.name(),
        from,
        to,
        length,
        turn,
        speed,
        acceleration,
        jerk,
        turnSpeed,
        turnAcceleration,
        turnJerk);
  }

  private static double peak(ChainPiece piece, int offset) {
    double[] state = new double[MotionState.SIZE];
    return Search.largest(
        t -> {
          piece.state(t, state);
          return Flat.norm(state, offset);
        },
        piece.from(),
        piece.to(),
        CELLS);
  }

  /** Angle turned along a piece, rad: exact for even turns, by Simpson's rule elsewhere. */
  private static double turned(PathPiece piece) {
    if (piece.curve().even()) {
      return piece.bounds().maxTurn() * piece.length();
    }
    double[] point = new double[PathPoint.SIZE];
    double h = piece.length() / (2 * CELLS);
    double sum = 0;
    for (int i = 0; i <= 2 * CELLS; i++) {
      piece.curve().at(piece.from() + i * h, point);
      double weight = i == 0 || i == 2 * CELLS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * Flat.norm(point, PathPoint.TURN);
    }
    return sum * h / 3;
  }
}
