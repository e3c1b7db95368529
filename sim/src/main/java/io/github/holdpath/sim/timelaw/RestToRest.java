package io.github.holdpath.sim.timelaw;

import java.util.Optional;

/**
 * Plans a law from rest to rest in the least time that its kind and its limits allow, in closed
 * form for every regime.
 *
 * <p>A trapezoid or s-curve is the fastest law there is: a ramp up to the peak speed, a cruise if
 * there is way left, and a ramp down (theory, section 5.3). Without a bound on jerk the ramps are
 * straight and the law is the trapezoid; with it, the double S. Limits for speeding up and slowing
 * down may differ.
 *
 * <p>A cam law has one shape, which is stretched until it keeps the limits (theory, section 5.6);
 * the lesser acceleration counts both ways.
 *
 * @see "Biagiotti, Melchiorri: Trajectory Planning for Automatic Machines and Robots, Springer
 *     2008, sections 3.2 and 3.4, for the names and the form with equal limits"
 */
public final class RestToRest {
  private RestToRest() {}

  /**
   * Plans the law.
   *
   * @param law {@link LawKind#TRAPEZOID} leaves the limit of jerk out of account
   * @param limits in the unit of {@code distance}; speed may be infinite, accelerations only where
   *     jerk is bounded; a cam law needs one that is finite
   * @param distance to cover, positive and finite
   * @throws IllegalArgumentException if the distance is not positive and finite, or nothing bounds
   *     the time from below
   */
  public static LawProfile plan(LawKind law, LawLimits limits, double distance) {
    if (!(distance > 0) || Double.isInfinite(distance)) {
      throw new IllegalArgumentException(
          "distance must be positive and finite, but was " + distance);
    }
    Optional<CamLaw> cam = CamLaw.of(law);
    if (cam.isPresent()) {
      return CamProfile.of(cam.get(), limits, distance);
    }
    double jerk = law.boundsJerk() ? limits.jerk() : Double.POSITIVE_INFINITY;
    requireBound(law, limits, jerk);
    double peak = peakSpeed(limits, jerk, distance);
    Ramp up = Ramp.to(peak, limits.acceleration(), jerk);
    Ramp down = Ramp.to(peak, limits.deceleration(), jerk);
    double cruise = 0;
    if (peak >= limits.speed()) {
      cruise = Math.max(0, (distance - up.distance() - down.distance()) / peak);
    }
    return new RampProfile(law, limits, distance, up, cruise, down);
  }

  private static void requireBound(LawKind law, LawLimits limits, double jerk) {
    boolean accelerations =
        Double.isFinite(limits.acceleration()) && Double.isFinite(limits.deceleration());
    if (Double.isInfinite(jerk) && !accelerations) {
      throw new IllegalArgumentException(
          law.boundsJerk()
              ? "an s-curve needs a finite limit of jerk or of both accelerations"
              : "a trapezoid needs finite limits of acceleration and deceleration");
    }
  }

  /** The speed at which the two ramps alone fill the distance, or the limit if that is less. */
  private static double peakSpeed(LawLimits limits, double jerk, double distance) {
    if (rampDistance(limits.speed(), limits, jerk) <= distance) {
      return limits.speed();
    }
    double less = Math.min(limits.acceleration(), limits.deceleration());
    double more = Math.max(limits.acceleration(), limits.deceleration());
    double rise = less / jerk;
    double speed;
    if (distance <= 2 * less * rise * rise) {
      speed = bothPointed(jerk, distance);
    } else if (distance <= rampDistance(more * (more / jerk), limits, jerk)) {
      speed = onePointed(less, jerk, distance);
    } else {
      speed = bothFlat(less, more, jerk, distance);
    }
    return Math.min(speed, limits.speed());
  }

  /** Both ramps reach their limit of acceleration, eq. 5.6. */
  private static double bothFlat(double less, double more, double jerk, double distance) {
    double b = less / jerk + more / jerk;
    double c = 1 / less + 1 / more;
    return 4 * distance / (b + Math.sqrt(b * b + 8 * distance * c));
  }

  /** Only the ramp with the lesser limit reaches it, eq. 5.7. */
  private static double onePointed(double less, double jerk, double distance) {
    double rise = less / jerk;
    double s = Math.sqrt(2 * distance / less) / rise;
    double jerkTime = rise * (2 * s / (1 + Math.sqrt(1 + 4 * s)));
    return jerk * jerkTime * jerkTime;
  }

  /** Neither ramp reaches its limit, eq. 5.8. */
  private static double bothPointed(double jerk, double distance) {
    double jerkTime = Math.cbrt(distance / (2 * jerk));
    return jerk * jerkTime * jerkTime;
  }

  /** Way that both ramps need for a speed, eq. 5.3; infinite for infinite speed. */
  private static double rampDistance(double speed, LawLimits limits, double jerk) {
    return speed
        / 2
        * (Ramp.duration(speed, limits.acceleration(), jerk)
            + Ramp.duration(speed, limits.deceleration(), jerk));
  }
}
