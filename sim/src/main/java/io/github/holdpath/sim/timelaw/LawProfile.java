package io.github.holdpath.sim.timelaw;

import java.util.List;

/**
 * A planned motion law from rest at 0 to rest at its distance: smooth phases in order of time,
 * without gaps. Got from {@link RestToRest#plan}; immutable. Units are those of the limits it was
 * planned with.
 */
public abstract sealed class LawProfile permits RampProfile, CamProfile {
  private final double distance;
  private final List<LawPhase> phases;

  LawProfile(double distance, List<? extends LawPhase> phases) {
    this.distance = distance;
    this.phases = List.copyOf(phases);
  }

  /**
   * Phases in order of time, 2 to 7; the first begins at 0. Each is longer than 0, but for the last
   * where a ramp is too short to tell beside the whole duration: it still ends the law at rest.
   */
  public final List<LawPhase> phases() {
    return phases;
  }

  /** The phase in which a time lies, the earlier one where two meet; times outside are clamped. */
  public final LawPhase phaseAt(double time) {
    int i = 0;
    while (i < phases.size() - 1 && time > phases.get(i).to()) {
      i++;
    }
    return phases.get(i);
  }

  /** Time from rest to rest, s. */
  public final double duration() {
    return phases.get(phases.size() - 1).to();
  }

  /** Way from rest to rest. */
  public final double distance() {
    return distance;
  }

  /** Largest speed, 1/s. */
  public abstract double peakSpeed();

  /** Largest acceleration while speeding up, 1/s^2. */
  public abstract double peakAcceleration();

  /** Largest acceleration while slowing down, as a positive number, 1/s^2. */
  public abstract double peakDeceleration();

  /** Largest jerk, 1/s^3; infinite where the acceleration jumps. */
  public abstract double peakJerk();

  /** Time of speeding up, s. */
  public abstract double accelerationTime();

  /** Time at the peak speed between speeding up and slowing down, s; 0 where there is no cruise. */
  public abstract double cruiseTime();

  /** Time of slowing down, s. */
  public abstract double decelerationTime();

  /**
   * Name of the regime. Trapezoid: {@code cruise}, {@code triangle}, or {@code edge} at the border
   * between them. S-curve: {@code cruise}, {@code no-cruise} or {@code edge-cruise}, then a letter
   * each for speeding up and slowing down: {@code A} with a phase of constant acceleration, {@code
   * -} without one, {@code e} at the border. Cam laws: {@code speed}, {@code acceleration} or
   * {@code jerk}, the limit that decides the duration.
   */
  public abstract String regime();
}
