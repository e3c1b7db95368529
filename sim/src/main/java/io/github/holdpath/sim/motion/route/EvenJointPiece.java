package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.JointedPiece;

/**
 * What blends leave of a move along the joints, passed at an even speed.
 *
 * @param inner the same as a piece of the chain
 * @param line of the move
 * @param offset from a place on the chain to that on the line
 */
record EvenJointPiece(EvenPiece inner, JointLine line, double offset) implements JointedPiece {
  @Override
  public double from() {
    return inner.from();
  }

  @Override
  public double to() {
    return inner.to();
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
  public boolean still() {
    return false;
  }

  @Override
  public void joints(double time, double[] q, double[] qd, double[] qdd) {
    line.joints(offset + inner.way(time), inner.rate(), 0, q, qd, qdd);
  }
}
