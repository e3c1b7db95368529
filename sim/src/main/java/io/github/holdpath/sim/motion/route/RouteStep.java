package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.MoveLimits;

/** One step of a route. */
public sealed interface RouteStep {
  /** Place in the scene file, a JSON Pointer without its leading slash, as {@code route/2}. */
  String pointer();

  /**
   * A move to a pose.
   *
   * @param pointer place in the scene file
   * @param name given by the user, or empty
   * @param shape of its way; orientation goes by the shortest arc, evenly along the way, except
   *     along the joints
   * @param target {@code X_WT} at its end
   * @param limits of this move as played in full
   * @param blend radius of the zone about the target in which the path may leave the corner, m, or
   *     rad where this move and the next only turn; 0 where the move ends at rest
   * @param override the share of full speed at which it is played, above 0 up to 1
   */
  record Move(
      String pointer,
      String name,
      MoveShape shape,
      Pose target,
      MoveLimits limits,
      double blend,
      double override)
      implements RouteStep {
    /**
     * Refuses a blend and an override out of range.
     *
     * @throws IllegalArgumentException naming the number
     */
    public Move {
      if (!(blend >= 0) || Double.isInfinite(blend)) {
        throw new IllegalArgumentException(
            "blend must be finite and not negative, but was " + blend);
      }
      if (!(override > 0 && override <= 1)) {
        throw new IllegalArgumentException("override must be above 0 up to 1, but was " + override);
      }
    }

    /** A straight move that ends at rest, played in full. */
    public Move(String pointer, String name, Pose target, MoveLimits limits) {
      this(pointer, name, MoveShape.LINE, target, limits, 0, 1);
    }

    /** Limits of the move as it is played: slower in time by the override (theory, eq. 5.65). */
    public MoveLimits played() {
      return limits.slower(override);
    }
  }

  /**
   * Standing still.
   *
   * @param pointer place in the scene file
   * @param duration s, not negative
   */
  record Wait(String pointer, double duration) implements RouteStep {}

  /**
   * Gripping the part; held from the end of the wait.
   *
   * @param pointer place in the scene file
   * @param pause s, not negative
   */
  record Take(String pointer, double pause) implements RouteStep {}

  /**
   * Letting the part go; held until the start of the wait.
   *
   * @param pointer place in the scene file
   * @param pause s, not negative
   */
  record Release(String pointer, double pause) implements RouteStep {}
}
