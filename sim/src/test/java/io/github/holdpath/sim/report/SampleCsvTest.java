package io.github.holdpath.sim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.DrawnJobs;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of samples as another program reads it. */
class SampleCsvTest {
  /** What the table must give back when its accelerations are integrated, m and rad. */
  private static final double INTEGRATED = 1e-6;

  /** Where the study refines between the rows. */
  private static final double PROMISED = 1e-4;

  private static final List<String> HOLD =
      List.of("factor", "margin", "speedHeadroom", "mode", "patch");
  private static final double STEP = 1e-3;

  static List<StudyResult> results() {
    List<StudyResult> results = new ArrayList<>();
    for (String name : DemoScenes.planned().toList()) {
      LoadedScene loaded = DemoScenes.read(name, Map.of());
      results.add(HoldStudy.run(loaded.scene(), loaded.scene().requiredSafety()));
      LoadedScene smooth = DemoScenes.read(name, smooth());
      results.add(HoldStudy.run(smooth.scene(), smooth.scene().requiredSafety()));
    }
    for (int i = 0; i < 6; i++) {
      Scene drawn = new DrawnJobs(77 + i).next(i);
      results.add(HoldStudy.run(drawn, 2));
    }
    return results;
  }

  private static Map<String, String> smooth() {
    return Map.of("law", "s-curve", "limits/jerk", "100 m/s^3", "limits/turnJerk", "2500 deg/s^3");
  }

