package io.github.holdpath.sim.motion.recorded;

/** A smooth curve of poses of the grip frame, fitted to a recording. */
interface RecordedCurve {
  /** Number of even cells of the time axis, inside which the fit is a polynomial. */
  int cells();

  /** Length of a cell, s. */
  double step();

  /** Cell that holds a time. */
  int cell(double time);

  /**
   * State at a time; allocates nothing once a thread has asked before.
   *
   * @param time s
   * @param out flat form of {@link io.github.holdpath.dynamics.spatial.MotionState}, overwritten
   */
  void state(double time, double[] out);

  /** Length of the quaternion before it is scaled to 1; near 1 where the fit can be trusted. */
  double quaternionLength(double time, double[] scratch);

  /**
   * Lengths of the third derivative of the position, m/s^3, and of the derivative of the angular
   * acceleration, rad/s^3.
   *
   * @param time s
   * @param out both, overwritten
   */
  void jerks(double time, double[] out);
}
