package io.github.holdpath.viewer.colour;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Why image and timeline stay on light paper in the dark theme too. Contrast as in the Web Content
 * Accessibility Guidelines 2.1, relative luminance and contrast ratio (formulas from memory).
 */
class PaperTest {
  /** Panels of the dark theme, from memory. */
  private static final int DARK = 0x3C3F41;

  private static double luminance(int rgb) {
    double sum = 0;
    double[] weights = {0.2126, 0.7152, 0.0722};
    for (int k = 0; k < 3; k++) {
      double c = (rgb >> (16 - 8 * k) & 0xFF) / 255.0;
      sum += weights[k] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  private static double contrast(int a, int b) {
    double one = luminance(a);
    double other = luminance(b);
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }

  @ParameterizedTest
  @EnumSource(MarginStep.class)
  void everyMarginStandsOutFromPaper(MarginStep step) {
    assertTrue(
        contrast(step.rgb(), Tones.PAPER) > 2.5, step + " " + contrast(step.rgb(), Tones.PAPER));
  }

  @ParameterizedTest
  @EnumSource(
      value = MarginStep.class,
      names = {"FAR_BELOW", "FAR_ABOVE"})
  void theOuterOnesWouldBeLostOnADarkGround(MarginStep step) {
    assertTrue(contrast(step.rgb(), DARK) < 1.5, step + " " + contrast(step.rgb(), DARK));
  }
}
