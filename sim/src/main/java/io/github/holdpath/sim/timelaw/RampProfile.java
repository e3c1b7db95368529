package io.github.holdpath.sim.timelaw;

import java.util.ArrayList;
import java.util.List;

/** The fastest law within its limits: a ramp up, a cruise, a ramp down (theory, section 5.3). */
final class RampProfile extends LawProfile {
  /** Below this part of the duration a phase counts as none when the regime is named. */
  private static final double EDGE = 1e-12;

  private final LawKind law;
  private final LawLimits limits;
  private final Ramp up;
  private final double cruiseTime;
  private final Ramp down;

  RampProfile(
      LawKind law, LawLimits limits, double distance, Ramp up, double cruiseTime, Ramp down) {
    super(distance, chain(distance, up, cruiseTime, down));
    this.law = law;
    this.limits = limits;
    this.up = up;
    this.cruiseTime = cruiseTime;
    this.down = down;
  }

  private static List<LawPhase> chain(double distance, Ramp up, double cruiseTime, Ramp down) {
    List<LawPhase> chain = new ArrayList<>(7);
    append(chain, up.growing());
    append(chain, up.flat());
    append(chain, up.falling());
    append(chain, new JerkPhase(0, cruiseTime, 0, up.distance(), up.speed(), 0, 0));
    append(chain, down.falling().mirrored(distance));
    if (down.jerkTime() > 0) {
      append(chain, down.flat().mirrored(distance));
    }
    JerkPhase last = down.jerkTime() > 0 ? down.growing() : down.flat();
    chain.add(last.mirrored(distance).later(endOf(chain)));
    return chain;
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

  @Override
  public double peakSpeed() {
    return up.speed();
  }

  @Override
  public double peakAcceleration() {
    return up.acceleration();
  }

  @Override
  public double peakDeceleration() {
    return down.acceleration();
  }

  @Override
  public double peakJerk() {
    return up.jerk();
  }

  @Override
  public double accelerationTime() {
    return up.duration();
  }

  @Override
  public double cruiseTime() {
    return cruiseTime;
  }

  @Override
  public double decelerationTime() {
    return down.duration();
  }

  @Override
  public String regime() {
    boolean atSpeed = up.speed() >= limits.speed() * (1 - EDGE);
    boolean cruises = cruiseTime > EDGE * duration();
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
    return ramp.flatTime() > EDGE * duration() ? "A" : "e";
  }
}
