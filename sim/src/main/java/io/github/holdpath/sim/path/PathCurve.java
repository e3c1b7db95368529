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

  /**
   * Largest derivatives on a stretch of it.
   *
   * @param from start of the stretch
   * @param to its end
   */
  default CurveBounds bounds(double from, double to) {
    return CurveBounds.of(this, from, to);
  }

  /**
   * Whether the sizes of its derivatives are the same all along, as on lines and arcs; then {@link
   * #bounds} is exact.
   */
  default boolean even() {
    return true;
  }
}
