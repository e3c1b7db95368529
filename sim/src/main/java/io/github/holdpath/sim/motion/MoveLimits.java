package io.github.holdpath.sim.motion;

/**
 * Limits of one move; an infinite number means that nothing bounds that quantity.
 *
 * @param speed m/s
 * @param acceleration m/s^2
 * @param jerk m/s^3
 * @param turnSpeed rad/s
 * @param turnAcceleration rad/s^2
 * @param turnJerk rad/s^3
 */
public record MoveLimits(
    double speed,
    double acceleration,
    double jerk,
    double turnSpeed,
    double turnAcceleration,
    double turnJerk) {
  /** Refuses numbers that are not positive. */
  public MoveLimits {
    positive("speed", speed);
    positive("acceleration", acceleration);
    positive("jerk", jerk);
    positive("turnSpeed", turnSpeed);
    positive("turnAcceleration", turnAcceleration);
    positive("turnJerk", turnJerk);
  }

  private static void positive(String name, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must be positive, but was " + value);
    }
  }
}
