package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.KnownJoints;
import io.github.holdpath.sim.motion.LawStretch;
import io.github.holdpath.sim.motion.MotionPiece;
import java.util.Optional;

/**
 * A piece played slower.
 *
 * @param inner the piece
 * @param factor k, above 0, at most 1
 * @param from start, s
 * @param to end, s
 */
record SlowedPiece(MotionPiece inner, double factor, double from, double to)
    implements MotionPiece {
  @Override
  public int segment() {
    return inner.segment();
  }

  /** The time of the piece that is played at a time, s. */
  double innerTime(double time) {
    return time >= to ? inner.to() : Math.min(inner.to(), inner.from() + (time - from) * factor);
  }

  /** The joints of a piece that knows them, when it is played like this one. */
  KnownJoints.Joints joints(JointedPiece known) {
    return (time, q, qd, qdd) -> {
      known.joints(innerTime(time), q, qd, qdd);
      for (int i = 0; i < q.length; i++) {
        qd[i] *= factor;
        qdd[i] *= factor * factor;
      }
    };
  }

  @Override
  public void state(double time, double[] out) {
    inner.state(innerTime(time), out);
    double square = factor * factor;
    for (int i = 0; i < 3; i++) {
      out[MotionState.VELOCITY + i] *= factor;
      out[MotionState.ANGULAR_VELOCITY + i] *= factor;
      out[MotionState.ACCELERATION + i] *= square;
      out[MotionState.ANGULAR_ACCELERATION + i] *= square;
    }
  }

  @Override
  public double distance(double time) {
    return inner.distance(innerTime(time));
  }

  @Override
  public boolean still() {
    return inner.still();
  }

  @Override
  public Optional<LawStretch> law() {
    return inner
        .law()
        .map(
            l ->
                new LawStretch(
                    l.law(),
                    l.limits().slower(factor),
                    l.phase().slower(factor, from),
                    l.length(),
                    l.turn()));
  }
}
