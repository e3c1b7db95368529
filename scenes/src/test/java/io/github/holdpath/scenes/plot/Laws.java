package io.github.holdpath.scenes.plot;

import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;
import io.github.holdpath.sim.timelaw.RestToRest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The moves that the page shows. Lengths in m, times in s. */
final class Laws {
  static final LawLimits LIMITS = LawLimits.symmetric(2, 10, 100);
  static final double WAY = 1;

  private static final int STEPS = 24;
  private static final double NONE = Double.POSITIVE_INFINITY;

  /** A law and the words for the variant of it. */
  record Variant(LawKind kind, String name, LawProfile profile) {}

  /** A quantity of a phase at a time. */
  interface Quantity {
    double at(LawPhase phase, double time);
  }

  private Laws() {}

  /** The fastest law of a kind over the way within the limits of the page. */
  static LawProfile withinLimits(LawKind kind) {
    return RestToRest.plan(kind, LIMITS, WAY);
  }

  /**
   * Laws that all take 1 s for 1 m. Thirds: a third of the time speeding up, cruising and slowing
   * down; the S-curve's ramps of acceleration take a quarter of a third.
   */
  static List<Variant> inOneSecond() {
    return List.of(
        variant(LawKind.TRAPEZOID, "trapezoid, no cruise", NONE, 4, NONE),
        variant(LawKind.TRAPEZOID, "trapezoid, thirds", 1.5, 4.5, NONE),
        variant(
            LawKind.MODIFIED_SINE, "modified-sine", NONE, peaks(LawKind.MODIFIED_SINE)[1], NONE),
        variant(LawKind.QUINTIC, "quintic", NONE, peaks(LawKind.QUINTIC)[1], NONE),
        variant(LawKind.S_CURVE, "s-curve, thirds", 1.5, 6, 72),
        variant(LawKind.CYCLOIDAL, "cycloidal", NONE, peaks(LawKind.CYCLOIDAL)[1], NONE),
        variant(LawKind.S_CURVE, "s-curve, jerk all the way", NONE, NONE, 32));
  }

  private static Variant variant(
      LawKind kind, String name, double speed, double acceleration, double jerk) {
    LawLimits limits = LawLimits.symmetric(speed, acceleration, jerk);
    return new Variant(kind, name, RestToRest.plan(kind, limits, 1));
  }

  /** Largest speed, acceleration and jerk of a cam law over 1 in time 1. */
  static double[] peaks(LawKind cam) {
    LawProfile unit = RestToRest.plan(cam, LawLimits.symmetric(1, NONE, NONE), 1);
    double t = unit.duration();
    return new double[] {
      unit.peakSpeed() * t, unit.peakAcceleration() * t * t, unit.peakJerk() * t * t * t
    };
  }

  /** Rounded half up, off the middle by what rounding may do to a value. */
  static String number(int decimals, double value) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value * (1 + 1e-12));
  }

  /**
   * A quantity over time with its jumps.
   *
   * @param phases from rest to rest
   * @param before its value before the first phase
   * @param after its value after the last one
   */
  static List<double[]> curve(
      List<LawPhase> phases, Quantity quantity, double before, double after) {
    List<double[]> points = new ArrayList<>();
    points.add(new double[] {0, before});
    for (LawPhase phase : phases) {
      for (int i = 0; i <= STEPS; i++) {
        double t = phase.from() + i * phase.duration() / STEPS;
        points.add(new double[] {t, quantity.at(phase, t)});
      }
    }
    points.add(new double[] {phases.get(phases.size() - 1).to(), after});
    return points;
  }
}
