package io.github.holdpath.scenes.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.sim.timelaw.LawKind;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the page says of the laws in words. */
class LawsTest {
  private static final double ROUNDING = 1e-12;

  /**
   * Source: tables of laws between two dwells in VDI 2143 part 1 and R. L. Norton, Cam Design and
   * Manufacturing Handbook, to the digits printed there (from memory).
   */
  @Test
  void peakFactorsAreThoseOfTheHandbooks() {
    Map<LawKind, double[]> printed =
        Map.of(
            LawKind.QUINTIC, new double[] {1.875, 5.774, 60.0},
            LawKind.MODIFIED_SINE, new double[] {1.760, 5.528, 69.47},
            LawKind.CYCLOIDAL, new double[] {2.000, 6.283, 39.48});
    double[] halfDigit = {0.0005, 0.0005, 0.005};
    printed.forEach(
        (law, factors) -> {
          for (int i = 0; i < 3; i++) {
            assertEquals(factors[i], Laws.peaks(law)[i], halfDigit[i], law.label());
          }
        });
  }

  @Test
  void lawsThatAreComparedTakeOneSecond() {
    for (Laws.Variant v : Laws.inOneSecond()) {
      assertEquals(1, v.profile().duration(), ROUNDING, v.name());
      assertEquals(1, v.profile().distance(), ROUNDING, v.name());
    }
  }
}
