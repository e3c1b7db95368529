package io.github.holdpath.sim.timelaw;

/**
 * Where an axis is and how it moves, in any consistent unit of position.
 *
 * @param position of the axis
 * @param speed 1/s
 * @param acceleration 1/s^2
 */
public record AxisState(double position, double speed, double acceleration) {
  /**
   * Refuses what is not finite.
   *
   * @throws IllegalArgumentException naming the quantity
   */
  public AxisState {
    finite("position", position);
    finite("speed", speed);
    finite("acceleration", acceleration);
  }

  private static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite, but was " + value);
    }
  }

  /** The state after a time (s) at a constant jerk (1/s^3). */
  AxisState after(double time, double jerk) {
    return new AxisState(
        position + time * (speed + time * (acceleration / 2 + time * jerk / 6)),
        speed + time * (acceleration + time * jerk / 2),
        acceleration + time * jerk);
  }

  /** The state seen from the other direction of the axis. */
  AxisState mirrored() {
    return new AxisState(-position, -speed, -acceleration);
  }
}
