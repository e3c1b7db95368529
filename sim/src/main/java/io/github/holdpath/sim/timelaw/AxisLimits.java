package io.github.holdpath.sim.timelaw;

/**
 * Limits of one axis, in any consistent unit of position.
 *
 * @param minSpeed lowest speed, below 0, 1/s
 * @param maxSpeed highest speed, above 0, 1/s
 * @param minAcceleration lowest acceleration, below 0, 1/s^2
 * @param maxAcceleration highest acceleration, above 0, 1/s^2
 * @param jerk largest jerk in either direction, 1/s^3
 */
public record AxisLimits(
    double minSpeed, double maxSpeed, double minAcceleration, double maxAcceleration, double jerk) {
  /**
   * Refuses limits that are not finite or leave no room on either side of rest.
   *
   * @throws IllegalArgumentException naming the limit
   */
  public AxisLimits {
    positive("maxSpeed", maxSpeed);
    positive("-minSpeed", -minSpeed);
    positive("maxAcceleration", maxAcceleration);
    positive("-minAcceleration", -minAcceleration);
    positive("jerk", jerk);
  }

  private static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be positive and finite, but was " + value);
    }
  }

  /** The limits seen from the other direction of the axis. */
  AxisLimits mirrored() {
    return new AxisLimits(-maxSpeed, -minSpeed, -maxAcceleration, -minAcceleration, jerk);
  }

  /** The limits of the motion played backwards: speeds stay, accelerations change sign. */
  AxisLimits reversed() {
    return new AxisLimits(minSpeed, maxSpeed, -maxAcceleration, -minAcceleration, jerk);
  }
}
