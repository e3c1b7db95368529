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

  /**
   * Limits of the same motion played slower in time: speeds by k, accelerations by its square,
   * jerks by its cube. With 1 the same limits to the last digit.
   *
   * @param k above 0 up to 1
   */
  public MoveLimits slower(double k) {
    return new MoveLimits(
        speed * k,
        acceleration * (k * k),
        jerk * (k * k * k),
        turnSpeed * k,
        turnAcceleration * (k * k),
        turnJerk * (k * k * k));
  }

  private static void positive(String name, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must be positive, but was " + value);
    }
  }
}
