package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FlangePatternTest {
  @Test
  void readsADesignation() {
    FlangePattern pattern = FlangePattern.parse("ISO 9409-1-50-4-M6").orElseThrow();
    assertEquals(new FlangePattern(0.05, 4, 0.006), pattern);
    assertEquals(pattern, FlangePattern.parse(" iso9409-1 - 50-4-m6").orElseThrow());
    assertEquals(pattern, FlangePattern.parse("50-4-M6").orElseThrow());
    assertEquals(0.0315, FlangePattern.parse("31,5-4-M5").orElseThrow().pitchCircle(), 1e-15);
  }

  @Test
  void commonOnesReadAndWriteBack() {
    for (String designation : FlangePattern.COMMON) {
      assertEquals(designation, FlangePattern.parse(designation).orElseThrow().designation());
    }
  }

  @Test
  void refusesWhatIsNone() {
    for (String text : new String[] {"", "50-4", "ISO 9409-2-50-4-M6", "50-1-M6", "10-8-M6"}) {
      assertTrue(FlangePattern.parse(text).isEmpty(), text);
    }
    assertThrows(IllegalArgumentException.class, () -> new FlangePattern(0.05, 40, 0.006));
    assertThrows(IllegalArgumentException.class, () -> new FlangePattern(0.05, 1, 0.006));
  }
}
