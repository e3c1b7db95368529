package io.github.holdpath.sim.timelaw;

/**
 * A stretch of a motion law in which everything is smooth, in any consistent unit of position. Each
 * quantity is the exact derivative of the one before.
 */
public sealed interface LawPhase permits JerkPhase, CamPhase {
  /** Start, s. */
  double from();

  /** End, s, not before {@link #from}. */
  double to();

  /** Position at a time (s) inside this phase, ends included. */
  double positionAt(double time);

  /** Speed at a time (s) inside this phase, ends included, 1/s. */
  double speedAt(double time);

  /** Acceleration at a time (s) inside this phase, ends included, 1/s^2. */
  double accelerationAt(double time);

  /** Jerk at a time (s) inside this phase, ends included, 1/s^3. */
  double jerkAt(double time);

  /** The same phase, begun later by {@code delay} (s). */
  LawPhase later(double delay);

  /**
   * The same phase played k times as fast from another start.
   *
   * @param k above 0
   * @param start s
   */
  LawPhase slower(double k, double start);

  /** Length in time, s. */
  default double duration() {
    return to() - from();
  }

  /**
   * Refuses a phase that ends before it begins.
   *
   * @throws IllegalArgumentException naming both times
   */
  static void requireOrder(double from, double to) {
    if (!(to >= from)) {
      throw new IllegalArgumentException(
          "a phase must not end before it begins, but goes from " + from + " s to " + to + " s");
    }
  }
}
