package io.github.holdpath.sim.timelaw;

/**
 * A stretch of a cam law, stretched to its distance and duration (theory, eq. 5.15).
 *
 * @param from start, s
 * @param to end, s, not before {@code from}
 * @param rest the time at rest from which the law is counted, s: its start in the first half, its
 *     end in the second, which is the first played backwards
 * @param mirrored whether it belongs to the second half
 * @param distance of the whole law
 * @param duration of the whole law, s
 * @param curve of the first half
 */
record CamPhase(
    double from,
    double to,
    double rest,
    boolean mirrored,
    double distance,
    double duration,
    CamCurve curve)
    implements LawPhase {
  /**
   * Refuses a phase that ends before it begins.
   *
   * @throws IllegalArgumentException naming both times
   */
  CamPhase {
    LawPhase.requireOrder(from, to);
  }

  private double tau(double time) {
    return (mirrored ? rest - time : time - rest) / duration;
  }

  @Override
  public double positionAt(double time) {
    double way = distance * curve.position(tau(time));
    return mirrored ? distance - way : way;
  }

  @Override
  public double speedAt(double time) {
    return distance / duration * curve.speed(tau(time));
  }

  @Override
  public double accelerationAt(double time) {
    double a = distance / duration / duration * curve.acceleration(tau(time));
    return mirrored ? -a : a;
  }

  @Override
  public double jerkAt(double time) {
    return distance / duration / duration / duration * curve.jerk(tau(time));
  }

  @Override
  public CamPhase later(double delay) {
    return new CamPhase(
        from + delay, to + delay, rest + delay, mirrored, distance, duration, curve);
  }
}
