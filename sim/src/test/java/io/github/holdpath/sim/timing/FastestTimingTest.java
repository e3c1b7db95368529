package io.github.holdpath.sim.timing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.timelaw.AxisLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FastestTimingTest {
  private static final TimingGoal GOAL = TimingGoal.adaptive(1e-3);

  /** The promise of the solver, as part of a limit. */
  private static final double KEPT = 1e-6;

  /** Twenty waypoints, six joints, unequal limits: natural and not-a-knot in turn. */
  static JointRows drawn(SplittableRandom random, int waypoints, boolean natural) {
    int joints = 6;
    double[] knots = new double[waypoints];
    double[][] points = new double[waypoints][joints];
    for (int i = 0; i < waypoints; i++) {
      knots[i] = i == 0 ? 0 : knots[i - 1] + random.nextDouble(0.5, 1.5);
      for (int j = 0; j < joints; j++) {
        points[i][j] = random.nextDouble(-1.5, 1.5);
      }
    }
    List<AxisLimits> limits = new ArrayList<>();
    for (int j = 0; j < joints; j++) {
      limits.add(
          new AxisLimits(
              -random.nextDouble(1, 3),
              random.nextDouble(1, 3),
              -random.nextDouble(4, 20),
              random.nextDouble(4, 20),
              1));
    }
    return new JointRows(new SplineCurve(knots, points, natural), limits);
  }

  @Test
  void keepsAllLimitsBetweenItsNodesOnDrawnPaths() {
    SplittableRandom random = new SplittableRandom(81);
    FastestTiming fastest = new FastestTiming();
    for (int i = 0; i < 30; i++) {
      JointRows rows = drawn(random, 20, i % 2 == 0);
      String name = "path " + i;
      assertTrue(fastest.solve(rows, 0, 0, GOAL), name);
      Timing timing = assertInstanceOf(Timing.class, fastest.result(), name);
      assertEquals(0, BrokenLimits.worst(timing, rows, 11), KEPT, name);
      assertTrue(fastest.solve(rows, 0, 0, TimingGoal.even(20_000)), name);
      assertEquals(1, timing.duration() / fastest.duration(), GOAL.tolerance(), name);
    }
  }

  @Test
  void statesAreEachOthersDerivatives() {
    JointRows rows = TimingCases.rows("F9");
    Timing timing = assertInstanceOf(Timing.class, FastestTiming.of(rows, GOAL));
    double[] before = new double[3];
    double[] after = new double[3];
    for (int i = 0; i < timing.cells(); i++) {
      double span = timing.time(i + 1) - timing.time(i);
      timing.at(timing.time(i + 1) - 1e-12 * span, before);
      // Rounding of the instant, times the rate.
      assertEquals(timing.place(i + 1), before[Timing.PLACE], 1e-11);
      assertEquals(timing.rate(i + 1), before[Timing.RATE], 1e-9);
      double middle = timing.time(i) + 0.5 * span;
      double step = 1e-3 * span;
      timing.at(middle - step, before);
      timing.at(middle + step, after);
      double rate = (after[Timing.PLACE] - before[Timing.PLACE]) / (2 * step);
      double acceleration = (after[Timing.RATE] - before[Timing.RATE]) / (2 * step);
      timing.at(middle, before);
      // Central differences of values around 1: rounding over the step of some 1e-6 s.
      assertEquals(before[Timing.RATE], rate, 1e-8);
      assertEquals(before[Timing.ACCELERATION], acceleration, 1e-5);
    }
    timing.at(-1, before);
    assertEquals(0, before[Timing.PLACE]);
    timing.at(timing.duration() + 1, before);
    assertEquals(rows.length(), before[Timing.PLACE], 1e-12);
  }

  @Test
  void startsAndEndsInMotion() {
    // From 1 to 0.5 over 2, up at 2, down at 4: x rises by 4 s, falls by 8 s.
    RowsOf rows = RowsOf.straight(2, 2, 4, 10);
    FastestTiming fastest = new FastestTiming();
    assertTrue(fastest.solve(rows, 1, 0.5, TimingGoal.adaptive(1e-5)));
    double rise = (8 * 2 + 0.25 - 1) / 12;
    double peak = Math.sqrt(1 + 4 * rise);
    double expected = (peak - 1) / 2 + (peak - 0.5) / 4;
    assertEquals(expected, fastest.duration(), 1e-5 * expected);
    Timing timing = assertInstanceOf(Timing.class, fastest.result());
    assertEquals(1, timing.rate(0), 1e-15);
    assertEquals(0.5, timing.rate(timing.cells()), 1e-15);
    assertEquals("row 0", timing.governs(0));
    assertEquals("row 1", timing.governs(timing.cells() - 1));
  }

  @Test
  void passesPlacesWhereAJointTurnsBack() {
    // Joint 2 turns at s = 0.5: its row there does not depend on the acceleration.
    double[][] turnsBack = {{0, 0.3}, {0, 4, -4}};
    JointRows rows =
        new JointRows(
            new TimingCases.PolynomialCurve(turnsBack, 1),
            List.of(new AxisLimits(-5, 5, -9, 9, 1), new AxisLimits(-5, 5, -9, 9, 1)));
    Timing timing = assertInstanceOf(Timing.class, FastestTiming.of(rows, GOAL));
    assertEquals(0, BrokenLimits.worst(timing, rows, 23), KEPT);
    double[] state = new double[3];
    timing.at(timing.duration() / 2, state);
    // By symmetry, |q2''| = 8 x there; x is within the duration's tolerance of 9/8.
    assertEquals(0.5, state[Timing.PLACE], 1e-2);
    assertEquals(9.0 / 8, state[Timing.RATE] * state[Timing.RATE], 0.01);
  }

  @Test
  void pathOfNoLengthTakesNoTime() {
    RowsOf rows = RowsOf.straight(0, 1, 1, 1);
    Timing timing = assertInstanceOf(Timing.class, FastestTiming.of(rows, GOAL));
    assertEquals(0, timing.duration());
    assertEquals(0, timing.cells());
    FastestTiming fastest = new FastestTiming();
    assertFalse(fastest.solve(rows, 1, 0.5, GOAL));
    assertEquals("length", refusal(fastest).constraint());
  }

  @Test
  void refusalNamesRowAndPlace() {
    FastestTiming fastest = new FastestTiming();
    // From 4 it takes 16/2 = 8 to stop at 1: too fast.
    assertFalse(fastest.solve(RowsOf.straight(2, 1, 1, 10), 4, 0, GOAL));
    assertEquals("row 1", refusal(fastest).constraint());
    assertEquals(0, refusal(fastest).place());
    assertTrue(refusal(fastest).reason().contains("at most 2.0"), refusal(fastest).reason());
    assertFalse(fastest.solve(RowsOf.straight(2, 1, 1, 10), 0, 11, GOAL));
    assertEquals("cap", refusal(fastest).constraint());
    assertEquals(2, refusal(fastest).place());
    assertFalse(fastest.solve(RowsOf.straight(2, 1, 1, 1e30), 1e12, 0, GOAL));
    // A load that beyond s = 1.5 no rate carries.
    RowsOf dead =
        new RowsOf(
            2,
            new double[] {0, 1.5},
            3,
            (piece, s, a, b, c, o) -> {
              RowsOf.set(a, b, c, o, 1, 0, 1);
              RowsOf.set(a, b, c, o + 1, -1, 0, 1);
              RowsOf.set(a, b, c, o + 2, 0, 1, piece == 0 ? 1 : -1);
              return 100;
            });
    assertFalse(fastest.solve(dead, 0, 0, GOAL));
    assertEquals("row 2", refusal(fastest).constraint());
    assertEquals(2, refusal(fastest).place(), 0.01);
  }

  @Test
  void refusesAPathWithoutAnyLimit() {
    RowsOf rows =
        new RowsOf(1, new double[] {0}, 0, (piece, s, a, b, c, o) -> Double.POSITIVE_INFINITY);
    FastestTiming fastest = new FastestTiming();
    assertFalse(fastest.solve(rows, 0, 0, GOAL));
    assertTrue(refusal(fastest).reason().contains("Nothing limits"), refusal(fastest).reason());
  }

  /** A cap with a needle that no grid of this size can follow: given up, not searched for ever. */
  @Test
  void givesUpWhereALimitCannotBeFollowed() {
    RowsOf rows =
        new RowsOf(
            1,
            new double[] {0},
            2,
            (piece, s, a, b, c, o) -> {
              RowsOf.set(a, b, c, o, 1, 0, 1);
              RowsOf.set(a, b, c, o + 1, -1, 0, 1);
              return 0.2 + 0.1 * Math.sin(4e4 * s);
            });
    FastestTiming fastest = new FastestTiming();
    assertFalse(fastest.solve(rows, 0, 0, new TimingGoal(16, 100, 1e-3, true)));
    assertEquals("cap", refusal(fastest).constraint());
    assertTrue(refusal(fastest).reason().contains("too fast"), refusal(fastest).reason());
  }

  @Test
  void aWorkspaceUsedAgainGivesTheSame() {
    FastestTiming fastest = new FastestTiming();
    assertTrue(fastest.solve(TimingCases.rows("F8"), 0, 0, GOAL));
    double first = fastest.duration();
    assertTrue(fastest.solve(TimingCases.rows("F6"), 0, 0, TimingGoal.even(500)));
    assertTrue(fastest.solve(TimingCases.rows("F8"), 0, 0, GOAL));
    assertEquals(first, fastest.duration());
  }

  @Test
  void refusesRatesThatAreNone() {
    FastestTiming fastest = new FastestTiming();
    RowsOf rows = RowsOf.straight(1, 1, 1, 1);
    assertThrows(IllegalArgumentException.class, () -> fastest.solve(rows, -1, 0, GOAL));
    assertThrows(IllegalArgumentException.class, () -> fastest.solve(rows, 0, Double.NaN, GOAL));
    assertThrows(IllegalStateException.class, () -> new FastestTiming().result());
  }

  private static NoTiming refusal(FastestTiming fastest) {
    return assertInstanceOf(NoTiming.class, fastest.result());
  }
}
