package io.github.holdpath.sim.timing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * Source: reference/path-timing.json, closed forms, and durations from fine grids and a linear
 * program apart from this code; see the note beside the file.
 */
class PathTimingValidationTest {
  private static final String FILE = "path-timing.json";

  /** What the reference asks to be compared to: its grids and its linear program agree so far. */
  private static final double DURATION = 2e-6;

  /** A timing within 0.1 % of the least duration is what users are promised. */
  private static final double NEAR = 1e-3;

  @ParameterizedTest
  @ValueSource(strings = {"F6", "F7", "F8", "F9", "F10"})
  void curvesAreTheOnesOfTheReference(String name) {
    JsonNode c = TimingCases.read(FILE, name);
    JointCurve curve = TimingCases.curve(c);
    JsonNode check = c.get("path_check");
    double s = check.get("s").asDouble();
    int piece = 0;
    while (piece + 1 < curve.pieces() && curve.start(piece + 1) < s) {
      piece++;
    }
    double[] q = new double[curve.joints()];
    double[] dq = new double[curve.joints()];
    double[] ddq = new double[curve.joints()];
    curve.at(piece, s, q, dq, ddq);
    // Printed to twelve digits.
    assertArrayEquals(TimingCases.numbers(check.get("q")), q, 1e-11);
    assertArrayEquals(TimingCases.numbers(check.get("dq")), dq, 1e-11);
    assertArrayEquals(TimingCases.numbers(check.get("ddq")), ddq, 1e-11);
  }

  @ParameterizedTest
  @ValueSource(strings = {"F6", "F7", "F8", "F9", "F10"})
  void evenCellsApproachTheReference(String name) {
    JointRows rows = TimingCases.rows(name);
    FastestTiming fastest = new FastestTiming();
    assertTrue(fastest.solve(rows, 0, 0, TimingGoal.even(20_000)));
    double coarse = fastest.duration();
    assertTrue(fastest.solve(rows, 0, 0, TimingGoal.even(40_000)));
    double fine = fastest.duration();
    double expected = TimingCases.read(FILE, name).get("duration").asDouble();
    // The error halves with the cells.
    assertEquals(expected, 2 * fine - coarse, DURATION * expected);
  }

  @ParameterizedTest
  @CsvSource({"F6, 200", "F7, 200", "F8, 200", "F9, 400", "F10, 200"})
  void fewCellsAreEnoughAndKeepAllLimits(String name, int most) {
    JointRows rows = TimingCases.rows(name);
    Timing timing =
        assertInstanceOf(Timing.class, FastestTiming.of(rows, TimingGoal.adaptive(NEAR)));
    double expected = TimingCases.read(FILE, name).get("duration").asDouble();
    assertTrue(timing.cells() <= most, name + " takes " + timing.cells() + " cells");
    assertTrue(timing.duration() <= expected * (1 + NEAR), name + " " + timing.duration());
    assertTrue(timing.duration() >= expected * (1 - DURATION), name + " " + timing.duration());
    assertTrue(timing.estimatedError() <= 2 * NEAR * expected, name);
    assertEquals(0, BrokenLimits.worst(timing, rows, 23), 1e-6, name);
  }

  @Test
  void lineAndJointLineAreTrapezoids() {
    JsonNode line = TimingCases.read(FILE, "F1");
    double a = line.get("amax").asDouble();
    near(line, RowsOf.straight(line.get("length").asDouble(), a, a, line.get("vmax").asDouble()));
    JsonNode joints = TimingCases.read(FILE, "F2");
    double[] delta = TimingCases.numbers(joints.get("delta"));
    double[][] coefficients = new double[delta.length][];
    for (int j = 0; j < delta.length; j++) {
      coefficients[j] = new double[] {0, delta[j]};
    }
    near(
        joints,
        new JointRows(
            new TimingCases.PolynomialCurve(coefficients, 1), TimingCases.limits(joints)));
  }

  @Test
  void arcWithLimitsAlongAndAcross() {
    JsonNode c = TimingCases.read(FILE, "F3");
    double radius = c.get("radius").asDouble();
    double along = c.get("tangential_amax").asDouble();
    double speed =
        Math.min(
            c.get("vmax").asDouble(), Math.sqrt(c.get("centripetal_amax").asDouble() * radius));
    double length = radius * Math.toRadians(c.get("angle_deg").asDouble());
    near(c, RowsOf.straight(length, along, along, speed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"F4a", "F4b", "F4c"})
  void arcWithOneLimitOfTheWholeAcceleration(String name) {
    JsonNode c = TimingCases.read(FILE, name);
    double radius = c.get("radius").asDouble();
    double length = radius * Math.toRadians(c.get("angle_deg").asDouble());
    double speed = c.get("vmax").isNull() ? 1e3 : c.get("vmax").asDouble();
    near(c, circle(length, radius, c.get("total_amax").asDouble(), speed));
  }

  /** Whole acceleration u along and x/R across at most a, by 400 chords: 8e-6 too slow. */
  static RowsOf circle(double length, double radius, double a, double speed) {
    int chords = 400;
    double[] u = new double[chords + 1];
    double[] x = new double[chords + 1];
    for (int k = 0; k <= chords; k++) {
      double angle = Math.PI * ((double) k / chords - 0.5);
      u[k] = a * Math.sin(angle);
      x[k] = a * radius * Math.cos(angle);
    }
    return RowsOf.region(length, u, x, speed);
  }

  @Test
  void limitsMayJumpWherePiecesMeet() {
    JsonNode c = TimingCases.read(FILE, "F5");
    double line = c.get("line1").asDouble();
    double arc = c.get("arc_length").asDouble();
    double a = c.get("tangential_amax").asDouble();
    double[] speeds = {c.get("vmax").asDouble(), c.get("arc_speed").asDouble()};
    RowsOf rows =
        new RowsOf(
            2 * line + arc,
            new double[] {0, line, line + arc},
            2,
            (piece, s, ofU, ofX, bound, o) -> {
              RowsOf.set(ofU, ofX, bound, o, 1, 0, a);
              RowsOf.set(ofU, ofX, bound, o + 1, -1, 0, a);
              return speeds[piece % 2] * speeds[piece % 2];
            });
    near(c, rows);
  }

  static void near(JsonNode c, PathRows rows) {
    String name = c.get("case").asString();
    double expected = c.get("duration").asDouble();
    for (double tolerance : new double[] {NEAR, 1e-4}) {
      Timing timing =
          assertInstanceOf(Timing.class, FastestTiming.of(rows, TimingGoal.adaptive(tolerance)));
      assertTrue(timing.duration() <= expected * (1 + tolerance), name + timing.duration());
      assertTrue(timing.duration() >= expected * (1 - DURATION), name + timing.duration());
      assertEquals(0, BrokenLimits.worst(timing, rows, 23), 1e-6, name);
    }
  }
}
