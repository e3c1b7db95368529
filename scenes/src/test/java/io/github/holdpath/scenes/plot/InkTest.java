package io.github.holdpath.scenes.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.timelaw.LawKind;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Curves can be seen on their ground and told apart without colour. */
class InkTest {
  /**
   * Least contrast of a line with its ground, for graphics: W3C, Web Content Accessibility
   * Guidelines 2.1 (from memory).
   */
  private static final double LEAST_CONTRAST = 3;

  /** Relative luminance of sRGB, by the same source. */
  private static double luminance(String colour) {
    double[] share = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double c = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += share[i] * (c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  @ParameterizedTest
  @EnumSource
  void standsOutFromTheGround(Ink ink) {
    double contrast = (luminance(Svg.GROUND) + 0.05) / (luminance(ink.colour()) + 0.05);
    assertTrue(contrast >= LEAST_CONTRAST, ink + " has " + contrast);
  }

  @Test
  void lawsDifferInTheirDashesAlone() {
    long dashes =
        Arrays.stream(LawKind.values())
            .map(law -> Ink.of(law).stroke(1).replace(Ink.of(law).colour(), ""))
            .distinct()
            .count();
    assertEquals(LawKind.values().length, dashes);
  }
}
