package io.github.holdpath.sim.timelaw;

/**
 * A stretch of a motion law with constant jerk (theory, eq. 5.1), in any consistent unit of
 * position.
 *
 * <p>Position, speed and acceleration are those at the {@code pivot}, the end of the phase at which
 * they are known best: a law ends at rest to the last digit because its last phase hangs on its
 * end.
 *
 * @param from start, s
 * @param to end, s, not before {@code from}
 * @param pivot time at which the following hold, s
 * @param position at the pivot
 * @param speed at the pivot, 1/s
 * @param acceleration at the pivot, 1/s^2
 * @param jerk all through the phase, 1/s^3
 */
record JerkPhase(
    double from,
    double to,
    double pivot,
    double position,
    double speed,
    double acceleration,
    double jerk)
    implements LawPhase {
  /**
   * Refuses a phase that ends before it begins.
   *
   * @throws IllegalArgumentException naming both times
   */
  JerkPhase {
    LawPhase.requireOrder(from, to);
  }

  @Override
  public double positionAt(double time) {
    double t = time - pivot;
    return position + t * (speed + t * (acceleration / 2 + t * (jerk / 6)));
  }

  @Override
  public double speedAt(double time) {
    double t = time - pivot;
    return speed + t * (acceleration + t * (jerk / 2));
  }

  @Override
  public double accelerationAt(double time) {
    return acceleration + (time - pivot) * jerk;
  }

  @Override
  public double jerkAt(double time) {
    return jerk;
  }

  @Override
  public JerkPhase later(double delay) {
    return new JerkPhase(
        from + delay, to + delay, pivot + delay, position, speed, acceleration, jerk);
  }

  @Override
  public JerkPhase slower(double k, double start) {
    return new JerkPhase(
        start,
        start + duration() / k,
        start + (pivot - from) / k,
        position,
        k * speed,
        k * k * acceleration,
        k * k * k * jerk);
  }

  /** A phase that begins at 0, played backwards from the far end of {@code distance}; eq. 5.4. */
  JerkPhase mirrored(double distance) {
    return new JerkPhase(0, to, to - pivot, distance - position, speed, -acceleration, jerk);
  }
}
