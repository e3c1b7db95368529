package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * Source: reference/drawn-states.csv, 700 moves of one axis and 100 of seven axes with the
 * durations that an open planner of another language gives them; see the note beside the file.
 */
class DrawnStatesValidationTest {
  /** Both find roots to rounding: seen 1.4e-15. */
  private static final double DURATION = 1e-12;

  private static final int AXES = 7;

  @Test
  void oneAxisTakesTheSameTime() throws IOException {
    AxisPlanner planner = new AxisPlanner();
    List<CSVRecord> rows = rows();
    assertEquals(700, rows.size());
    for (CSVRecord row : rows) {
      planner.plan(
          number(row, "p0"),
          number(row, "v0"),
          number(row, "a0"),
          number(row, "p1"),
          number(row, "v1"),
          number(row, "a1"),
          limits(row));
      double expected = number(row, "duration");
      assertEquals(expected, planner.duration(), DURATION * expected, row.toString());
    }
  }

  @Test
  void sevenAxesTogetherTakeTheSameTime() throws IOException {
    AxesPlanner planner = new AxesPlanner(AXES);
    List<CSVRecord> rows = rows();
    for (int g = 0; g < rows.size(); g += AXES) {
      List<AxisLimits> limits = new ArrayList<>();
      double[] start = new double[3 * AXES];
      double[] end = new double[3 * AXES];
      for (int k = 0; k < AXES; k++) {
        CSVRecord row = rows.get(g + k);
        limits.add(limits(row));
        put(row, "0", start, 3 * k);
        put(row, "1", end, 3 * k);
      }
      planner.plan(start, end, limits);
      double expected = number(rows.get(g), "together");
      assertEquals(expected, planner.duration(), DURATION * expected, rows.get(g).get("group"));
    }
  }

  private static void put(CSVRecord row, String which, double[] state, int at) {
    state[at] = number(row, "p" + which);
    state[at + 1] = number(row, "v" + which);
    state[at + 2] = number(row, "a" + which);
  }

  private static AxisLimits limits(CSVRecord row) {
    return new AxisLimits(
        number(row, "vmin"),
        number(row, "vmax"),
        number(row, "amin"),
        number(row, "amax"),
        number(row, "jmax"));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static List<CSVRecord> rows() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(
                DrawnStatesValidationTest.class.getResourceAsStream("/reference/drawn-states.csv")),
            StandardCharsets.UTF_8)) {
      return format.parse(in).getRecords();
    }
  }
}
