package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.Reference;
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

  private static final int SAMPLES = 4000;

  static Stream<JsonNode> masses() {
    return Reference.rows("grip-dynamics.json", "oneMass");
  }

  @Test
  void allNineAreThere() {
    assertEquals(9, masses().count());
  }

  @ParameterizedTest
  @MethodSource("masses")
  void peakAndResidualAgree(JsonNode c) {
    double[] knots = Reference.numbers(c.get("knots"));
    Oscillator mass =
        new Oscillator(2 * Math.PI * c.get("frequency").doubleValue(), c.get("zeta").doubleValue());
    mass.rest(0);
    double peak = 0;
    double last = 0;
    for (int i = 0; i + 1 < knots.length; i++) {
      double[] a = Reference.numbers(c.get("accel").get(i));
      double length = knots[i + 1] - knots[i];
      peak = Math.max(peak, crest(mass, length, a[0], a[1], 0));
      mass.leave();
      last = a[1];
    }
    double residual = crest(mass, 1 / c.get("frequency").doubleValue(), last, last, last);
    assertEquals(
        c.get("expect").get("peak").doubleValue(), Math.max(peak, tail(residual, c)), FILE * peak);
    assertEquals(c.get("expect").get("residual").doubleValue(), residual, FILE * peak);
  }

  /** The peak may come after the last knot, where the last acceleration goes on. */
  private static double tail(double residual, JsonNode c) {
    JsonNode accel = c.get("accel");
    double last = accel.get(accel.size() - 1).get(1).doubleValue();
    return last == 0 ? residual : 0;
  }

  private static double crest(Oscillator mass, double length, double from, double to, double less) {
    mass.enter(length, new double[] {from, to - from, 0, 0, 0, 0});
    return Crest.of(s -> Math.abs(mass.at(s) - less), SAMPLES);
  }

  /** A step 2; a ramp {@code 1 + |sin x|/x}, {@code x = pi f tr}; with 5 % of damping less. */
  @ParameterizedTest
  @CsvSource({"0, 0, 2", "0, 0.06, 1.73407", "0.05, 0, 1.85876", "0.05, 0.06, 1.63054"})
  void stepAndRampOvershootAsTextbooksSay(double zeta, double ramp, double expected) {
    Oscillator mass = new Oscillator(2 * Math.PI * 7, zeta);
    mass.rest(0);
    double peak = 0;
    if (ramp > 0) {
      peak = crest(mass, ramp, 0, 1, 0);
      mass.leave();
    }
    peak = Math.max(peak, crest(mass, 0.3, 1, 1, 0));
    assertEquals(expected, peak, PRINTED);
  }

  /**
   * What is left of a pulse of 5 m/s^2 for 0.22 s at 7 Hz: {@code 2 a |sin(pi f ta)|}; of one each
   * way {@code 4 a sin^2(pi f ta)}; with ramps of 0.05 s {@code |sin(pi f tj)|/(pi f tj)} of that.
   */
  @ParameterizedTest
  @CsvSource({"pulse, 9.92115", "pair, 19.6858", "s-shaped, 15.9521"})
  void whatIsLeftAfterAPulseIsThatOfTheFormula(String kind, double expected) {
    double[][] stretches =
        switch (kind) {
          case "pulse" -> new double[][] {{0.22, 5, 5}};
          case "pair" -> new double[][] {{0.22, 5, 5}, {0.22, -5, -5}};
          default ->
              new double[][] {
                {0.05, 0, 5}, {0.17, 5, 5}, {0.05, 5, -5}, {0.17, -5, -5}, {0.05, -5, 0}
              };
        };
    Oscillator mass = new Oscillator(2 * Math.PI * 7, 0);
    mass.rest(0);
    for (double[] s : stretches) {
      mass.enter(s[0], new double[] {s[1], s[2] - s[1], 0, 0, 0, 0});
      mass.leave();
    }
    // Six printed digits of a number above 10.
    assertEquals(expected, crest(mass, 1, 0, 0, 0), 1e-4);
  }
}
