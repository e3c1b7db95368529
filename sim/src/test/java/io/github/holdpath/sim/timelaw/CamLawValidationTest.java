package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Source: reference/cam-laws.csv and cam-law-samples.csv, worked out with 40 digits apart from this
 * code; see the note beside the files.
 */
class CamLawValidationTest {
  /** Algebra in doubles against values printed to 15 digits, as a part of the law's peak. */
  private static final double RELATIVE = 1e-14;

  private static final double INF = Double.POSITIVE_INFINITY;

  private static LawKind law(CSVRecord row) {
    return switch (row.get("law")) {
      case "cycloidal" -> LawKind.CYCLOIDAL;
      case "modified_sine" -> LawKind.MODIFIED_SINE;
      case "poly_345" -> LawKind.QUINTIC;
      default -> throw new IllegalArgumentException(row.get("law"));
    };
  }

  @Test
  void thereAreAllRows() throws IOException {
    assertEquals(3, laws().size());
    assertEquals(39, samples().size());
  }

  /** Each factor by the limit that it turns into a duration. */
  @ParameterizedTest
  @MethodSource("laws")
  void hasThePeakFactorsOfTheTable(CSVRecord row) {
    LawKind law = law(row);
    double v = number(row, "Cv");
    double a = number(row, "Ca");
    double j = number(row, "Cj");
    // Stroke 3 within the law's own peaks for a duration of 2.
    LawProfile bySpeed = RestToRest.plan(law, new LawLimits(v * 3 / 2, INF, INF, INF), 3);
    LawProfile byAcceleration = RestToRest.plan(law, new LawLimits(INF, INF, a * 3 / 4, INF), 3);
    LawProfile byJerk = RestToRest.plan(law, new LawLimits(INF, INF, INF, j * 3 / 8), 3);
    assertEquals("speed", bySpeed.regime());
    assertEquals("acceleration", byAcceleration.regime());
    assertEquals("jerk", byJerk.regime());
    for (LawProfile p : List.of(bySpeed, byAcceleration, byJerk)) {
      assertEquals(2, p.duration(), 2 * RELATIVE);
      assertEquals(v * 3 / 2, p.peakSpeed(), 10 * RELATIVE);
      assertEquals(a * 3 / 4, p.peakAcceleration(), 10 * RELATIVE);
      assertEquals(a * 3 / 4, p.peakDeceleration(), 10 * RELATIVE);
      assertEquals(j * 3 / 8, p.peakJerk(), 100 * RELATIVE);
    }
    assertEquals(number(row, "jerk_at_0"), unit(row).phaseAt(0).jerkAt(0), j * RELATIVE);
    assertEquals(number(row, "jerk_at_half"), unit(row).phaseAt(0.5).jerkAt(0.5), j * RELATIVE);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void agreesWithTheSamples(CSVRecord row) {
    LawProfile p = unit(row);
    double tau = number(row, "tau");
    LawPhase phase = p.phaseAt(tau);
    assertEquals(number(row, "s"), phase.positionAt(tau), RELATIVE);
    assertEquals(number(row, "s1"), phase.speedAt(tau), p.peakSpeed() * RELATIVE);
    assertEquals(number(row, "s2"), phase.accelerationAt(tau), p.peakAcceleration() * RELATIVE);
    assertEquals(number(row, "s3"), phase.jerkAt(tau), p.peakJerk() * RELATIVE);
  }

  /** Source: the published tables named in the note, to their printed digits; from memory. */
  @ParameterizedTest
  @CsvSource({
    "MODIFIED_SINE, 1.760, 5.528, 69.47",
    "CYCLOIDAL, 2.000, 6.283, 39.48",
    "QUINTIC, 1.875, 5.774, 60.0"
  })
  void agreesWithThePublishedTable(LawKind law, double v, double a, double j) {
    LawProfile p = RestToRest.plan(law, new LawLimits(v, INF, INF, INF), 1);
    assertEquals(1, p.duration(), 0.0005 / v);
    CamLaw cam = CamLaw.of(law).orElseThrow();
    assertEquals(v, cam.speed(), 0.0005);
    assertEquals(a, cam.acceleration(), 0.0005);
    assertEquals(j, cam.jerk(), law == LawKind.QUINTIC ? 0.05 : 0.005);
  }

  /** The law of a row with stroke 1 and duration 1. */
  private static LawProfile unit(CSVRecord row) {
    LawKind law = law(row);
    double v = CamLaw.of(law).orElseThrow().speed();
    LawProfile p = RestToRest.plan(law, new LawLimits(v, INF, INF, INF), 1);
    assertEquals(1, p.duration());
    return p;
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static List<CSVRecord> laws() throws IOException {
    return rows("cam-laws.csv");
  }

  static List<CSVRecord> samples() throws IOException {
    return rows("cam-law-samples.csv");
  }

  private static List<CSVRecord> rows(String file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(
                CamLawValidationTest.class.getResourceAsStream("/reference/" + file)),
            StandardCharsets.UTF_8)) {
      return format.parse(in).getRecords();
    }
  }
}
