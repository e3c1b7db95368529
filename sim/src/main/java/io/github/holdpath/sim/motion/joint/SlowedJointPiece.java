package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.LawStretch;
import java.util.Optional;

/**
 * A piece that knows its joints, played slower.
 *
 * @param inner the piece
 * @param slower the same as a motion of the grip frame, played slower
 */
record SlowedJointPiece(JointedPiece inner, SlowedPiece slower) implements JointedPiece {
  @Override
  public void joints(double time, double[] q, double[] qd, double[] qdd) {
    inner.joints(slower.innerTime(time), q, qd, qdd);
    double k = slower.factor();
    for (int i = 0; i < q.length; i++) {
      qd[i] *= k;
      qdd[i] *= k * k;
    }
  }

  @Override
  public double from() {
    return slower.from();
  }

  @Override
  public double to() {
    return slower.to();
  }

  @Override
  public int segment() {
    return slower.segment();
  }

  @Override
  public void state(double time, double[] out) {
    slower.state(time, out);
  }

  @Override
  public double distance(double time) {
    return slower.distance(time);
  }

  @Override
  public boolean still() {
    return slower.still();
  }

  @Override
  public Optional<LawStretch> law() {
    return slower.law();
  }

  @Override
  public boolean alongPath() {
    return inner.alongPath();
  }
}
