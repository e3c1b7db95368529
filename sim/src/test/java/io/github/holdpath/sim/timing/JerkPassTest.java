package io.github.holdpath.sim.timing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import io.github.holdpath.sim.timelaw.AxisLimits;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.RestToRest;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class JerkPassTest {
  private static final String FILE = "path-timing.json";

  /** The promise, as part of a limit. */
  private static final double KEPT = 1e-6;

  /** Rounding of positions over the cube of a step of 2 ms, as part of a limit. */
  private static final double DIFFERENCES = 1e-5;

  /** On a straight line 5e-4 were seen; what is left is the grid of the search. */
  private static final double ABOVE_OPTIMUM = 2e-3;

  /** What asking for the count may itself take, bytes. */
  private static final long ALLOCATION_NOISE = 2000;

  private static double[] jerks(List<AxisLimits> limits, double perSecond) {
    return limits.stream()
        .mapToDouble(l -> perSecond * Math.max(l.maxAcceleration(), -l.minAcceleration()))
        .toArray();
  }

  private static SmoothTiming smooth(JointCurve curve, List<AxisLimits> limits, double[] jerk) {
    return assertInstanceOf(SmoothTiming.class, JerkPass.of(curve, limits, jerk));
  }

  /** How much longer than without limits of jerk is what was seen, and a little. */
  @ParameterizedTest
  @CsvSource({"F6, 1.05", "F7, 1.08", "F8, 1.05", "F9, 1.04", "F10, 1.03"})
  void keepsAllLimitsOnTheReferencePaths(String name, double longer) {
    JsonNode c = TimingCases.read(FILE, name);
    JointCurve curve = TimingCases.curve(c);
    List<AxisLimits> limits = TimingCases.limits(c);
    double[] jerk = jerks(limits, 20);
    SmoothTiming timing = smooth(curve, limits, jerk);
    double most = BrokenJerk.most(timing, curve, limits, jerk, 40_000);
    assertTrue(most <= 1 + KEPT, name + " takes " + most);
    assertTrue(most >= 0.999, name + " is needlessly slow: " + most);
    double byPositions = BrokenJerk.mostByPositions(timing, curve, limits, jerk, 2e-3);
    assertTrue(byPositions <= 1 + DIFFERENCES, name + " takes " + byPositions);
    double free = c.get("duration").asDouble();
    assertTrue(timing.duration() > free, name);
    assertTrue(timing.duration() <= longer * free, name + " takes " + timing.duration() / free);
    assertTrue(timing.governs().startsWith("joint "), timing.governs());
  }

  @Test
  void keepsAllLimitsOnDrawnPaths() {
    SplittableRandom random = new SplittableRandom(93);
    for (int i = 0; i < 30; i++) {
      int joints = 4;
      double[] knots = new double[20];
      double[][] points = new double[20][joints];
      for (int k = 0; k < 20; k++) {
        knots[k] = k == 0 ? 0 : knots[k - 1] + random.nextDouble(0.5, 1.5);
        for (int j = 0; j < joints; j++) {
          points[k][j] = random.nextDouble(-1.5, 1.5);
        }
      }
      List<AxisLimits> limits = new ArrayList<>();
      double[] jerk = new double[joints];
      for (int j = 0; j < joints; j++) {
        double speed = random.nextDouble(1, 3);
        double acceleration = random.nextDouble(4, 20);
        limits.add(
            new AxisLimits(
                -speed, random.nextDouble(1, 3), -acceleration, random.nextDouble(4, 20), 1));
        jerk[j] = acceleration * random.nextDouble(5, 40);
      }
      SplineCurve curve = new SplineCurve(knots, points, i % 2 == 0);
      SmoothTiming timing = smooth(curve, limits, jerk);
      double most = BrokenJerk.most(timing, curve, limits, jerk, 16_000);
      assertTrue(most <= 1 + KEPT, "path " + i + " takes " + most);
      double longer = timing.duration() / timing.leastWithoutJerk();
      assertTrue(longer > 0.999 && longer < 1.1, "path " + i + " " + longer);
    }
  }

  @Test
  void goesFromEndToEndAndNeverBack() {
    JsonNode c = TimingCases.read(FILE, "F9");
    JointCurve curve = TimingCases.curve(c);
    List<AxisLimits> limits = TimingCases.limits(c);
    SmoothTiming timing = smooth(curve, limits, jerks(limits, 20));
    double[] state = new double[4];
    double[] ends = {-1, 0, timing.duration(), timing.duration() + 1};
    for (double t : ends) {
      timing.at(t, state);
      assertEquals(t > 0 ? curve.length() : 0, state[SmoothTiming.PLACE]);
      assertEquals(0, state[SmoothTiming.RATE]);
      assertEquals(0, state[SmoothTiming.ACCELERATION]);
    }
    // Continuous up to the ends: what a motion of bounded jerk reaches in so short a time.
    timing.at(1e-6, state);
    assertEquals(0, state[SmoothTiming.RATE], 1e-9);
    timing.at(timing.duration() - 1e-6, state);
    assertEquals(curve.length(), state[SmoothTiming.PLACE], 1e-12);
    assertEquals(0, state[SmoothTiming.RATE], 1e-9);
    double before = 0;
    for (int i = 0; i <= 50_000; i++) {
      timing.at(timing.duration() * i / 50_000, state);
      // A difference of two integrals: rounding.
      assertTrue(state[SmoothTiming.PLACE] >= before - 1e-13, "at " + i);
      assertTrue(state[SmoothTiming.RATE] >= 0);
      before = state[SmoothTiming.PLACE];
    }
  }

  @Test
  void statesAreEachOthersDerivatives() {
    JsonNode c = TimingCases.read(FILE, "F8");
    List<AxisLimits> limits = TimingCases.limits(c);
    SmoothTiming timing = smooth(TimingCases.curve(c), limits, jerks(limits, 20));
    double[] before = new double[4];
    double[] here = new double[4];
    double[] after = new double[4];
    double step = 1e-5;
    int alike = 0;
    for (int i = 1; i < 3000; i++) {
      double t = timing.duration() * i / 3000;
      timing.at(t - step, before);
      timing.at(t, here);
      timing.at(t + step, after);
      double[] slope = new double[3];
      for (int k = 0; k < 3; k++) {
        slope[k] = (after[k] - before[k]) / (2 * step);
      }
      // Jerk times the square of the step, and rounding over the step.
      assertEquals(here[SmoothTiming.RATE], slope[0], 1e-7);
      // A jump of the jerk within the step: less than 1e4 1/s^3 here.
      assertEquals(here[SmoothTiming.ACCELERATION], slope[1], 1e4 * step);
      if (before[SmoothTiming.JERK] == after[SmoothTiming.JERK]) {
        alike++;
        assertEquals(here[SmoothTiming.JERK], slope[2], 1e-6 * 1e4);
      }
    }
    assertTrue(alike > 2000, "only " + alike);
  }

  /** Against the fastest law from rest to rest: cruise, no cruise, acceleration not reached. */
  @ParameterizedTest
  @CsvSource({"0.8, 5, 50", "3, 5, 100", "3, 5, 25", "3, 5, 5", "100, 100, 5"})
  void straightLinesAreNearTheFastestLaw(double speed, double acceleration, double jerk) {
    double optimum =
        RestToRest.plan(LawKind.S_CURVE, LawLimits.symmetric(speed, acceleration, jerk), 1)
            .duration();
    // Two joints with proportional limits.
    JointCurve line = new TimingCases.PolynomialCurve(new double[][] {{0, 1}, {1, -2}}, 1);
    List<AxisLimits> limits =
        List.of(
            new AxisLimits(-speed, speed, -acceleration, acceleration, 1),
            new AxisLimits(-2 * speed, 2 * speed, -2 * acceleration, 2 * acceleration, 1));
    double ratio = smooth(line, limits, new double[] {jerk, 2 * jerk}).duration() / optimum;
    assertTrue(ratio > 1 - KEPT, "faster than the fastest: " + ratio);
    assertTrue(ratio < 1 + ABOVE_OPTIMUM, "ratio " + ratio);
  }

  @Test
  void durationFallsToThatWithoutLimitsAsJerkGrows() {
    JsonNode c = TimingCases.read(FILE, "F8");
    JointCurve curve = TimingCases.curve(c);
    List<AxisLimits> limits = TimingCases.limits(c);
    double last = Double.POSITIVE_INFINITY;
    for (double perSecond : new double[] {2, 5, 20, 100, 1e4}) {
      double duration = smooth(curve, limits, jerks(limits, perSecond)).duration();
      assertTrue(duration < last, perSecond + " takes " + duration + " after " + last);
      last = duration;
    }
    assertEquals(1, last / c.get("duration").asDouble(), 1e-3);
    double[] none = new double[curve.joints()];
    Arrays.fill(none, Double.POSITIVE_INFINITY);
    double unbounded = smooth(curve, limits, none).duration();
    assertEquals(1, unbounded / c.get("duration").asDouble(), 2e-3);
  }

  @Test
  void aCurveWithoutThirdDerivativeIsTakenByDifferences() {
    JsonNode c = TimingCases.read(FILE, "F10");
    JointCurve exact = TimingCases.curve(c);
    List<AxisLimits> limits = TimingCases.limits(c);
    double[] jerk = jerks(limits, 20);
    SmoothTiming timing = smooth(new WithoutThird(exact), limits, jerk);
    double most = BrokenJerk.most(timing, exact, limits, jerk, 40_000);
    assertTrue(most <= 1 + KEPT, "takes " + most);
    double[] own = new double[exact.joints()];
    double[] found = new double[exact.joints()];
    ThirdDerivative third = new ThirdDerivative(new WithoutThird(exact));
    for (double s : new double[] {0, 1e-6, 0.3, exact.length() / 2, exact.length()}) {
      int piece = 0;
      while (piece + 1 < exact.pieces() && exact.start(piece + 1) < s) {
        piece++;
      }
      exact.third(piece, s, own);
      third.at(piece, s, found);
      for (int j = 0; j < own.length; j++) {
        // Rounding of the second derivative over a step of 1e-4.
        assertEquals(own[j], found[j], 1e-9 * (1 + Math.abs(own[j])));
      }
    }
  }

  @Test
  void namesTheJointThatBendsAtOnce() {
    JointCurve corner = new Corner();
    List<AxisLimits> limits =
        List.of(new AxisLimits(-1, 1, -1, 1, 1), new AxisLimits(-1, 1, -1, 1, 1));
    NoTiming none =
        assertInstanceOf(NoTiming.class, JerkPass.of(corner, limits, new double[] {10, 10}));
    assertEquals("joint 2 jerk", none.constraint());
    assertEquals(1, none.place());
    assertTrue(none.reason().contains("joint 2"), none.reason());
    // Nothing bounds the jerk of that joint: it may.
    smooth(corner, limits, new double[] {10, Double.POSITIVE_INFINITY});
  }

  @Test
  void passesOnWhyThereIsNoTimingAtAll() {
    JointCurve still = new TimingCases.PolynomialCurve(new double[][] {{1}}, 1);
    NoTiming none =
        assertInstanceOf(
            NoTiming.class,
            JerkPass.of(still, List.of(new AxisLimits(-1, 1, -1, 1, 1)), new double[] {1}));
    assertTrue(none.reason().contains("Nothing limits"), none.reason());
  }

  @Test
  void refusesWhatIsNone() {
    JointCurve line = new TimingCases.PolynomialCurve(new double[][] {{0, 1}}, 1);
    List<AxisLimits> limits = List.of(new AxisLimits(-1, 1, -1, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> JerkPass.of(line, limits, new double[2]));
    assertThrows(IllegalArgumentException.class, () -> JerkPass.of(line, limits, new double[1]));
    FastestTiming fastest = new FastestTiming();
    assertTrue(fastest.solve(RowsOf.straight(2, 2, 2, 3), 1, 0, TimingGoal.adaptive(1e-3)));
    Timing moving = assertInstanceOf(Timing.class, fastest.result());
    assertThrows(
        IllegalArgumentException.class, () -> new SmoothTiming(moving, 0.1, 1, 1, "joint 1 jerk"));
  }

  @Test
  void samplingAllocatesNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    JointCurve line = new TimingCases.PolynomialCurve(new double[][] {{0, 1}}, 1);
    SmoothTiming timing = smooth(line, List.of(new AxisLimits(-1, 1, -1, 1, 1)), new double[] {10});
    double[] state = new double[4];
    timing.at(0.1, state);
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < 10_000; i++) {
      timing.at(timing.duration() * i / 10_000, state);
    }
    long booked = threads.getCurrentThreadAllocatedBytes() - before;
    assertTrue(booked < ALLOCATION_NOISE, "bytes allocated: " + booked);
  }

  @Test
  void areaIsTheIntegralOfThePlace() {
    Timing timing =
        assertInstanceOf(
            Timing.class, FastestTiming.of(TimingCases.rows("F9"), TimingGoal.adaptive(1e-3)));
    double[] state = new double[3];
    double sum = 0;
    for (int i = 0; i < timing.cells(); i++) {
      double span = timing.time(i + 1) - timing.time(i);
      int parts = 20;
      for (int k = 0; k < parts; k++) {
        double from = timing.time(i) + span * k / parts;
        // Gauss with two points: the fourth derivative of s over so short a time is nothing.
        for (double x : new double[] {0.5 - Math.sqrt(1.0 / 12), 0.5 + Math.sqrt(1.0 / 12)}) {
          timing.at(from + x * span / parts, state);
          sum += 0.5 * span / parts * state[Timing.PLACE];
        }
        assertEquals(sum, timing.area(from + span / parts), 1e-10);
      }
    }
    assertEquals(0, timing.area(-1), 0);
    double end = timing.duration();
    assertEquals(timing.area(end) + 2 * timing.place(timing.cells()), timing.area(end + 2), 1e-12);
  }

  /** A curve as another that does not tell its third derivative. */
  private record WithoutThird(JointCurve curve) implements JointCurve {
    @Override
    public int joints() {
      return curve.joints();
    }

    @Override
    public double length() {
      return curve.length();
    }

    @Override
    public int pieces() {
      return curve.pieces();
    }

    @Override
    public double start(int piece) {
      return curve.start(piece);
    }

    @Override
    public void at(int piece, double s, double[] q, double[] dq, double[] ddq) {
      curve.at(piece, s, q, dq, ddq);
    }
  }

  /** Joint 1 goes on evenly; joint 2 goes evenly, then on a parabola. */
  private record Corner() implements JointCurve {
    @Override
    public int joints() {
      return 2;
    }

    @Override
    public double length() {
      return 2;
    }

    @Override
    public int pieces() {
      return 2;
    }

    @Override
    public double start(int piece) {
      return piece;
    }

    @Override
    public void at(int piece, double s, double[] q, double[] dq, double[] ddq) {
      q[0] = s;
      dq[0] = 1;
      ddq[0] = 0;
      double on = piece == 0 ? 0 : s - 1;
      q[1] = s + 0.5 * on * on;
      dq[1] = 1 + on;
      ddq[1] = piece;
    }
  }
}
