package io.github.holdpath.sim.timelaw;

/**
 * Plans the fastest move of one axis from any state to any state within limits of speed,
 * acceleration and jerk (theory, section 5.7). {@link AxisPlanner} does the same without making
 * objects.
 */
public final class StateToState {
  private StateToState() {}

  /**
   * The fastest move.
   *
   * @param from where the axis is; may be beyond the limits of speed and acceleration
   * @param to where it shall be, and how it shall move there
   * @param limits in the unit of the positions
   * @throws IllegalArgumentException if the end cannot be reached within the limits, or the fastest
   *     recovery runs past the opposite limit of speed
   */
  public static AxisMove plan(AxisState from, AxisState to, AxisLimits limits) {
    AxisPlanner planner = new AxisPlanner();
    planner.plan(
        from.position(),
        from.speed(),
        from.acceleration(),
        to.position(),
        to.speed(),
        to.acceleration(),
        limits);
    return planner.move();
  }
}
