package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.LawStretch;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.path.LinePath;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import java.util.Optional;

/**
 * A phase of a law along a line.
 *
 * @param path the line
 * @param phase path parameter by time, its times those of the whole motion
 * @param segment index of the move
 * @param kind of the law
 * @param limits of the move
 */
record LinePiece(LinePath path, LawPhase phase, int segment, LawKind kind, MoveLimits limits)
    implements PhasePiece {
  @Override
  public void state(double time, double[] out) {
    path.state(phase.positionAt(time), phase.speedAt(time), phase.accelerationAt(time), out);
  }

  @Override
  public double distance(double time) {
    return phase.positionAt(time) * (path.length() > 0 ? path.length() : path.angle());
  }

  @Override
  public Optional<LawStretch> law() {
    return Optional.of(new LawStretch(kind, limits, phase, path.length(), path.angle()));
  }
}
