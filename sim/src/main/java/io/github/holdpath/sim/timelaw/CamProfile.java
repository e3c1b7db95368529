package io.github.holdpath.sim.timelaw;

import java.util.ArrayList;
import java.util.List;

/** A cam law in the least time that keeps its limits (theory, eq. 5.18). */
final class CamProfile extends LawProfile {
  private final CamLaw law;
  private final String regime;

  private CamProfile(CamLaw law, double distance, double duration, String regime) {
    super(distance, chain(law, distance, duration));
    this.law = law;
    this.regime = regime;
  }

  /** Plans; the lesser of the accelerations counts both ways, as the law is symmetric. */
  static CamProfile of(CamLaw law, LawLimits limits, double distance) {
    double least = Math.min(limits.acceleration(), limits.deceleration());
    double bySpeed = law.speed() * distance / limits.speed();
    double byAcceleration = Math.sqrt(law.acceleration() * distance / least);
    double byJerk = Math.cbrt(law.jerk() * distance / limits.jerk());
    double duration = Math.max(bySpeed, Math.max(byAcceleration, byJerk));
    if (!(duration > 0)) {
      throw new IllegalArgumentException(
          law.name() + " needs a finite limit of speed, acceleration or jerk");
    }
    String regime =
        bySpeed == duration ? "speed" : byAcceleration == duration ? "acceleration" : "jerk";
    return new CamProfile(law, distance, duration, regime);
  }

  /** The phases of a law of a distance and a duration. */
  static List<CamPhase> chain(CamLaw law, double distance, double duration) {
    List<CamPhase> chain = new ArrayList<>();
    List<CamLaw.Stretch> half = law.stretches();
    double start = 0;
    for (CamLaw.Stretch s : half) {
      double end = s.to() * duration;
      chain.add(new CamPhase(start, end, 0, false, distance, duration, s.curve()));
      start = end;
    }
    for (int i = half.size() - 1; i >= 0; i--) {
      double end = i == 0 ? duration : (1 - half.get(i - 1).to()) * duration;
      CamCurve curve = half.get(i).curve();
      chain.add(new CamPhase(start, end, duration, true, distance, duration, curve));
      start = end;
    }
    return chain;
  }

  @Override
  public double peakSpeed() {
    return law.speed() * distance() / duration();
  }

  @Override
  public double peakAcceleration() {
    return law.acceleration() * distance() / duration() / duration();
  }

  @Override
  public double peakDeceleration() {
    return peakAcceleration();
  }

  @Override
  public double peakJerk() {
    return law.jerk() * distance() / duration() / duration() / duration();
  }

  @Override
  public double accelerationTime() {
    return duration() / 2;
  }

  @Override
  public double cruiseTime() {
    return 0;
  }

  @Override
  public double decelerationTime() {
    return duration() / 2;
  }

  @Override
  public String regime() {
    return regime;
  }
}
