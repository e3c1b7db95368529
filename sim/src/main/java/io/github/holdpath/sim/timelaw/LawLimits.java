package io.github.holdpath.sim.timelaw;

/**
 * What a motion law must keep, in any consistent unit of position (m, rad or a path parameter); an
 * infinite number means that nothing bounds that quantity.
 *
 * @param speed largest speed, 1/s
 * @param acceleration largest acceleration while speeding up, 1/s^2
 * @param deceleration largest acceleration while slowing down, as a positive number, 1/s^2
 * @param jerk largest jerk, 1/s^3
 */
public record LawLimits(double speed, double acceleration, double deceleration, double jerk) {
  /**
   * Refuses numbers that are not positive.
   *
   * @throws IllegalArgumentException naming the limit
   */
  public LawLimits {
    positive("speed", speed);
    positive("acceleration", acceleration);
    positive("deceleration", deceleration);
    positive("jerk", jerk);
  }

  /** The same acceleration for speeding up and slowing down; units as above. */
  public static LawLimits symmetric(double speed, double acceleration, double jerk) {
    return new LawLimits(speed, acceleration, acceleration, jerk);
  }

  private static void positive(String name, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must be positive, but was " + value);
    }
  }
}
