package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.LawStretch;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import java.util.Optional;

/**
 * A phase of a law of a move along the joints.
 *
 * @param way of the grip frame by the parameter of the move
 * @param phase that parameter by time, its times those of the whole motion
 * @param segment index of the move
 * @param kind of the law
 * @param limits of the move
 */
record JointPiece(JointWay way, LawPhase phase, int segment, LawKind kind, MoveLimits limits)
    implements PhasePiece, JointedPiece {
  @Override
  public void state(double time, double[] out) {
    way.states().state(parameter(time), phase.speedAt(time), phase.accelerationAt(time), out);
  }

  @Override
  public void joints(double time, double[] q, double[] qd, double[] qdd) {
    way.states()
        .joints(parameter(time), phase.speedAt(time), phase.accelerationAt(time), q, qd, qdd);
  }

  @Override
  public double distance(double time) {
    return way.distance(parameter(time));
  }

  @Override
  public Optional<LawStretch> law() {
    return Optional.of(new LawStretch(kind, limits, phase, way.length(), way.turn()));
  }

  /** Rounding of the law must not lead past the postures at the ends. */
  private double parameter(double time) {
    return Math.max(0, Math.min(1, phase.positionAt(time)));
  }
}
