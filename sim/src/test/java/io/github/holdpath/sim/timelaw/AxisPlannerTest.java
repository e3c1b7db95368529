package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AxisPlannerTest {
  /** Problems compared with the search, about a third of a millisecond each; raise by property. */
  private static final int DRAWS = Integer.getInteger("stateDraws", 8000);

  private static final int SOUND_DRAWS = 100_000;

  /** Two ways of planning one move; each finds its roots to rounding. */
  private static final double SAME = 1e-9;

  @Test
  void isNeverSlowerThanTheSearchOverAllCandidates() {
    IntStream.range(0, DRAWS)
        .parallel()
        .forEach(
            i -> {
              SplittableRandom random = new SplittableRandom(300_000 + i);
              AxisLimits l = StateToStateTest.drawLimits(random);
              AxisState from = StateToStateTest.drawState(random, l, 0);
              AxisState to =
                  StateToStateTest.drawState(random, l, random.nextInt(3) == 0 ? 0.05 : 2);
              double found = SearchedMove.duration(from, to, l);
              AxisMove move = StateToState.plan(from, to, l);
              assertTrue(move.duration() <= found + SAME * (1 + found), "draw " + i);
              // About one in 100,000 is shorter: a pair of roots that the search overlooks.
              if (move.duration() < found - SAME * (1 + found)) {
                StateToStateTest.assertSound(move, from, to, l, "draw " + i);
              }
            });
  }

  @Test
  void keepsLimitsAndMeetsEndsInManyDraws() {
    IntStream.range(0, SOUND_DRAWS)
        .parallel()
        .forEach(
            i -> {
              SplittableRandom random = new SplittableRandom(500_000 + i);
              AxisLimits l = StateToStateTest.drawLimits(random);
              AxisState from = StateToStateTest.drawState(random, l, 0);
              double span = random.nextInt(3) == 0 ? 0.01 : 2;
              AxisState to = StateToStateTest.drawState(random, l, span);
              AxisMove move = StateToState.plan(from, to, l);
              StateToStateTest.assertSound(move, from, to, l, "draw " + i);
            });
  }

  @Test
  void samplesTheMoveThatItHolds() {
    AxisPlanner planner = new AxisPlanner();
    AxisLimits l = new AxisLimits(-1, 1.5, -5, 4, 40);
    planner.plan(0.1, 0.2, 3, 1.3, -0.2, 1, l);
    AxisMove move = planner.move();
    double[] out = new double[4];
    for (double t = -0.1; t < move.duration() + 0.1; t += 0.0137) {
      planner.at(t, out);
      double inside = Math.max(0, Math.min(move.duration(), t));
      LawPhase p = move.phaseAt(inside);
      assertEquals(p.positionAt(inside), out[0], 1e-15);
      assertEquals(p.speedAt(inside), out[1], 1e-15);
      assertEquals(p.accelerationAt(inside), out[2], 1e-14);
      assertEquals(p.jerkAt(inside), out[3], 0);
    }
    assertTrue(move.duration() > 0.5);
    planner.plan(1, 0, 0, 1, 0, 0, l);
    planner.at(0.3, out);
    assertEquals(0, planner.duration());
    assertEquals(1, out[0]);
    assertEquals(0, out[3]);
  }
}
