package io.github.holdpath.viewer.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimeAxisTest {
  private final TimeAxis axis = new TimeAxis(100, 900, 4);

  @Test
  void aPlaceAndItsTimeBelongTogether() {
    assertEquals(100, axis.x(0), 0);
    assertEquals(900, axis.x(4), 0);
    for (double t : new double[] {0, 0.37, 2, 3.999}) {
      assertEquals(t, axis.time(axis.x(t)), 1e-12);
    }
  }

  @Test
  void outsideTheLineItsEndsAreMeant() {
    assertEquals(0, axis.time(-20), 0);
    assertEquals(4, axis.time(5000), 0);
    assertEquals(0, new TimeAxis(100, 90, 4).time(95), 0);
    assertEquals(100, new TimeAxis(100, 900, 0).x(0), 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.013, 0.7, 4, 4.539, 61, 3600})
  void ticksAreRoundAndNotTooMany(double end) {
    List<Double> ticks = TimeAxis.ticks(end, 10);
    assertTrue(ticks.size() >= 4 && ticks.size() <= 11, ticks.toString());
    assertTrue(ticks.get(ticks.size() - 1) <= end * (1 + 1e-9));
    double step = ticks.get(1);
    double first = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
    assertTrue(
        Math.abs(first - 1) < 1e-9 || Math.abs(first - 2) < 1e-9 || Math.abs(first - 5) < 1e-9,
        ticks.toString());
  }

  @Test
  void nothingHasOneTick() {
    assertEquals(List.of(0.0), TimeAxis.ticks(0, 10));
  }

  @Test
  void aMarginIsNeverRoundedUpToOne() {
    assertEquals("0.99", Figures.margin(0.9999));
    assertEquals("1.00", Figures.margin(1));
    assertEquals("0.76", Figures.margin(0.7555));
    assertEquals("100 or more", Figures.margin(1e6));
  }

  @Test
  void figuresHaveNoIdleZeros() {
    assertEquals("2", Figures.figure(2));
    assertEquals("0.3", Figures.figure(0.3));
    assertEquals("0.012", Figures.figure(0.012));
    assertEquals("120", Figures.figure(120.4));
    assertEquals("10", Figures.tick(10));
  }
}
