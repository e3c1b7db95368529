package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against singular values, which take another way to the same answer. */
class SquareInverseTest {
  /** Rounding of a number near 1, magnified by the condition of a matrix. */
  private static final double ROUNDING = 1e-14;

  private static final int N = SquareInverse.N;

  @Test
  void solvesAsSingularValuesDo() {
    SplittableRandom random = new SplittableRandom(71);
    SquareInverse inverse = new SquareInverse();
    SingularValues values = new SingularValues(N);
    int looked = 0;
    for (int draw = 0; draw < 2_000; draw++) {
      double[] a = new double[N * N];
      for (int i = 0; i < a.length; i++) {
        a[i] = random.nextInt(5) == 0 ? 0 : random.nextDouble(-1, 1);
      }
      values.of(a);
      double condition = values.greatest() / values.least();
      if (!(condition < 1e4)) {
        continue;
      }
      looked++;
      assertTrue(inverse.of(a));
      assertTrue(inverse.bound() >= condition * (1 - ROUNDING * condition));
      assertTrue(inverse.bound() <= N * condition * (1 + ROUNDING * condition));
      double[] y = random.doubles(N, -1, 1).toArray();
      double[] x = new double[N];
      double[] expected = new double[N];
      inverse.solve(y, x);
      values.solve(y, 0, expected);
      double size = 0;
      for (double v : expected) {
        size = Math.max(size, Math.abs(v));
      }
      for (int k = 0; k < N; k++) {
        assertEquals(expected[k], x[k], ROUNDING * condition * size);
      }
    }
    assertTrue(looked > 1_500, looked + " matrices");
  }

  @Test
  void hasNoneOfASingularMatrix() {
    SquareInverse inverse = new SquareInverse();
    assertFalse(inverse.of(new double[N * N]));
    double[] twice = new double[N * N];
    for (int i = 0; i < N; i++) {
      twice[i * N + i] = 1;
    }
    for (int k = 0; k < N; k++) {
      twice[2 * N + k] = twice[3 * N + k];
    }
    assertFalse(inverse.of(twice));
    twice[2] = Double.NaN;
    assertFalse(inverse.of(twice));
  }

  /** A first step by the Jacobian of the place before ends where the plain way does. */
  @Test
  void aWalkEndsWhereSingleLooksDo() {
    SerialArm arm = Robots.oblique();
    SplittableRandom random = new SplittableRandom(72);
    double[] from = Robots.draw(arm, random, 0.2);
    double[] rate = random.doubles(N, -1.2, 1.2).toArray();
    JointMotion walk = new JointMotion(arm, Pose.IDENTITY);
    RobotMotion forward = arm.motion();
    double[] state = new double[MotionState.SIZE];
    double[] q = from.clone();
    double[] at = new double[N];
    double worst = 0;
    for (int i = 1; i <= 300; i++) {
      for (int k = 0; k < N; k++) {
        at[k] = from[k] + rate[k] * 1e-3 * i;
      }
      forward.move(at, rate, new double[N]);
      forward.flange(state);
      double[] qd = new double[N];
      double[] qdd = new double[N];
      // Foretold as a walk does, a little off.
      for (int k = 0; k < N; k++) {
        q[k] += rate[k] * 1e-3 + random.nextDouble(-1e-6, 1e-6);
      }
      assertEquals(JointMotion.Outcome.FOLLOWED, walk.solve(state, q, qd, qdd), "step " + i);
      for (int k = 0; k < N; k++) {
        worst = Math.max(worst, Math.abs(q[k] - at[k]));
        worst = Math.max(worst, 1e-2 * Math.abs(qd[k] - rate[k]));
        worst = Math.max(worst, 1e-3 * Math.abs(qdd[k]));
      }
    }
    assertTrue(worst < 1e-11, "off by " + worst);
  }
}
