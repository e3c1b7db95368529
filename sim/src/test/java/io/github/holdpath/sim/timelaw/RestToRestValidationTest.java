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
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Source: reference/rest-to-rest.csv, 36 moves worked out with 50 digits in closed form and by
 * bisection, apart from this code; see the note beside the file.
 */
class RestToRestValidationTest {
  /** Algebra in doubles against values printed to 16 digits. */
  private static final double RELATIVE = 1e-12;

  @Test
  void thereAreAllRows() throws IOException {
    assertEquals(36, rows().size());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithReference(CSVRecord row) {
    LawProfile p = plan(row);
    near(row, "duration", p.duration());
    near(row, "v_peak", p.peakSpeed());
    near(row, "a_peak_acc", p.peakAcceleration());
    near(row, "a_peak_dec", p.peakDeceleration());
    near(row, "t_acc", p.accelerationTime());
    near(row, "t_dec", p.decelerationTime());
    // A cruise of length zero has no digits of its own.
    double cruise = number(row, "t_cruise");
    assertEquals(cruise, p.cruiseTime(), RELATIVE * p.duration(), row.get("case"));
    assertEquals(row.get("regime"), p.regime(), row.get("case"));
  }

  private static LawProfile plan(CSVRecord row) {
    boolean trapezoid = row.get("jmax").isEmpty();
    LawLimits limits =
        new LawLimits(
            number(row, "vmax"),
            number(row, "amax_acc"),
            number(row, "amax_dec"),
            trapezoid ? Double.POSITIVE_INFINITY : number(row, "jmax"));
    LawKind law = trapezoid ? LawKind.TRAPEZOID : LawKind.S_CURVE;
    return RestToRest.plan(law, limits, number(row, "distance"));
  }

  private static void near(CSVRecord row, String column, double actual) {
    double expected = number(row, column);
    assertEquals(expected, actual, RELATIVE * expected, row.get("case") + " " + column);
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static List<CSVRecord> rows() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(
                RestToRestValidationTest.class.getResourceAsStream("/reference/rest-to-rest.csv")),
            StandardCharsets.UTF_8)) {
      return format.parse(in).getRecords();
    }
  }
}
