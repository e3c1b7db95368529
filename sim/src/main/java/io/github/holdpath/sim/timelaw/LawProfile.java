package io.github.holdpath.sim.timelaw;

import java.util.ArrayList;
import java.util.List;

/**
 * A planned motion law from rest at 0 to rest at its distance: phases of constant jerk in order of
 * time, without gaps. Got from {@link RestToRest#plan}; immutable. Units are those of the limits it
 * was planned with.
 */
public final class LawProfile {
  /** Below this part of the duration a phase counts as none when the regime is named. */
  private static final double EDGE = 1e-12;

  private final LawKind law;
  private final LawLimits limits;
  private final double distance;
  private final Ramp up;
  private final double cruiseTime;
  private final Ramp down;
  private final List<LawPhase> phases;
  private final double duration;

  LawProfile(
      LawKind law, LawLimits limits, double distance, Ramp up, double cruiseTime, Ramp down) {
    this.law = law;
    this.limits = limits;
    this.distance = distance;
    this.up = up;
    this.cruiseTime = cruiseTime;
    this.down = down;
    this.phases = chain();
    this.duration = phases.get(phases.size() - 1).to();
  }

  private List<LawPhase> chain() {
    List<LawPhase> chain = new ArrayList<>(7);
    append(chain, up.growing());
    append(chain, up.flat());
    append(chain, up.falling());
    append(chain, new LawPhase(0, cruiseTime, 0, up.distance(), up.speed(), 0, 0));
    append(chain, down.falling().mirrored(distance));
    if (down.jerkTime() > 0) {
      append(chain, down.flat().mirrored(distance));
    }
    LawPhase last = down.jerkTime() > 0 ? down.growing() : down.flat();
    chain.add(last.mirrored(distance).later(endOf(chain)));
    return List.copyOf(chain);
  }

  /** Puts a phase behind the others and leaves it out where rounding has no time for it. */
  private static void append(List<LawPhase> chain, LawPhase phase) {
    double start = endOf(chain);
    if (start + phase.to() > start) {
      chain.add(phase.later(start));
    }
  }

  private static double endOf(List<LawPhase> chain) {
    return chain.isEmpty() ? 0 : chain.get(chain.size() - 1).to();
  }

  /**
   * Phases in order of time, 2 to 7; the first begins at 0. Each is longer than 0, but for the last
   * where a ramp is too short to tell beside the whole duration: it still ends the law at rest.
   */
  public List<LawPhase> phases() {
    return phases;
  }

  /** The phase in which a time lies, the earlier one where two meet; times outside are clamped. */
  public LawPhase phaseAt(double time) {
    int i = 0;
    while (i < phases.size() - 1 && time > phases.get(i).to()) {
      i++;
    }
    return phases.get(i);
  }

  /** Time from rest to rest, s. */
  public double duration() {
    return duration;
  }

  /** Way from rest to rest. */
  public double distance() {
    return distance;
  }

  /** Largest speed, 1/s. */
  public double peakSpeed() {
    return up.speed();
  }

  /** Largest acceleration while speeding up, 1/s^2. */
  public double peakAcceleration() {
    return up.acceleration();
  }

  /** Largest acceleration while slowing down, as a positive number, 1/s^2. */
  public double peakDeceleration() {
    return down.acceleration();
  }

  /** Largest jerk, 1/s^3; infinite where the acceleration jumps. */
  public double peakJerk() {
    return up.jerk();
  }

  /** Time of speeding up, s. */
  public double accelerationTime() {
    return up.duration();
  }

  /** Time at the peak speed between the ramps, s; 0 where there is no cruise. */
  public double cruiseTime() {
    return cruiseTime;
  }

  /** Time of slowing down, s. */
  public double decelerationTime() {
    return down.duration();
  }

  /**
   * Name of the regime. Trapezoid: {@code cruise}, {@code triangle}, or {@code edge} at the border
   * between them. S-curve: {@code cruise}, {@code no-cruise} or {@code edge-cruise}, then a letter
   * each for speeding up and slowing down: {@code A} with a phase of constant acceleration, {@code
   * -} without one, {@code e} at the border.
   */
  public String regime() {
    boolean atSpeed = up.speed() >= limits.speed() * (1 - EDGE);
    boolean cruises = cruiseTime > EDGE * duration;
    if (!law.boundsJerk()) {
      return !atSpeed ? "triangle" : cruises ? "cruise" : "edge";
    }
    return (!atSpeed ? "no-cruise/" : cruises ? "cruise/" : "edge-cruise/")
        + letter(up, limits.acceleration())
        + letter(down, limits.deceleration());
  }

  private String letter(Ramp ramp, double limit) {
    if (ramp.acceleration() < limit * (1 - EDGE)) {
      return "-";
    }
    return ramp.flatTime() > EDGE * duration ? "A" : "e";
  }
}
