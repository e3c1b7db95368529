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
public record LawPhase(
    double from,
    double to,
    double pivot,
    double position,
    double speed,
    double acceleration,
    double jerk) {
  /**
   * Refuses a phase that ends before it begins.
   *
   * @throws IllegalArgumentException naming both times
   */
  public LawPhase {
    if (!(to >= from)) {
      throw new IllegalArgumentException(
          "a phase must not end before it begins, but goes from " + from + " s to " + to + " s");
    }
  }

  /** Position at a time (s) inside this phase, ends included. */
  public double positionAt(double time) {
    double t = time - pivot;
    return position + t * (speed + t * (acceleration / 2 + t * (jerk / 6)));
  }

  /** Speed at a time (s) inside this phase, ends included, 1/s. */
  public double speedAt(double time) {
    double t = time - pivot;
    return speed + t * (acceleration + t * (jerk / 2));
  }

  /** Acceleration at a time (s) inside this phase, ends included, 1/s^2. */
  public double accelerationAt(double time) {
    return acceleration + (time - pivot) * jerk;
  }

  /** Length in time, s. */
  public double duration() {
    return to - from;
  }

  /** The same phase, begun later by {@code delay} (s). */
  public LawPhase later(double delay) {
    return new LawPhase(
        from + delay, to + delay, pivot + delay, position, speed, acceleration, jerk);
  }

  /** A phase that begins at 0, played backwards from the far end of {@code distance}; eq. 5.4. */
  LawPhase mirrored(double distance) {
    return new LawPhase(0, to, to - pivot, distance - position, speed, -acceleration, jerk);
  }
}
