package io.github.holdpath.sim.motion;

import io.github.holdpath.sim.timelaw.LawPhase;

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
 */
record ChainPiece(
    ChainStates path,
    int index,
    double start,
    double end,
    LawPhase phase,
    double segmentStart,
    int segment)
    implements MotionPiece {
  @Override
  public double from() {
    return phase.from();
  }

  @Override
  public double to() {
    return phase.to();
  }

  @Override
  public void state(double time, double[] out) {
    path.state(index, way(time), phase.speedAt(time), phase.accelerationAt(time), out);
  }

  @Override
  public double distance(double time) {
    return way(time) - segmentStart;
  }

  @Override
  public boolean still() {
    return false;
  }

  /** Rounding of the law must not lead off the piece. */
  private double way(double time) {
    return Math.max(start, Math.min(end, phase.positionAt(time)));
  }
}
