package io.github.holdpath.sim.motion.recorded;

import io.github.holdpath.sim.motion.JointedPiece;

/**
 * The whole of a recording of joints as one smooth piece.
 *
 * @param piece motion of the grip frame
 * @param curve the joints
 */
record RecordedJointPiece(RecordedPiece piece, JointCurve curve) implements JointedPiece {
  @Override
  public void joints(double time, double[] q, double[] qd, double[] qdd) {
    curve.joints(time, q, qd, qdd);
  }

  @Override
  public double from() {
    return piece.from();
  }

  @Override
  public double to() {
    return piece.to();
  }

  @Override
  public int segment() {
    return piece.segment();
  }

  @Override
  public void state(double time, double[] out) {
    piece.state(time, out);
  }

  @Override
  public double distance(double time) {
    return piece.distance(time);
  }

  @Override
  public boolean still() {
    return piece.still();
  }
}
