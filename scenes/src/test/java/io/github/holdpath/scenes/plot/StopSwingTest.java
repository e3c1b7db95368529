package io.github.holdpath.scenes.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;
import java.util.SplittableRandom;
import java.util.function.ToDoubleBiFunction;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

/**
 * The swing after the stop against the free swings of all jumps of the load, summed. With the root
 * {@code l = w (-zeta + i sqrt(1 - zeta^2))}, a jump A of acceleration at t leaves the swing {@code
 * A e^(l (T - t)) / (w^2 sqrt(1 - zeta^2))} at T, a jump of jerk that of its integral, which is
 * divided by l once more. Derived for this test.
 */
class StopSwingTest {
  /** Sums of a few exponentials, as a part of the largest jump. */
  private static final double EXACT = 1e-9;

  /** Sines laid through six nodes in each of 24 stretches, as a part of their peak. */
  private static final double FITTED = 1e-6;

  private static final double ROOT = Math.sqrt(1 - StopSwing.DAMPING * StopSwing.DAMPING);

  private final StopSwing swing = new StopSwing();

  private static Complex root(double omega) {
    return new Complex(-StopSwing.DAMPING * omega, ROOT * omega);
  }

  /** Size in m/s^2 of a move of 1 m in 1 s: of the duration T, T^2 times as much. */
  private static double worth(LawProfile law, Complex sum) {
    return sum.norm() / ROOT * law.duration() * law.duration() / law.distance();
  }

  private static double[] drawnCycles() {
    return new SplittableRandom(7).doubles(50, 0.2, 30).toArray();
  }

  @Test
  void trapezoidIsTheSumOfItsJumpsOfAcceleration() {
    LawProfile law = Laws.withinLimits(LawKind.TRAPEZOID);
    for (double cycles : drawnCycles()) {
      Complex sum = jumps(law, LawPhase::accelerationAt, rootOf(law, cycles));
      assertEquals(worth(law, sum), swing.after(law, cycles), 10 * EXACT);
    }
  }

  @Test
  void scurveIsTheSumOfItsJumpsOfJerk() {
    LawProfile law = Laws.withinLimits(LawKind.S_CURVE);
    for (double cycles : drawnCycles()) {
      Complex l = rootOf(law, cycles);
      Complex sum = jumps(law, LawPhase::jerkAt, l).divide(l);
      assertEquals(worth(law, sum), swing.after(law, cycles), 10 * EXACT);
    }
  }

  private static Complex rootOf(LawProfile law, double cycles) {
    return root(2 * Math.PI * cycles / law.duration());
  }

  /** Jumps of a quantity that is constant in each phase, as each goes on until the stop. */
  private static Complex jumps(
      LawProfile law, ToDoubleBiFunction<LawPhase, Double> of, Complex root) {
    Complex sum = Complex.ZERO;
    double before = 0;
    for (LawPhase phase : law.phases()) {
      double jump = of.applyAsDouble(phase, phase.from()) - before;
      before = of.applyAsDouble(phase, phase.to());
      sum = sum.add(root.multiply(law.duration() - phase.from()).exp().multiply(jump));
    }
    return sum.subtract(before);
  }

  /** The integral of {@code A sin(b t) e^(l (T - t))} over the whole sine, times l. */
  @Test
  void cycloidalIsTheIntegralOfItsSine() {
    LawProfile law = Laws.withinLimits(LawKind.CYCLOIDAL);
    double b = 2 * Math.PI / law.duration();
    for (double cycles : drawnCycles()) {
      Complex l = root(2 * Math.PI * cycles / law.duration());
      Complex grown = l.multiply(law.duration()).exp().subtract(1);
      Complex sum =
          l.multiply(grown).multiply(b * law.peakAcceleration()).divide(l.multiply(l).add(b * b));
      assertEquals(worth(law, sum), swing.after(law, cycles), 10 * FITTED);
    }
  }

  /** A slow spring feels the whole move as one blow: the law does not matter. */
  @Test
  void lawsAreAlikeWhereTheMoveIsShortBesideThePeriod() {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (LawKind kind : LawKind.values()) {
      double left = swing.after(Laws.withinLimits(kind), 0.1);
      least = Math.min(least, left);
      most = Math.max(most, left);
    }
    assertTrue(most < 1.02 * least, least + " to " + most);
  }
}
