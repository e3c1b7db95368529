package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ChainLawTest {
  private static final int DRAWS = 2000;

  /** Limits kept and ends met, as a part of each quantity's scale. */
  private static final double PROMISED = 1e-9;

  /** Algebra in doubles, some tens of operations. */
  private static final double ALGEBRA = 1e-12;

  private static final int SAMPLES = 12;

  @ParameterizedTest
  @EnumSource
  void keepsEachZonesLimitsAndJoinsPhases(LawKind law) {
    SplittableRandom random = new SplittableRandom(8100);
    for (int i = 0; i < DRAWS; i++) {
      List<LawZone> zones = draw(random, law);
      check(ChainLaw.plan(law, zones), law, law + ", draw " + i + ": " + zones);
    }
  }

  @ParameterizedTest
  @EnumSource
  void oneZoneIsTheLawFromRestToRest(LawKind law) {
    SplittableRandom random = new SplittableRandom(8200);
    for (int i = 0; i < DRAWS; i++) {
      LawZone zone = new LawZone(random.nextDouble(0.001, 3), limits(random), false);
      ChainLaw chain = ChainLaw.plan(law, List.of(zone));
      assertEquals(
          RestToRest.plan(law, zone.limits(), zone.length()).phases(), chain.phases(), law.label());
    }
  }

  @Test
  void trapezoidOverEqualZonesIsTheTrapezoid() {
    // Without a bound on jerk nothing is lost at a border.
    SplittableRandom random = new SplittableRandom(8300);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = limits(random);
      List<LawZone> zones = new ArrayList<>();
      double sum = 0;
      for (int k = 1 + random.nextInt(6); k >= 0; k--) {
        zones.add(new LawZone(random.nextDouble(0.001, 1), l, false));
        sum += zones.get(zones.size() - 1).length();
      }
      double expected = RestToRest.plan(LawKind.TRAPEZOID, l, sum).duration();
      double actual = ChainLaw.plan(LawKind.TRAPEZOID, zones).duration();
      assertEquals(expected, actual, ALGEBRA * expected);
    }
  }

  @Test
  void crossesASteadyZoneAtTheSpeedThatBothNeighboursReach() {
    // By hand: 0.1 m at 2 m/s^2 reaches sqrt(0.4) m/s; the bend is 0.2 m long, the rest mirrored.
    LawLimits line = LawLimits.symmetric(5, 2, 100);
    LawZone bend = new LawZone(0.2, LawLimits.symmetric(1, 2, 100), true);
    ChainLaw chain =
        ChainLaw.plan(
            LawKind.TRAPEZOID,
            List.of(new LawZone(0.1, line, false), bend, new LawZone(0.1, line, false)));
    double speed = Math.sqrt(0.4);
    assertEquals(speed, chain.phaseAt(chain.entered(1)).speedAt(chain.entered(1)), ALGEBRA);
    assertEquals(2 * speed / 2 + 0.2 / speed, chain.duration(), ALGEBRA);
    assertEquals(1, chain.left(1) - chain.entered(1) - 0.2 / speed + 1, ALGEBRA);
    assertEquals(1, chain.zoneOf(1));
    assertEquals(2, chain.zoneOf(2));
  }

  @Test
  void aRampOfTheSCurveFillsItsZone() {
    // By hand: from rest to 1 m/s at 4 m/s^3 takes 2 sqrt(1/4) s = 1 s and 0.5 m.
    LawLimits l = LawLimits.symmetric(1, 100, 4);
    LawZone ramp = new LawZone(0.5, l, false);
    LawZone bend = new LawZone(0.25, l, true);
    ChainLaw chain = ChainLaw.plan(LawKind.S_CURVE, List.of(ramp, bend, ramp));
    assertEquals(2.25, chain.duration(), ALGEBRA);
    assertEquals(1, chain.entered(1), ALGEBRA);
  }

  @Test
  void aCamLawIsNoSlowerThanItsTightestZoneAsks() {
    SplittableRandom random = new SplittableRandom(8400);
    for (LawKind law : List.of(LawKind.QUINTIC, LawKind.MODIFIED_SINE, LawKind.CYCLOIDAL)) {
      for (int i = 0; i < DRAWS / 4; i++) {
        ChainLaw chain = ChainLaw.plan(law, draw(random, law));
        // Played 0.01 % faster, some zone breaks a limit.
        assertTrue(use(chain, 1.0001) > 1, law + ", draw " + i);
      }
    }
  }

  @Test
  void refusesChainsThatHaveNoLaw() {
    LawLimits l = LawLimits.symmetric(1, 1, 1);
    LawZone line = new LawZone(1, l, false);
    LawZone bend = new LawZone(1, l, true);
    refused("zones", () -> ChainLaw.plan(LawKind.S_CURVE, List.of()));
    refused("first", () -> ChainLaw.plan(LawKind.S_CURVE, List.of(bend, line)));
    refused("last", () -> ChainLaw.plan(LawKind.TRAPEZOID, List.of(line, bend)));
    refused("length", () -> new LawZone(0, l, false));
    double inf = Double.POSITIVE_INFINITY;
    LawZone loose = new LawZone(1, new LawLimits(1, inf, 1, inf), false);
    refused("finite", () -> ChainLaw.plan(LawKind.S_CURVE, List.of(line, loose)));
    LawZone free = new LawZone(1, LawLimits.symmetric(inf, inf, inf), false);
    refused("finite", () -> ChainLaw.plan(LawKind.QUINTIC, List.of(free, free)));
  }

  private static void refused(String words, Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message != null && message.contains(words), message);
  }

  private static List<LawZone> draw(SplittableRandom random, LawKind law) {
    int count = 1 + random.nextInt(8);
    List<LawZone> zones = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean inner = i > 0 && i < count - 1;
      boolean steady = inner && CamLaw.of(law).isEmpty() && random.nextInt(3) == 0;
      double length = Math.exp(random.nextDouble(Math.log(1e-4), Math.log(2)));
      zones.add(new LawZone(length, limits(random), steady));
    }
    return zones;
  }

  private static LawLimits limits(SplittableRandom random) {
    boolean loose = random.nextInt(5) == 0;
    return new LawLimits(
        loose ? Double.POSITIVE_INFINITY : random.nextDouble(0.05, 3),
        random.nextDouble(0.5, 20),
        random.nextDouble(0.5, 20),
        Math.exp(random.nextDouble(Math.log(2), Math.log(1000))));
  }

  private static void check(ChainLaw chain, LawKind law, String what) {
    double time = 0;
    double position = 0;
    double speed = 0;
    double acceleration = 0;
    double border = 0;
    for (int i = 0; i < chain.phases().size(); i++) {
      LawPhase p = chain.phases().get(i);
      int zone = chain.zoneOf(i);
      LawLimits l = chain.zones().get(zone).limits();
      boolean enters = chain.firstPhase(zone) == i;
      assertEquals(time, p.from(), what);
      assertEquals(position, p.positionAt(time), PROMISED, what);
      assertEquals(speed, p.speedAt(time), PROMISED, what);
      if (law.boundsJerk()) {
        assertEquals(acceleration, p.accelerationAt(time), PROMISED * 20, what);
      }
      if (enters) {
        assertEquals(border, position, PROMISED, what);
        border += chain.zones().get(zone).length();
        assertEquals(time, chain.entered(zone), what);
        if (law == LawKind.S_CURVE) {
          assertEquals(0, acceleration, PROMISED, what);
        }
      }
      if (chain.zones().get(zone).steady()) {
        assertTrue(p.speedAt(time) > 0, what);
        assertEquals(p.speedAt(time), p.speedAt(p.to()), 0, what);
      }
      for (int k = 0; k <= SAMPLES; k++) {
        double t = p.from() + p.duration() * k / SAMPLES;
        assertTrue(p.speedAt(t) <= l.speed() * (1 + PROMISED), what);
        assertTrue(p.speedAt(t) >= -PROMISED, what);
        double slack = PROMISED * (l.acceleration() + l.deceleration());
        assertTrue(p.accelerationAt(t) <= l.acceleration() + slack, what);
        assertTrue(p.accelerationAt(t) >= -l.deceleration() - slack, what);
        assertTrue(!law.boundsJerk() || Math.abs(p.jerkAt(t)) <= l.jerk() * (1 + PROMISED), what);
      }
      time = p.to();
      position = p.positionAt(time);
      speed = p.speedAt(time);
      acceleration = p.accelerationAt(time);
    }
    assertEquals(time, chain.duration(), what);
    assertEquals(border, chain.distance(), PROMISED, what);
    assertEquals(chain.distance(), position, 1e-15 * position, what);
    assertEquals(0, speed, what);
  }

  /** Largest use of any limit, 1 at the limit, of the law played faster by a factor. */
  private static double use(ChainLaw chain, double factor) {
    double use = 0;
    for (int i = 0; i < chain.phases().size(); i++) {
      LawPhase p = chain.phases().get(i);
      LawLimits l = chain.zones().get(chain.zoneOf(i)).limits();
      for (int k = 0; k <= 400; k++) {
        double t = p.from() + p.duration() * k / 400;
        double a = p.accelerationAt(t);
        double most = a > 0 ? a / l.acceleration() : -a / l.deceleration();
        use = Math.max(use, p.speedAt(t) / l.speed() * factor);
        use = Math.max(use, most * factor * factor);
        use = Math.max(use, Math.abs(p.jerkAt(t)) / l.jerk() * factor * factor * factor);
      }
    }
    return use;
  }
}
