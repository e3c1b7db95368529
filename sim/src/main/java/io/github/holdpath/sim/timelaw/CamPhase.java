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
 * @param whole duration of the law, s
 * @param curve of the first half
 */
record CamPhase(
    double from,
    double to,
    double rest,
    boolean mirrored,
    double distance,
    double whole,
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
    return (mirrored ? rest - time : time - rest) / whole;
  }

  @Override
  public double positionAt(double time) {
    double way = distance * curve.position(tau(time));
    return mirrored ? distance - way : way;
  }

  @Override
  public double speedAt(double time) {
    return distance / whole * curve.speed(tau(time));
  }

  @Override
  public double accelerationAt(double time) {
    double a = distance / whole / whole * curve.acceleration(tau(time));
    return mirrored ? -a : a;
  }

  @Override
  public double jerkAt(double time) {
    return distance / whole / whole / whole * curve.jerk(tau(time));
  }

  /** The part of it between two times inside it. */
  CamPhase part(double start, double end) {
    return new CamPhase(start, end, rest, mirrored, distance, whole, curve);
  }

  @Override
  public CamPhase slower(double k, double start) {
    return new CamPhase(
        start,
        start + duration() / k,
        start + (rest - from) / k,
        mirrored,
        distance,
        whole / k,
        curve);
  }

  @Override
  public CamPhase later(double delay) {
    return new CamPhase(from + delay, to + delay, rest + delay, mirrored, distance, whole, curve);
  }
}
