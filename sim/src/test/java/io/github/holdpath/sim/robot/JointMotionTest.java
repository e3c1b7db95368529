package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.JointMotion.Outcome;
import java.io.IOException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JointMotionTest {
  /** Rounding, magnified by Jacobians of condition above 0.02. */
  private static final double EXACT = 1e-9;

  /** From joints to the grip's motion and back. */
  @ParameterizedTest
  @MethodSource("io.github.holdpath.sim.robot.RobotInverseTest#closedForm")
  void givesTheJointsMotionBack(Robot robot) {
    Pose grip = new Pose(new Vec3(0.1, -0.05, 0.2), Quaternion.ofRpy(0.4, 0.2, -0.3));
    SplittableRandom random = new SplittableRandom(51);
    JointMotion motion = new JointMotion(robot, grip);
    FlangeSolver solver = new FlangeSolver(robot);
    RobotMotion forward = robot.motion();
    int n = robot.joints().size();
    for (int draw = 0; draw < 100; draw++) {
      double[] q = Robots.draw(robot, random, 0.05);
      if (solver.conditionAt(q) < 0.02) {
        continue;
      }
      double[] qd = Arms.draw(random, n, 2);
      double[] qdd = Arms.draw(random, n, 5);
      forward.move(q, qd, qdd);
      double[] flange = new double[MotionState.SIZE];
      forward.flange(flange);
      double[] near = q.clone();
      for (int k = 0; k < n; k++) {
        near[k] += random.nextDouble(-2e-3, 2e-3);
      }
      double[] speeds = new double[n];
      double[] accelerations = new double[n];
      assertEquals(
          Outcome.FOLLOWED, motion.solve(atGrip(flange, grip), near, speeds, accelerations));
      assertArrayEquals(q, near, EXACT);
      assertArrayEquals(qd, speeds, EXACT * 10);
      assertArrayEquals(qdd, accelerations, EXACT * 100);
    }
  }

  /** Motion of a point fixed to the flange, in values, not in the code's arrays. */
  private static double[] atGrip(double[] flange, Pose grip) {
    MotionState f = MotionState.of(flange);
    Vec3 d = f.pose().rotation().rotate(grip.position());
    Vec3 w = f.angularVelocity();
    Vec3 alpha = f.angularAcceleration();
    return new MotionState(
            f.pose().times(grip),
            f.velocity().plus(w.cross(d)),
            w,
            f.acceleration().plus(alpha.cross(d)).plus(w.cross(w.cross(d))),
            alpha)
        .toArray();
  }

  @Test
  void isLostWhereNoJointsAreNear() throws IOException {
    SerialArm arm = Robots.logged(Pose.IDENTITY);
    JointMotion motion = new JointMotion(arm, Pose.IDENTITY);
    double[] far = MotionState.atRest(Pose.at(3, 0, 0)).toArray();
    double[] q = {0.3, 0.4, 1.2, 0.5, 0.8, -0.4};
    assertEquals(Outcome.LOST, motion.solve(far, q, new double[6], new double[6]));
  }

  /** A leaning base is a leaning gravity. */
  @Test
  void torquesAreThoseOfAChainInALeaningField() throws IOException {
    SplittableRandom random = new SplittableRandom(52);
    SerialArm arm = Robots.published();
    Vec3 gravity = new Vec3(0, 0, -9.80665);
    LinkBody payload = Arms.body(random);
    JointTorques inWorld = arm.torques(gravity, payload);
    JointTorques inBase =
        new JointTorques(arm.chain(), arm.base().rotation().rotateBack(gravity), payload);
    for (int draw = 0; draw < 20; draw++) {
      double[] q = Arms.draw(random, 6, 2);
      double[] qd = Arms.draw(random, 6, 2);
      double[] qdd = Arms.draw(random, 6, 5);
      double[] a = new double[6];
      double[] b = new double[6];
      inWorld.of(q, qd, qdd, a);
      inBase.of(q, qd, qdd, b);
      assertArrayEquals(b, a, 1e-10);
    }
  }
}
