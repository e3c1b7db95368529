package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.Reference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Bodies on cups against an independent program, {@code reference/README.md}. */
class SixAxesValidationTest {
  /** Tolerance that the file states for peaks. */
  private static final double PEAK = 1e-4;

  /** Eleven printed digits; both programs work in doubles. */
  private static final double FREQUENCY = 1e-9;

  static Stream<JsonNode> bodies() {
    return SwingCases.bodies();
  }

  @Test
  void allFourAreThere() {
    assertEquals(4, bodies().count());
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void frequenciesAgree(JsonNode c) {
    agrees(c, "frequencies", SwingCases.frequencies(c), FREQUENCY);
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void peaksAgree(JsonNode c) {
    agrees(c, "peak", SwingCases.peaks(c), PEAK);
  }

  private static void agrees(JsonNode c, String key, double[] ours, double tolerance) {
    double[] expected = Reference.numbers(c.get("expect").get(key));
    for (int k = 0; k < expected.length; k++) {
      assertEquals(expected[k], ours[k], tolerance * expected[k], key + " " + k);
    }
  }
}
