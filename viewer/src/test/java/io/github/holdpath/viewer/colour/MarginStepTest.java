package io.github.holdpath.viewer.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarginStepTest {
  @ParameterizedTest
  @CsvSource({
    "0,7F1D00",
    "0.75,B33A00",
    "0.9,D55E00",
    "1,3D9BD6",
    "1.1,1B7FBE",
    "1.25,00609A",
    "1.5,003E66"
  })
  void aBorderBelongsToTheStepAbove(double border, String rgb) {
    assertEquals(Integer.parseInt(rgb, 16), MarginStep.of(border).rgb());
    if (border > 0) {
      MarginStep below = MarginStep.of(Math.nextDown(border));
      assertEquals(MarginStep.of(border).ordinal() - 1, below.ordinal());
    }
  }

  @Test
  void passesFromOneExactly() {
    assertTrue(MarginStep.of(1).passes());
    assertFalse(MarginStep.of(Math.nextDown(1.0)).passes());
  }

  @Test
  void takesAnyLargeMargin() {
    assertEquals(MarginStep.FAR_ABOVE, MarginStep.of(1e12));
    assertEquals(MarginStep.FAR_ABOVE, MarginStep.of(Double.POSITIVE_INFINITY));
  }

  @Test
  void refusesWhatIsNoMargin() {
    assertThrows(IllegalArgumentException.class, () -> MarginStep.of(-0.1));
    assertThrows(IllegalArgumentException.class, () -> MarginStep.of(Double.NaN));
  }
}
