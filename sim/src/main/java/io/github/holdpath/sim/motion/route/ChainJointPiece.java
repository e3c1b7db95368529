package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.LawStretch;
import io.github.holdpath.sim.timelaw.LawPhase;
import java.util.Optional;

/**
 * A phase of a law on what blends leave of a move along the joints: the joints go exactly on their
 * straight line.
 *
 * @param inner the same as a piece of the chain
 * @param line of the move
 * @param offset from a place on the chain to that on the line
 */
record ChainJointPiece(ChainPiece inner, JointLine line, double offset)
    implements PhasePiece, JointedPiece {
  @Override
  public LawPhase phase() {
    return inner.phase();
  }

  @Override
  public int segment() {
    return inner.segment();
  }

  @Override
  public void state(double time, double[] out) {
    inner.state(time, out);
  }

  @Override
  public double distance(double time) {
    return inner.distance(time);
  }

  @Override
  public Optional<LawStretch> law() {
    return inner.law();
  }

  @Override
  public boolean alongPath() {
    return true;
  }

  @Override
  public void joints(double time, double[] q, double[] qd, double[] qdd) {
    LawPhase phase = inner.phase();
    double s = offset + inner.way(time);
    line.joints(s, phase.speedAt(time), phase.accelerationAt(time), q, qd, qdd);
  }
}
