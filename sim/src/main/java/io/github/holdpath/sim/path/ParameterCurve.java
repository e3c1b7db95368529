package io.github.holdpath.sim.path;

/** A path of the grip frame by a parameter u from 0 to 1 of its own, not by its way. */
public interface ParameterCurve {
  /**
   * Pose and derivatives by u. Allocates nothing.
   *
   * @param u 0 to 1
   * @param out flat form of {@link PathPoint}, with u in place of s, overwritten
   */
  void at(double u, double[] out);

  /** Whether the origin stands all along, so that the path only turns. */
  boolean onlyTurns();
}
