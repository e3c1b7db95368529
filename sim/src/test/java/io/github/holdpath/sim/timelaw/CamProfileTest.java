package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CamProfileTest {
  /** Algebra in doubles, some tens of operations. */
  private static final double ALGEBRA = 1e-12;

  /** A peak between samples a thousandth of the duration apart falls by less than this part. */
  private static final double SAMPLED = 1e-4;

  private static final int SAMPLES = 1000;
  private static final int DRAWS = 200;
  private static final double INF = Double.POSITIVE_INFINITY;

  @ParameterizedTest
  @EnumSource(names = {"QUINTIC", "MODIFIED_SINE", "CYCLOIDAL"})
  void standsAtBothEndsToTheLastDigit(LawKind law) {
    LawProfile p = RestToRest.plan(law, new LawLimits(1.3, 7, 5, 90), 0.7);
    LawPhase first = p.phaseAt(0);
    LawPhase last = p.phaseAt(p.duration());
    assertEquals(0, first.positionAt(0));
    assertEquals(0.7, last.positionAt(p.duration()));
    assertEquals(0, first.speedAt(0));
    assertEquals(0, last.speedAt(p.duration()));
    assertEquals(0, Math.abs(first.accelerationAt(0)));
    assertEquals(0, Math.abs(last.accelerationAt(p.duration())));
  }

  @ParameterizedTest
  @EnumSource(names = {"QUINTIC", "MODIFIED_SINE", "CYCLOIDAL"})
  void reachesItsStatedPeaksAndOneLimit(LawKind law) {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = draw(random);
      LawProfile p = RestToRest.plan(law, l, random.nextDouble(0.1, 3));
      double v = 0;
      double a = 0;
      double d = 0;
      double j = 0;
      for (int k = 0; k <= SAMPLES; k++) {
        double t = p.duration() * k / SAMPLES;
        LawPhase f = p.phaseAt(t);
        v = Math.max(v, f.speedAt(t));
        a = Math.max(a, f.accelerationAt(t));
        d = Math.max(d, -f.accelerationAt(t));
        j = Math.max(j, Math.abs(f.jerkAt(t)));
      }
      assertPeak(p.peakSpeed(), v);
      assertPeak(p.peakAcceleration(), a);
      assertPeak(p.peakDeceleration(), d);
      assertPeak(p.peakJerk(), j);
      double least = Math.min(l.acceleration(), l.deceleration());
      double[] uses = {
        p.peakSpeed() / l.speed(), p.peakAcceleration() / least, p.peakJerk() / l.jerk()
      };
      int decides = List.of("speed", "acceleration", "jerk").indexOf(p.regime());
      for (double use : uses) {
        assertTrue(use <= 1 + ALGEBRA, law + ", " + l);
      }
      assertEquals(1, uses[decides], ALGEBRA, law + ", " + l);
    }
  }

  private static void assertPeak(double stated, double sampled) {
    assertTrue(sampled <= stated * (1 + ALGEBRA), sampled + " over " + stated);
    assertTrue(sampled >= stated * (1 - SAMPLED), sampled + " far below " + stated);
  }

  /** Each quantity is the integral of the next, by a rule of 12 points on each phase. */
  @ParameterizedTest
  @EnumSource
  void derivativesAreEachOthers(LawKind law) {
    SplittableRandom random = new SplittableRandom(42);
    GaussIntegratorFactory rules = new GaussIntegratorFactory();
    for (int i = 0; i < DRAWS; i++) {
      LawProfile p = RestToRest.plan(law, draw(random), random.nextDouble(0.1, 3));
      double jerk = p.peakAcceleration() + p.peakDeceleration();
      for (LawPhase f : p.phases()) {
        GaussIntegrator rule = rules.legendre(12, f.from(), f.to());
        assertGain(rule, f, f::speedAt, f::positionAt, p.distance());
        assertGain(rule, f, f::accelerationAt, f::speedAt, p.peakSpeed());
        assertGain(rule, f, f::jerkAt, f::accelerationAt, jerk);
      }
    }
  }

  private static void assertGain(
      GaussIntegrator rule,
      LawPhase f,
      DoubleUnaryOperator rate,
      DoubleUnaryOperator value,
      double size) {
    double gain = value.applyAsDouble(f.to()) - value.applyAsDouble(f.from());
    assertEquals(gain, rule.integrate(rate::applyAsDouble), ALGEBRA * size);
  }

  @ParameterizedTest
  @EnumSource(names = {"QUINTIC", "MODIFIED_SINE", "CYCLOIDAL"})
  void isNeverFasterThanTheFastestLaw(LawKind law) {
    SplittableRandom random = new SplittableRandom(43);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = draw(random);
      double distance = random.nextDouble(0.1, 3);
      double fastest = RestToRest.plan(LawKind.S_CURVE, l, distance).duration();
      assertTrue(RestToRest.plan(law, l, distance).duration() >= fastest, law + ", " + l);
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"QUINTIC", "MODIFIED_SINE", "CYCLOIDAL"})
  void refusesWhatBoundsNothing(LawKind law) {
    LawLimits none = new LawLimits(INF, INF, INF, INF);
    String message =
        assertThrows(IllegalArgumentException.class, () -> RestToRest.plan(law, none, 1))
            .getMessage();
    assertTrue(message != null && message.contains("needs a finite limit of speed"), message);
  }

  private static LawLimits draw(SplittableRandom random) {
    return new LawLimits(
        random.nextDouble(0.2, 3),
        random.nextDouble(1, 20),
        random.nextDouble(1, 20),
        random.nextDouble(10, 300));
  }
}
