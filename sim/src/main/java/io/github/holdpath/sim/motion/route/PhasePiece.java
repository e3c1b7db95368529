package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.timelaw.LawPhase;

/** A piece that moves by one phase of a law. */
interface PhasePiece extends MotionPiece {
  /** The phase, its times those of the whole motion. */
  LawPhase phase();

  @Override
  default double from() {
    return phase().from();
  }

  @Override
  default double to() {
    return phase().to();
  }

  @Override
  default boolean still() {
    return false;
  }
}
