package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.LawStretch;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import java.util.Optional;

/**
 * A phase of a law on one piece of a chain.
 *
 * @param path states of the chain
 * @param index of the piece
 * @param start where the piece begins on the chain
 * @param end where it ends
 * @param phase the way from the start of the chain by time, its times those of the whole motion
 * @param segmentStart where the move begins on the chain
 * @param segment index of the move
 * @param kind of the law
 * @param limits of the move
 */
record ChainPiece(
    ChainStates path,
    int index,
    double start,
    double end,
    LawPhase phase,
    double segmentStart,
    int segment,
    LawKind kind,
    MoveLimits limits)
    implements PhasePiece {
  @Override
  public void state(double time, double[] out) {
    path.state(index, way(time), phase.speedAt(time), phase.accelerationAt(time), out);
  }

  @Override
  public double distance(double time) {
    return way(time) - segmentStart;
  }

  @Override
  public Optional<LawStretch> law() {
    boolean moves = path.moves();
    return Optional.of(new LawStretch(kind, limits, phase, moves ? 1 : 0, moves ? 0 : 1));
  }

  /** Place on the chain; rounding of the law must not lead off the piece. */
  double way(double time) {
    return Math.max(start, Math.min(end, phase.positionAt(time)));
  }
}