  @ParameterizedTest
  @MethodSource("results")
  void accelerationIntegratedTwiceGivesThePath(StudyResult result) {
    // The curve through four rows errs by the fourth power of their spacing: a job that is over in
    // less than a second, ten times as sharp as the others, is told in finer rows.
    double step = result.cycleTime() < 1 ? STEP / 4 : STEP;
    List<CSVRecord> rows = rows(SampleCsv.text(result, step));
    for (String axis : List.of("x", "y", "z")) {
      double v = 0;
      double x = number(rows.get(0), axis);
      for (int[] stretch : stretches(rows)) {
        for (int i = stretch[0]; i < stretch[1]; i++) {
          double h = time(rows, i + 1) - time(rows, i);
          PolynomialFunction speed = local(rows, stretch, i, "a" + axis).antiDerivative();
          double shift = speed.antiDerivative().value(h);
          x += v * h + shift;
          v += speed.value(h);
          CSVRecord next = rows.get(i + 1);
          assertEquals(number(next, axis), x, INTEGRATED, axis + " at " + next.get("time"));
          assertEquals(number(next, "v" + axis), v, INTEGRATED, "v at " + next.get("time"));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void angularVelocityIntegratedGivesTheRotation(StudyResult result) {
    List<CSVRecord> rows = rows(SampleCsv.text(result, STEP));
    Quaternion q = rotation(rows.get(0));
    Vec3 w = Vec3.ZERO;
    for (int[] stretch : stretches(rows)) {
      for (int i = stretch[0]; i < stretch[1]; i++) {
        double h = time(rows, i + 1) - time(rows, i);
        Vec3 turn = integral(rows, stretch, i, "w", h);
        w = w.plus(integral(rows, stretch, i, "al", h));
        // A step turns by under 0.01 rad: the order of turns inside it matters to 1e-10.
        double angle = turn.norm();
        if (angle > 0) {
          q = Quaternion.ofAxisAngle(turn.unit(), angle).times(q);
        }
        assertEquals(0, q.angleTo(rotation(rows.get(i + 1))), INTEGRATED);
        assertEquals(0, w.minus(vector(rows.get(i + 1), "w")).norm(), INTEGRATED);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void isATableAsRfc4180Says(StudyResult result) {
    String text = SampleCsv.text(result, STEP);
    assertTrue(text.endsWith("\r\n"));
    assertEquals(text.length() - text.replace("\n", "").length(), text.split("\r\n").length);
    int columns = text.substring(0, text.indexOf("\r\n")).split(",").length;
    for (CSVRecord row : rows(text)) {
      assertEquals(columns, row.size());
    }
    assertFalse(text.contains("NaN"));
  }

  @ParameterizedTest
  @MethodSource("results")
  void hasTwoRowsWherePiecesMeetAndOneEachStep(StudyResult result) {
    List<CSVRecord> rows = rows(SampleCsv.text(result, STEP));
    var pieces = result.motion().pieces();
    int twins = 0;
    for (int i = 1; i < rows.size(); i++) {
      double gap = time(rows, i) - time(rows, i - 1);
      assertTrue(gap >= 0 && gap <= STEP * (1 + PROMISED), "gap " + gap);
      twins += gap == 0 ? 1 : 0;
    }
    assertEquals(pieces.size() - 1, twins);
    assertEquals(0, time(rows, 0));
    assertEquals(result.motion().duration(), time(rows, rows.size() - 1));
  }

  @ParameterizedTest
  @MethodSource("results")
  void factorStandsWhereThePartIsHeldAndIsNeverBelowTheResult(StudyResult result) {
    double least = Double.POSITIVE_INFINITY;
    double slowest = Double.POSITIVE_INFINITY;
    for (CSVRecord row : rows(SampleCsv.text(result, STEP))) {
      double time = number(row, "time");
      boolean inside = time > result.motion().heldFrom() && time < result.motion().heldTo();
      boolean outside = time < result.motion().heldFrom() || time > result.motion().heldTo();
      for (String column : HOLD) {
        if (inside || outside) {
          // The patch of no limit has no name.
          boolean mayBeEmpty = column.equals("patch") && row.get("mode").equals("no limit");
          assertEquals(outside, row.get(column).isEmpty() && !mayBeEmpty, column + " " + time);
        }
      }
      if (!row.get("factor").isEmpty()) {
        least = Math.min(least, number(row, "factor"));
        slowest = Math.min(slowest, number(row, "speedHeadroom"));
      }
    }
    assertTrue(least >= result.factor() * (1 - PROMISED));
    assertTrue(least <= result.factor() * (1 + PROMISED));
    assertTrue(slowest >= result.speedHeadroom() * (1 - PROMISED));
  }

  @Test
  void namesWithCommasAndQuotesComeBack() {
    LoadedScene cartons = DemoScenes.read("cartons", Map.of());
    StudyResult result = HoldStudy.run(cartons.scene(), 2);
    List<String> patches =
        rows(SampleCsv.text(result, 5e-3)).stream().map(r -> r.get("patch")).distinct().toList();
    assertTrue(patches.contains("cup 2,2"), patches.toString());
  }

  /**
   * Polynomial through the rows around a step, as many as the stretch has up to 6: inside a blend
   * of 60 mm acceleration bends so much that 4 rows of 1 ms are not enough for 1e-6.
   */
  private static PolynomialFunction local(
      List<CSVRecord> rows, int[] stretch, int i, String column) {
    int count = Math.min(6, stretch[1] - stretch[0] + 1);
    int first = Math.max(stretch[0], Math.min(i - 2, stretch[1] - count + 1));
    double[] t = new double[count];
    double[] y = new double[count];
    for (int k = 0; k < count; k++) {
      t[k] = time(rows, first + k) - time(rows, i);
      y[k] = number(rows.get(first + k), column);
    }
    return new PolynomialFunction(new PolynomialFunctionLagrangeForm(t, y).getCoefficients());
  }

  private static Vec3 integral(
      List<CSVRecord> rows, int[] stretch, int i, String column, double h) {
    return new Vec3(
        local(rows, stretch, i, column + "x").antiDerivative().value(h),
        local(rows, stretch, i, column + "y").antiDerivative().value(h),
        local(rows, stretch, i, column + "z").antiDerivative().value(h));
  }

  /** First and last row of each smooth stretch: it ends where two rows have the same time. */
  private static List<int[]> stretches(List<CSVRecord> rows) {
    List<int[]> stretches = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= rows.size(); i++) {
      if (i == rows.size() || time(rows, i) == time(rows, i - 1)) {
        stretches.add(new int[] {first, i - 1});
        first = i;
      }
    }
    return stretches;
  }

  private static Quaternion rotation(CSVRecord row) {
    return new Quaternion(
        number(row, "qw"), number(row, "qx"), number(row, "qy"), number(row, "qz"));
  }

  private static Vec3 vector(CSVRecord row, String column) {
    return new Vec3(
        number(row, column + "x"), number(row, column + "y"), number(row, column + "z"));
  }

  private static double time(List<CSVRecord> rows, int i) {
    return number(rows.get(i), "time");
  }

  private static double number(CSVRecord row, String column) {
    String text = row.get(column);
    return text.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
  }

  private static List<CSVRecord> rows(String text) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
