package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * One mass on a spring against an independent program ({@code reference/README.md}) and against the
 * closed forms of any text on vibration.
 */
class OscillatorValidationTest {
  /** Tolerance that the file states. */
  private static final double FILE = 1e-5;

  /** Six printed digits of the closed forms. */
  private static final double PRINTED = 5e-6;

  static Stream<JsonNode> masses() {
    return SwingCases.masses();
  }

  @Test
  void allNineAreThere() {
    assertEquals(9, masses().count());
  }

  @ParameterizedTest
  @MethodSource("masses")
  void peakAndResidualAgree(JsonNode c) {
    double[] ours = SwingCases.peakAndResidual(c);
    double peak = c.get("expect").get("peak").doubleValue();
    assertEquals(peak, ours[0], FILE * peak);
    assertEquals(c.get("expect").get("residual").doubleValue(), ours[1], FILE * peak);
  }

  /** A step 2; a ramp {@code 1 + |sin x|/x}, {@code x = pi f tr}; with 5 % of damping less. */
  @ParameterizedTest
  @CsvSource({"0, 0, 2", "0, 0.06, 1.73407", "0.05, 0, 1.85876", "0.05, 0.06, 1.63054"})
  void stepAndRampOvershootAsTextbooksSay(double zeta, double ramp, double expected) {
    assertEquals(expected, SwingCases.overshoot(zeta, ramp), PRINTED);
  }

  /** A pulse that lasts a whole period leaves nothing. */
  @Test
  void aPulseOfOnePeriodLeavesNothing() {
    assertEquals(0, SwingCases.left(new double[] {1.0 / 7, 5, 5}), PRINTED);
  }
}
