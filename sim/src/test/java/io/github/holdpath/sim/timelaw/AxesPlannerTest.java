package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class AxesPlannerTest {
  private static final int DRAWS = 4000;
  private static final int AXES = 4;

  /** Two ways of planning one move; each finds its roots to rounding. */
  private static final double SAME = 1e-9;

  @Test
  void oneAxisAloneTakesItsLeastTime() {
    for (int i = 0; i < DRAWS; i++) {
      SplittableRandom random = new SplittableRandom(410_000 + i);
      Problem p = Problem.draw(random, 1, true);
      double least = StateToState.plan(p.from.get(0), p.to.get(0), p.limits.get(0)).duration();
      assertEquals(least, p.solve().duration(), SAME * (1 + least), "draw " + i + p);
    }
  }

  @Test
  void axesEndTogetherWithinTheirLimits() {
    int longer = 0;
    for (int i = 0; i < DRAWS; i++) {
      SplittableRandom random = new SplittableRandom(420_000 + i);
      Problem p = Problem.draw(random, AXES, true);
      AxesPlanner planner = p.solve();
      double least = 0;
      for (int k = 0; k < AXES; k++) {
        AxisMove move = planner.move(k);
        String what = "draw " + i + ", axis " + k + p;
        assertEquals(planner.duration(), move.duration(), SAME * (1 + move.duration()), what);
        StateToStateTest.assertSound(move, p.from.get(k), p.to.get(k), p.limits.get(k), what);
        double alone = StateToState.plan(p.from.get(k), p.to.get(k), p.limits.get(k)).duration();
        least = Math.max(least, alone);
      }
      assertTrue(planner.duration() >= least - SAME * (1 + least), "draw " + i);
      longer += planner.duration() > least * 1.001 ? 1 : 0;
    }
    // The longest of the least times is not always possible for the others.
    assertTrue(longer > 20 && longer < DRAWS / 2, "longer than the longest alone: " + longer);
  }

  @Test
  void toRestTheSlowestAxisDecides() {
    for (int i = 0; i < DRAWS; i++) {
      SplittableRandom random = new SplittableRandom(430_000 + i);
      Problem p = Problem.draw(random, AXES, false);
      AxesPlanner planner = p.solve();
      double least = 0;
      for (int k = 0; k < AXES; k++) {
        AxisMove alone = StateToState.plan(p.from.get(k), p.to.get(k), p.limits.get(k));
        least = Math.max(least, alone.duration());
      }
      assertEquals(least, planner.duration(), SAME * (1 + least), "draw " + i + p);
    }
  }

  @Test
  void refusesWhatDoesNotFit() {
    double[] none = {0};
    List<AxisLimits> one = List.of(new AxisLimits(-1, 1, -1, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new AxesPlanner(0));
    assertThrows(IllegalArgumentException.class, () -> new AxesPlanner(1).plan(none, none, one));
  }

  private record Problem(List<AxisState> from, List<AxisState> to, List<AxisLimits> limits) {
    static Problem draw(SplittableRandom random, int axes, boolean moving) {
      Problem p = new Problem(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
      for (int k = 0; k < axes; k++) {
        AxisLimits l = StateToStateTest.drawLimits(random);
        p.limits.add(l);
        p.from.add(StateToStateTest.drawState(random, l, 0));
        AxisState end = StateToStateTest.drawState(random, l, random.nextBoolean() ? 0.1 : 2);
        p.to.add(moving ? end : new AxisState(end.position(), 0, 0));
      }
      return p;
    }

    AxesPlanner solve() {
      AxesPlanner planner = new AxesPlanner(from.size());
      planner.plan(flat(from), flat(to), limits);
      return planner;
    }

    private static double[] flat(List<AxisState> states) {
      double[] flat = new double[3 * states.size()];
      for (int i = 0; i < states.size(); i++) {
        flat[3 * i] = states.get(i).position();
        flat[3 * i + 1] = states.get(i).speed();
        flat[3 * i + 2] = states.get(i).acceleration();
      }
      return flat;
    }
  }
}
