package io.github.holdpath.sim.motion;

import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;

/**
 * The law by which a piece of a planned move runs along its path.
 *
 * @param law its kind
 * @param limits that the whole move keeps, as it is played
 * @param phase position along the path by time, its times those of the whole motion
 * @param length m per unit of the phase's position; 0 where the move only turns
 * @param turn rad per unit of the phase's position; 0 where the move does not turn, and where it
 *     moves along a chain, on which the turning changes by place; along the joints both change by
 *     place and are those of the whole move
 */
public record LawStretch(
    LawKind law, MoveLimits limits, LawPhase phase, double length, double turn) {
  /** Refuses a stretch that goes nowhere, and lengths that are negative or not finite. */
  public LawStretch {
    if (!(length >= 0 && turn >= 0 && length + turn > 0) || Double.isInfinite(length + turn)) {
      throw new IllegalArgumentException(
          "length and turn must be finite, not negative and not both 0, but were "
              + length
              + " m and "
              + turn
              + " rad");
    }
  }
}
