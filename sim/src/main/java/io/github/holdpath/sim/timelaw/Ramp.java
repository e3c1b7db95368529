package io.github.holdpath.sim.timelaw;

/**
 * The fastest change from rest to a speed (theory, eq. 5.2): acceleration grows for {@code
 * jerkTime}, stands for {@code flatTime}, and falls for {@code jerkTime} again.
 *
 * @param speed reached, 1/s
 * @param jerkTime s; 0 where jerk is not bounded
 * @param flatTime s, not negative
 * @param acceleration reached, 1/s^2
 * @param jerk 1/s^3; infinite where it is not bounded
 */
record Ramp(double speed, double jerkTime, double flatTime, double acceleration, double jerk) {
  /** The ramp to {@code speed} that keeps both limits; units as above. */
  static Ramp to(double speed, double maxAcceleration, double maxJerk) {
    double full = maxAcceleration / maxJerk;
    double stepped = speed / maxAcceleration;
    if (stepped >= full) {
      return new Ramp(speed, full, stepped - full, maxAcceleration, maxJerk);
    }
    double jerkTime = Math.sqrt(speed / maxJerk);
    double peak = Math.min(maxJerk * jerkTime, maxAcceleration);
    return new Ramp(speed, jerkTime, 0, peak, maxJerk);
  }

  /** Time of the ramp to {@code speed} in s, without making it; infinite for infinite speed. */
  static double duration(double speed, double maxAcceleration, double maxJerk) {
    double full = maxAcceleration / maxJerk;
    double stepped = speed / maxAcceleration;
    // Also false where both limits are infinite and the quotient is not a number.
    return stepped >= full ? stepped + full : 2 * Math.sqrt(speed / maxJerk);
  }

  double duration() {
    return 2 * jerkTime + flatTime;
  }

  /** Way covered, eq. 5.3. */
  double distance() {
    return speed * duration() / 2;
  }

  /** The first phase, begun at time 0 and hung on its start. */
  JerkPhase growing() {
    return new JerkPhase(0, jerkTime, 0, 0, 0, 0, jerk);
  }

  /** The middle phase, begun at time 0 and hung on its start. */
  JerkPhase flat() {
    double speedThere = acceleration * jerkTime / 2;
    double positionThere = speedThere * jerkTime / 3;
    return new JerkPhase(0, flatTime, 0, positionThere, speedThere, acceleration, 0);
  }

  /** The last phase, begun at time 0 and hung on its end. */
  JerkPhase falling() {
    return new JerkPhase(0, jerkTime, jerkTime, distance(), speed, 0, -jerk);
  }
}
