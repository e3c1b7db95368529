package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.grip.PullCurve.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class PullCurveTest {
  /** A few roots and quotients. */
  private static final double RELATIVE = 1e-13;

  private static final double MM = 1e-3;

  private static final PullCurve SHEET =
      new PullCurve(
          List.of(
              row(0.2, 1, 120),
              row(0, 1, 170),
              row(0, 3, 520),
              row(0.2, 3, 330),
              row(0.5, 3, 180)));

  private static Row row(double gap, double thickness, double pull) {
    return new Row(gap * MM, thickness * MM, pull);
  }

  private static double pull(PullCurve curve, double gap, double thickness) {
    return curve.pull(gap * MM, thickness * MM);
  }

  @Test
  void givesEveryRowBack() {
    for (Row r : SHEET.rows()) {
      assertEquals(r.pull(), SHEET.pull(r.gap(), r.thickness()), RELATIVE * r.pull());
    }
  }

  /** Half way over the gap: 1/(mean of 1/sqrt(P))^2, by hand. */
  @Test
  void followsTheFluxOverTheGap() {
    double expected = Math.pow(2 / (1 / Math.sqrt(170) + 1 / Math.sqrt(120)), 2);
    assertEquals(141.75, expected, 0.005);
    assertEquals(expected, pull(SHEET, 0.1, 1), RELATIVE * expected);
  }

  /** Half way over the thickness: (mean of sqrt(P))^2, by hand. */
  @Test
  void followsTheFluxOverTheThickness() {
    double expected = Math.pow((Math.sqrt(170) + Math.sqrt(520)) / 2, 2);
    assertEquals(321.16, expected, 0.005);
    assertEquals(expected, pull(SHEET, 0, 2), RELATIVE * expected);
  }

  @Test
  void extrapolatesNothingUpwards() {
    assertEquals(520, pull(SHEET, 0, 30), RELATIVE * 520);
    PullCurve painted = new PullCurve(List.of(row(0.1, 1, 100), row(0.3, 1, 60)));
    assertEquals(100, pull(painted, 0.02, 1), RELATIVE * 100);
    assertEquals(100, pull(painted, 0, 4), RELATIVE * 100);
  }

  @Test
  void refusesWhatTheRowsDoNotCover() {
    assertEquals(MM, SHEET.leastThickness());
    assertEquals(0.5 * MM, SHEET.mostGap(3 * MM));
    assertEquals(0.5 * MM, SHEET.mostGap(30 * MM));
    assertEquals(0.2 * MM, SHEET.mostGap(2 * MM), "the thinner rows end first");
    Expect.refused("do not cover", () -> pull(SHEET, 0.3, 2));
    Expect.refused("do not cover", () -> pull(SHEET, 0.1, 0.9));
    Expect.refused("do not cover", () -> pull(SHEET, Double.NaN, 2));
  }

  /** One gap in a row with the rest of the circuit: exact. Exponential: never above. */
  @Test
  void neverPromisesMoreThanTheLawsOfTheTextbook() {
    DoubleBinaryOperator oneGap = (g, t) -> 50 / Math.pow(g + 0.4, 2);
    DoubleBinaryOperator manyPoles = (g, t) -> 500 * Math.exp(-g / 0.3);
    DoubleBinaryOperator fullSheet = (g, t) -> 60 * t * t;
    DoubleBinaryOperator thickSheet = (g, t) -> 500 * Math.pow(Math.tanh(t / 2), 2);
    for (double at = 0; at <= 1; at += 0.05) {
      assertEquals(1, overGap(oneGap, at), RELATIVE * 10);
      assertTrue(overGap(manyPoles, at) <= 1 + RELATIVE);
      assertEquals(1, overThickness(fullSheet, 1 + at), RELATIVE * 10);
      assertTrue(overThickness(thickSheet, 1 + at) <= 1 + RELATIVE);
    }
    assertTrue(overGap(manyPoles, 0.25) < 0.95);
    assertTrue(overThickness(thickSheet, 1.5) < 0.99);
  }

  private static double overGap(DoubleBinaryOperator law, double gap) {
    List<Row> rows = new ArrayList<>();
    for (double g : new double[] {0, 0.5, 1}) {
      rows.add(row(g, 1, law.applyAsDouble(g, 1)));
    }
    return pull(new PullCurve(rows), gap, 1) / law.applyAsDouble(gap, 1);
  }

  private static double overThickness(DoubleBinaryOperator law, double thickness) {
    List<Row> rows = new ArrayList<>();
    for (double t : new double[] {1, 2}) {
      rows.add(row(0, t, law.applyAsDouble(0, t)));
    }
    return pull(new PullCurve(rows), 0, thickness) / law.applyAsDouble(0, thickness);
  }

  @Test
  void pullFallsWithTheGapAndGrowsWithTheSheet() {
    for (double t = 1; t < 3.5; t += 0.1) {
      for (double g = 0; g < 0.19; g += 0.01) {
        assertTrue(pull(SHEET, g + 0.01, t) < pull(SHEET, g, t));
        assertTrue(pull(SHEET, g, t + 0.1) >= pull(SHEET, g, t));
      }
    }
  }

  @Test
  void findsRowsThatContradictEachOther() {
    assertTrue(PullCurve.contradiction(SHEET.rows()).isEmpty());
    assertEquals(
        new PullCurve.Contradiction(1, 0),
        PullCurve.contradiction(List.of(row(0, 1, 100), row(0, 1, 100))).orElseThrow());
    assertEquals(
        new PullCurve.Contradiction(1, 0),
        PullCurve.contradiction(List.of(row(0, 1, 100), row(0.1, 1, 101))).orElseThrow());
    assertEquals(
        new PullCurve.Contradiction(0, 1),
        PullCurve.contradiction(List.of(row(0, 1, 100), row(0, 2, 90))).orElseThrow());
    Expect.refused("rows that agree", () -> new PullCurve(List.of()));
    Expect.refused("rows that agree", () -> new PullCurve(List.of(row(0, 1, 9), row(0, 2, 8))));
    Expect.refused("no magnet has the row", () -> new PullCurve(List.of(row(0, 1, 0))));
    Expect.refused("no magnet has the row", () -> new PullCurve(List.of(row(-1, 1, 9))));
  }
}
