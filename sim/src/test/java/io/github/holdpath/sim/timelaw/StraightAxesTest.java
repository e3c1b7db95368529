package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class StraightAxesTest {
  @Test
  void everyAxisKeepsItsOwnLimitsInItsDirection() {
    AxisLimits slow = new AxisLimits(-0.5, 1, -3, 2, 20);
    AxisLimits quick = new AxisLimits(-4, 4, -30, 30, 900);
    LawProfile law =
        StraightAxes.plan(
            LawKind.S_CURVE, new double[] {1, 0}, new double[] {-1, 2}, List.of(slow, quick));
    // Backwards the slow axis has 0.5, 3 and 2; over a way of 2 that halves.
    LawLimits expected = new LawLimits(0.25, 1.5, 1, 10);
    assertEquals(RestToRest.plan(LawKind.S_CURVE, expected, 1).duration(), law.duration());
  }

  @Test
  void anAxisThatStaysBoundsNothing() {
    AxisLimits slow = new AxisLimits(-0.1, 0.1, -0.1, 0.1, 0.1);
    AxisLimits quick = new AxisLimits(-4, 4, -30, 20, 900);
    LawProfile law =
        StraightAxes.plan(
            LawKind.S_CURVE, new double[] {1, 0}, new double[] {1, 2}, List.of(slow, quick));
    LawLimits expected = new LawLimits(2, 10, 15, 450);
    assertEquals(RestToRest.plan(LawKind.S_CURVE, expected, 1).duration(), law.duration());
  }

  @Test
  void refusesWhatDoesNotFit() {
    double[] none = {0};
    double[] two = {0, 1};
    List<AxisLimits> one = List.of(new AxisLimits(-1, 1, -1, 1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> StraightAxes.plan(LawKind.S_CURVE, none, none, one));
    assertThrows(
        IllegalArgumentException.class, () -> StraightAxes.plan(LawKind.S_CURVE, none, two, one));
  }
}
