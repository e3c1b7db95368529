package io.github.holdpath.sim.motion;

import io.github.holdpath.dynamics.spatial.Pose;

/** One step of a route. */
public sealed interface RouteStep {
  /** Place in the scene file, a JSON Pointer without its leading slash, as {@code route/2}. */
  String pointer();

  /**
   * A straight move: position along the line, orientation along the shortest arc, both by one path
   * parameter.
   *
   * @param pointer place in the scene file
   * @param name given by the user, or empty
   * @param target {@code X_WT} at its end
   * @param limits that this move keeps
   */
  record Move(String pointer, String name, Pose target, MoveLimits limits) implements RouteStep {}

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
