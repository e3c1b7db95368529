package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RestToRestTest {
  /** Algebra in doubles, some tens of operations. */
  private static final double ALGEBRA = 1e-12;

  /** Times where phases meet are sums of times; each rounds by a part of the last digit. */
  private static final double TIME_ULPS = 8;

  private static final int DRAWS = 2000;
  private static final double INF = Double.POSITIVE_INFINITY;

  @ParameterizedTest
  @EnumSource
  void keepsLimitsAndJoinsPhases(LawKind law) {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits limits = draw(random);
      double distance = logUniform(random, 1e-4, 1e4);
      check(law, limits, distance);
    }
  }

  @ParameterizedTest
  @EnumSource
  void staysSoundForTinyAndHugeNumbers(LawKind law) {
    double[] sizes = {1e-9, 1e-3, 1, 1e5, 1e9};
    for (double v : sizes) {
      for (double a : sizes) {
        for (double d : sizes) {
          for (double j : sizes) {
            for (double distance : sizes) {
              check(law, new LawLimits(v, a, d, j), distance);
            }
          }
        }
      }
    }
  }

  @Test
  void staysSoundAtTheBordersOfTheRegimes() {
    SplittableRandom random = new SplittableRandom(12);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = draw(random);
      double less = Math.min(l.acceleration(), l.deceleration());
      double more = Math.max(l.acceleration(), l.deceleration());
      double[] peaks = {l.speed(), less * less / l.jerk(), more * more / l.jerk()};
      for (double peak : peaks) {
        double border = rampDistance(peak, l);
        for (int step = -3; step <= 3; step++) {
          check(LawKind.S_CURVE, l, border + step * Math.ulp(border));
        }
      }
      LawLimits meets = LawLimits.symmetric(less * less / l.jerk(), less, l.jerk());
      check(LawKind.S_CURVE, meets, rampDistance(meets.speed(), meets));
    }
  }

  @Test
  void isAsFastAsBisectionOnThePeakSpeed() {
    SplittableRandom random = new SplittableRandom(13);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits limits = draw(random);
      double distance = logUniform(random, 1e-4, 1e4);
      double expected = bisectedDuration(limits, distance);
      double actual = RestToRest.plan(LawKind.S_CURVE, limits, distance).duration();
      assertEquals(expected, actual, ALGEBRA * expected, limits + ", distance " + distance);
    }
  }

  @ParameterizedTest
  @EnumSource
  void isNeverFasterWithTighterLimits(LawKind law) {
    SplittableRandom random = new SplittableRandom(14);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = draw(random);
      double distance = logUniform(random, 1e-4, 1e4);
      LawLimits tighter =
          new LawLimits(
              l.speed() * random.nextDouble(0.2, 1),
              l.acceleration() * random.nextDouble(0.2, 1),
              l.deceleration() * random.nextDouble(0.2, 1),
              l.jerk() * random.nextDouble(0.2, 1));
      double fast = RestToRest.plan(law, l, distance).duration();
      double slow = RestToRest.plan(law, tighter, distance).duration();
      assertTrue(slow >= fast * (1 - ALGEBRA), l + ", distance " + distance);
    }
  }

  @ParameterizedTest
  @EnumSource
  void playsBackwardsWithAccelerationsSwapped(LawKind law) {
    SplittableRandom random = new SplittableRandom(15);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = draw(random);
      double distance = logUniform(random, 1e-4, 1e4);
      LawProfile forth = RestToRest.plan(law, l, distance);
      LawProfile back =
          RestToRest.plan(
              law,
              new LawLimits(l.speed(), l.deceleration(), l.acceleration(), l.jerk()),
              distance);
      double duration = forth.duration();
      assertEquals(duration, back.duration(), ALGEBRA * duration);
      for (int k = 0; k <= 16; k++) {
        double t = duration * k / 16;
        double mirrored = distance - position(back, duration - t);
        assertEquals(position(forth, t), mirrored, ALGEBRA * distance);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void keepsTheTimeWhenWayAndLimitsGrowAlike(LawKind law) {
    SplittableRandom random = new SplittableRandom(16);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = draw(random);
      double distance = logUniform(random, 1e-4, 1e4);
      double k = logUniform(random, 1e-3, 1e3);
      LawLimits grown =
          new LawLimits(k * l.speed(), k * l.acceleration(), k * l.deceleration(), k * l.jerk());
      double expected = RestToRest.plan(law, l, distance).duration();
      double actual = RestToRest.plan(law, grown, k * distance).duration();
      assertEquals(expected, actual, ALGEBRA * expected);
    }
  }

  @ParameterizedTest
  @EnumSource
  void playsFasterByTheFactorWhoseCubeScalesJerk(LawKind law) {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < DRAWS; i++) {
      LawLimits l = draw(random);
      double distance = logUniform(random, 1e-4, 1e4);
      double k = logUniform(random, 1e-2, 1e2);
      LawLimits faster =
          new LawLimits(
              k * l.speed(),
              k * k * l.acceleration(),
              k * k * l.deceleration(),
              k * k * k * l.jerk());
      double expected = RestToRest.plan(law, l, distance).duration() / k;
      double actual = RestToRest.plan(law, faster, distance).duration();
      assertEquals(expected, actual, ALGEBRA * expected);
    }
  }

  @Test
  void becomesTheTrapezoidAsJerkGrowsWithoutBound() {
    LawLimits limits = new LawLimits(1.2, 4, 8, INF);
    for (double distance : new double[] {0.01, 0.27, 3}) {
      LawProfile trapezoid = RestToRest.plan(LawKind.TRAPEZOID, limits, distance);
      assertEquals(trapezoid.phases(), RestToRest.plan(LawKind.S_CURVE, limits, distance).phases());
    }
  }

  @Test
  void trapezoidLeavesJerkOutOfAccount() {
    LawProfile slow = RestToRest.plan(LawKind.TRAPEZOID, new LawLimits(1, 2, 2, 1e-3), 1);
    LawProfile fast = RestToRest.plan(LawKind.TRAPEZOID, new LawLimits(1, 2, 2, INF), 1);
    assertEquals(fast.duration(), slow.duration());
    assertEquals(INF, slow.peakJerk());
  }

  @Test
  void needsNoLimitThatIsNotReached() {
    LawProfile free = RestToRest.plan(LawKind.S_CURVE, new LawLimits(INF, INF, INF, 16), 1);
    // T = 4 (D / 2 j)^(1/3), by hand.
    assertEquals(4 * Math.cbrt(1.0 / 32), free.duration(), ALGEBRA);
    assertEquals("no-cruise/--", free.regime());
    LawProfile triangle = RestToRest.plan(LawKind.TRAPEZOID, new LawLimits(INF, 4, 4, INF), 1);
    assertEquals(1, triangle.duration(), ALGEBRA);
    assertEquals("triangle", triangle.regime());
  }

  @Test
  void tellsBothSidesOfAJump() {
    LawProfile p = RestToRest.plan(LawKind.TRAPEZOID, new LawLimits(INF, 4, 4, INF), 1);
    assertEquals(2, p.phases().size());
    LawPhase before = p.phases().get(0);
    LawPhase after = p.phases().get(1);
    assertEquals(before.to(), after.from());
    assertEquals(4, before.accelerationAt(before.to()));
    assertEquals(-4, after.accelerationAt(after.from()));
  }

  @Test
  void findsThePhaseOfATime() {
    LawProfile p = RestToRest.plan(LawKind.S_CURVE, new LawLimits(1.8, 9, 9, 90), 1.2);
    List<LawPhase> phases = p.phases();
    assertEquals(7, phases.size());
    for (LawPhase phase : phases) {
      assertEquals(phase, p.phaseAt((phase.from() + phase.to()) / 2));
      assertEquals(phase, p.phaseAt(phase.to()));
    }
    assertEquals(phases.get(0), p.phaseAt(-1));
    assertEquals(phases.get(6), p.phaseAt(99));
  }

  @Test
  void refusesWhatBoundsNothing() {
    LawLimits limits = new LawLimits(1, 2, INF, INF);
    refused("trapezoid needs", () -> RestToRest.plan(LawKind.TRAPEZOID, limits, 1));
    refused("s-curve needs", () -> RestToRest.plan(LawKind.S_CURVE, limits, 1));
  }

  @Test
  void refusesDistancesThatAreNotPositive() {
    LawLimits limits = new LawLimits(1, 2, 2, 3);
    for (double distance : new double[] {0, -1, INF, Double.NaN}) {
      refused("distance", () -> RestToRest.plan(LawKind.S_CURVE, limits, distance));
    }
  }

  @Test
  void refusesLimitsThatAreNotPositive() {
    refused("speed", () -> new LawLimits(0, 1, 1, 1));
    refused("acceleration", () -> new LawLimits(1, -1, 1, 1));
    refused("deceleration", () -> new LawLimits(1, 1, Double.NaN, 1));
    refused("jerk", () -> new LawLimits(1, 1, 1, 0));
    refused("phase", () -> new JerkPhase(1, 0.5, 1, 0, 0, 0, 0));
    CamCurve curve = new CamCurve.Quintic();
    refused("phase", () -> new CamPhase(1, 0.5, 1, false, 1, 1, curve));
  }

  private static void refused(String word, Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message != null && message.contains(word), message);
  }

  /** Everything that must hold for every law. */
  private static void check(LawKind law, LawLimits l, double distance) {
    LawProfile p = RestToRest.plan(law, l, distance);
    String what = law + ", " + l + ", distance " + distance;
    double slackTime = TIME_ULPS * Math.ulp(p.duration());
    double maxAcceleration = Math.max(p.peakAcceleration(), p.peakDeceleration());
    double jerk = law.boundsJerk() ? l.jerk() : 0;
    double slackPosition = ALGEBRA * distance + p.peakSpeed() * slackTime;
    double slackSpeed = ALGEBRA * p.peakSpeed() + (maxAcceleration + jerk * slackTime) * slackTime;
    double slackAcceleration = ALGEBRA * maxAcceleration + jerk * slackTime;
    double time = 0;
    double position = 0;
    double speed = 0;
    double acceleration = 0;
    for (LawPhase f : p.phases()) {
      assertEquals(time, f.from(), what);
      assertTrue(f.duration() > 0 || f.to() == p.duration(), what);
      assertEquals(position, f.positionAt(f.from()), slackPosition, what);
      assertEquals(speed, f.speedAt(f.from()), slackSpeed, what);
      if (law.boundsJerk()) {
        assertEquals(acceleration, f.accelerationAt(f.from()), slackAcceleration, what);
      }
      for (double t : new double[] {f.from(), (f.from() + f.to()) / 2, f.to()}) {
        assertTrue(f.speedAt(t) >= -slackSpeed, what);
        assertTrue(f.speedAt(t) <= l.speed() + slackSpeed, what);
        assertTrue(f.accelerationAt(t) <= l.acceleration() + slackAcceleration, what);
        assertTrue(f.accelerationAt(t) >= -l.deceleration() - slackAcceleration, what);
        assertTrue(!law.boundsJerk() || Math.abs(f.jerkAt(t)) <= l.jerk() * (1 + ALGEBRA), what);
      }
      time = f.to();
      position = f.positionAt(time);
      speed = f.speedAt(time);
      acceleration = f.accelerationAt(time);
    }
    assertEquals(p.duration(), time, what);
    assertEquals(distance, p.distance(), what);
    double sum = p.accelerationTime() + p.cruiseTime() + p.decelerationTime();
    assertEquals(sum, time, ALGEBRA * time, what);
    assertEquals(distance, position, ALGEBRA * distance, what);
    assertEquals(0, speed, ALGEBRA * p.peakSpeed(), what);
    if (law.boundsJerk()) {
      assertEquals(0, acceleration, slackAcceleration, what);
    }
  }

  private static double position(LawProfile profile, double time) {
    return profile.phaseAt(time).positionAt(time);
  }

  private static LawLimits draw(SplittableRandom random) {
    return new LawLimits(
        logUniform(random, 1e-2, 1e2),
        logUniform(random, 1e-2, 1e2),
        logUniform(random, 1e-2, 1e2),
        logUniform(random, 1e-2, 1e4));
  }

  private static double logUniform(SplittableRandom random, double from, double to) {
    return Math.exp(random.nextDouble(Math.log(from), Math.log(to)));
  }

  /** Fastest time to a speed: of all flat accelerations {@code a <= max} the best, by calculus. */
  private static double rampTime(double speed, double maxAcceleration, double jerk) {
    double a = Math.min(maxAcceleration, Math.sqrt(speed * jerk));
    return speed / a + a / jerk;
  }

  private static double rampDistance(double speed, LawLimits l) {
    return speed
        / 2
        * (rampTime(speed, l.acceleration(), l.jerk())
            + rampTime(speed, l.deceleration(), l.jerk()));
  }

  private static double bisectedDuration(LawLimits l, double distance) {
    double low = 0;
    double high = l.speed();
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      if (middle > 0 && rampDistance(middle, l) > distance) {
        high = middle;
      } else {
        low = middle;
      }
    }
    double ramps =
        rampTime(high, l.acceleration(), l.jerk()) + rampTime(high, l.deceleration(), l.jerk());
    return ramps + (distance - rampDistance(high, l)) / high;
  }
}
