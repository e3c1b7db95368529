package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * Why a corner of a chain cannot be rounded.
 *
 * @param corner index from 0: corner i joins moves i and i + 1
 * @param place of the corner in the world, m
 * @param kind of the fault
 * @param largestZone the largest zone that would fit, m, or rad where the moves only turn; 0 where
 *     none does
 * @param message the reason in words for the user, without the corner's name
 */
public record ChainFault(int corner, Vec3 place, Kind kind, double largestZone, String message) {
  /** Kinds of fault. */
  public enum Kind {
    /** The zone is not above 0, yet the path does not stop. */
    NO_ZONE,
    /** One move goes on, the other turns in place. */
    MOVES_AND_TURNS,
    /** The path turns back on itself. */
    REVERSAL,
    /** The zone holds a whole move. */
    ZONE_BEYOND_MOVE,
    /** The zone takes more of a move than the one before it left. */
    ZONES_OVERLAP,
    /** A move turns too far inside the zone. */
    TURNS_TOO_FAR,
    /** Curved moves lead back on each other inside the zone. */
    FOLDS
  }
}
