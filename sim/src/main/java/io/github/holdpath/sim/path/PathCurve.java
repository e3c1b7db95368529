package io.github.holdpath.sim.path;

/** A path of the grip frame through space, by a parameter s from 0 to {@link #length}. */
public interface PathCurve {
  /** Where the parameter ends: m along the way of the origin, rad where the path only turns. */
  double length();

  /**
   * Pose and derivatives at a place. Allocates nothing.
   *
   * @param s 0 to {@link #length}
   * @param out flat form of {@link PathPoint}, overwritten
   */
  void at(double s, double[] out);
}
