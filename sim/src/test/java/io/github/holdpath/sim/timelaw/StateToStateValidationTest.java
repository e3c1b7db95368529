package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
 * Source: reference/state-to-state.csv, 63 moves worked out apart from this code by going through
 * all patterns, with a lower bound by linear programs; see the note beside the file.
 */
class StateToStateValidationTest {
  /** The reference is right to 1e-12; the planner's roots are found to rounding. */
  private static final double DURATION = 1e-11;

  @Test
  void thereAreAllRows() throws IOException {
    assertEquals(63, rows().size());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isAsFastAsTheReference(CSVRecord row) {
    AxisState from = new AxisState(number(row, "p0"), number(row, "v0"), number(row, "a0"));
    AxisState to = new AxisState(number(row, "p1"), number(row, "v1"), number(row, "a1"));
    AxisLimits limits =
        new AxisLimits(
            number(row, "vmin"),
            number(row, "vmax"),
            number(row, "amin"),
            number(row, "amax"),
            number(row, "jmax"));
    AxisMove move = StateToState.plan(from, to, limits);
    double expected = number(row, "duration");
    assertEquals(expected, move.duration(), DURATION * (1 + expected), row.get("case"));
    // Printed to twelve decimals, also where the whole is longer.
    assertEquals(number(row, "recovery_time"), move.recovery(), 1e-9, row.get("case"));
    String bound = row.get("lp_lower_bound");
    assertTrue(bound.isEmpty() || move.duration() >= Double.parseDouble(bound), row.get("case"));
    StateToStateTest.assertSound(move, from, to, limits, row.get("case"));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static List<CSVRecord> rows() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(
                StateToStateValidationTest.class.getResourceAsStream(
                    "/reference/state-to-state.csv")),
            StandardCharsets.UTF_8)) {
      return format.parse(in).getRecords();
    }
  }
}
