package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ThirdOrderTest {
  private static final int DRAWS = 40;

  /** Step of the differences, s; joints make up to 2 rad/s, so it is a small share of a turn. */
  private static final double STEP = 2e-3;

  /** Of the largest number: eighth order at that step is below rounding over the step. */
  private static final double DIFFERENCE = 1e-10;

  /** The motion of joints whose third rates are 0. */
  private record Swing(double[] q, double[] qd, double[] qdd) {
    double[] state(RobotMotion motion, FlangeToGrip toGrip, double t) {
      int n = q.length;
      double[] x = new double[n];
      double[] xd = new double[n];
      for (int k = 0; k < n; k++) {
        x[k] = q[k] + t * (qd[k] + t * qdd[k] / 2);
        xd[k] = qd[k] + t * qdd[k];
      }
      assertTrue(motion.move(x, xd, qdd));
      double[] s = new double[MotionState.SIZE];
      motion.flange(s);
      toGrip.apply(s);
      return s;
    }
  }

  private static double error(Swing swing, RobotMotion motion, FlangeToGrip toGrip) {
    double[] weights = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};
    double[] slope = new double[6];
    for (int i = 1; i <= 4; i++) {
      double[] next = swing.state(motion, toGrip, i * STEP);
      double[] before = swing.state(motion, toGrip, -i * STEP);
      for (int k = 0; k < 6; k++) {
        int at = k < 3 ? MotionState.ACCELERATION + k : MotionState.ANGULAR_ACCELERATION + k - 3;
        slope[k] += weights[i - 1] * (next[at] - before[at]) / STEP;
      }
    }
    double[] third = new double[6];
    swing.state(motion, toGrip, 0);
    motion.third(third);
    toGrip.applyThird(third);
    double most = 1;
    double worst = 0;
    for (int k = 0; k < 6; k++) {
      most = Math.max(most, Math.abs(third[k]));
      worst = Math.max(worst, Math.abs(third[k] - slope[k]));
    }
    return worst / most;
  }

  @Test
  void isTheSlopeOfTheAccelerations() {
    SplittableRandom random = new SplittableRandom(61);
    Pose grip = new Pose(new Vec3(0.1, -0.05, 0.2), Quaternion.ofRpy(0.4, 0.2, -0.3));
    List<Robot> robots =
        List.of(
            Robots.gantry(Robots.BASE, Robots.MOUNT),
            Robots.scara(Robots.BASE, Robots.MOUNT),
            Robots.delta(Robots.BASE, Robots.MOUNT, true),
            Robots.delta(Robots.BASE, Robots.MOUNT, false),
            Robots.oblique(),
            Robots.seven());
    for (Robot robot : robots) {
      for (int i = 0; i < DRAWS; i++) {
        int n = robot.joints().size();
        Swing swing =
            new Swing(
                Robots.draw(robot, random, 0.2), Arms.draw(random, n, 2), Arms.draw(random, n, 5));
        assertEquals(0, error(swing, robot.motion(), new FlangeToGrip(grip)), DIFFERENCE);
      }
    }
  }

  /** Chains with joints that turn, slide and follow others. */
  @Test
  void isTheSlopeOfTheAccelerationsOfDrawnChains() {
    SplittableRandom random = new SplittableRandom(62);
    for (int i = 0; i < DRAWS; i++) {
      Chain chain = Arms.drawn(random);
      int n = chain.drives().size();
      Swing swing =
          new Swing(Arms.draw(random, n, 2), Arms.draw(random, n, 2), Arms.draw(random, n, 5));
      FlangeToGrip toGrip = new FlangeToGrip(Arms.pose(random));
      assertEquals(0, error(swing, new ChainMotion(chain), toGrip), DIFFERENCE * 10);
    }
  }
}
