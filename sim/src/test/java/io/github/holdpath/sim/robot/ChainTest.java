package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class ChainTest {
  /** Algebra on numbers up to some hundreds. */
  private static final double EXACT = 1e-10;

  /** Step of differences, s; a fourth-order formula errs by about its fourth power. */
  private static final double STEP = 1e-3;

  /** Error of the differences on rates of the order of 100. */
  private static final double DIFFERENCED = 1e-6;

  private static final int DRAWS = 50;
  private static final Vec3 Z = new Vec3(0, 0, 1);

  private static Joint joint(String name, JointKind kind, Pose origin, Optional<Mimic> mimic) {
    return new Joint(name, kind, origin, Z, JointLimits.NONE, LinkBody.NONE, mimic);
  }

  /** Two links of 0.3 m and 0.2 m in the plane: textbook trigonometry. */
  private static Chain planar() {
    return new Chain(
        List.of(
            joint("a", JointKind.REVOLUTE, Pose.IDENTITY, Optional.empty()),
            joint("b", JointKind.REVOLUTE, Pose.at(0.3, 0, 0), Optional.empty())),
        Pose.at(0.2, 0, 0));
  }

  @Test
  void planarArmReachesWhereTrigonometrySays() {
    Pose pose = planar().flangeAt(0.4, 0.5);
    assertEquals(0.3 * Math.cos(0.4) + 0.2 * Math.cos(0.9), pose.position().x(), EXACT);
    assertEquals(0.3 * Math.sin(0.4) + 0.2 * Math.sin(0.9), pose.position().y(), EXACT);
    assertEquals(0, pose.rotation().angleTo(Quaternion.ofAxisAngle(Z, 0.9)), EXACT);
  }

  @Test
  void spinningArmPullsInwards() {
    ChainMotion motion = new ChainMotion(planar());
    motion.move(new double[] {0, 0}, new double[] {2, 0}, new double[] {0, 0});
    double[] s = new double[MotionState.SIZE];
    motion.flange(s);
    assertEquals(0.5 * 2, s[MotionState.VELOCITY + 1], EXACT);
    assertEquals(-0.5 * 4, s[MotionState.ACCELERATION], EXACT);
  }

  /** A slide outwards at 3 m/s on a table that turns at 2 rad/s: Coriolis, 2 w v. */
  @Test
  void slideOnATurningTableFeelsCoriolis() {
    Joint turn = joint("turn", JointKind.CONTINUOUS, Pose.IDENTITY, Optional.empty());
    Joint slide =
        Joint.driven(
            "slide",
            JointKind.PRISMATIC,
            Pose.IDENTITY,
            new Vec3(5, 0, 0),
            JointLimits.NONE,
            LinkBody.NONE);
    ChainMotion motion = new ChainMotion(new Chain(List.of(turn, slide), Pose.IDENTITY));
    motion.move(new double[] {0, 0.5}, new double[] {2, 3}, new double[] {0, 0});
    double[] s = new double[MotionState.SIZE];
    motion.flange(s);
    assertEquals(2 * 2 * 3, s[MotionState.ACCELERATION + 1], EXACT);
    assertEquals(-0.5 * 4, s[MotionState.ACCELERATION], EXACT);
  }

  @Test
  void poseIsTheProductOfTheJointsPoses() {
    SplittableRandom random = new SplittableRandom(11);
    for (int draw = 0; draw < DRAWS; draw++) {
      Chain arm = Arms.drawn(random);
      double[] q = Arms.draw(random, 4, 2);
      double[] each = {q[0], q[1], q[2], 0.7 * q[1] + 0.2, -1.3 * q[2] + 0.2, q[3]};
      Pose product = Pose.IDENTITY;
      for (int i = 0; i < each.length; i++) {
        Joint joint = arm.joints().get(i);
        Pose move =
            joint.kind().turns()
                ? new Pose(Vec3.ZERO, Quaternion.ofAxisAngle(joint.axis(), each[i]))
                : new Pose(joint.axis().times(each[i]), Quaternion.IDENTITY);
        product = product.times(joint.origin()).times(move);
      }
      product = product.times(arm.flange());
      Pose ours = arm.flangeAt(q);
      assertEquals(0, ours.position().minus(product.position()).norm(), EXACT);
      assertEquals(0, ours.rotation().angleTo(product.rotation()), EXACT);
    }
  }

  /** Velocity and acceleration against differences of poses and of velocities. */
  @Test
  void ratesAreThoseOfDifferences() {
    SplittableRandom random = new SplittableRandom(12);
    for (int draw = 0; draw < DRAWS; draw++) {
      Chain arm = Arms.drawn(random);
      double[] q = Arms.draw(random, 4, 2);
      double[] qd = Arms.draw(random, 4, 2);
      double[] qdd = Arms.draw(random, 4, 3);
      double[] now = state(arm, q, qd, qdd, 0);
      double[] far = state(arm, q, qd, qdd, -2 * STEP);
      double[] back = state(arm, q, qd, qdd, -STEP);
      double[] ahead = state(arm, q, qd, qdd, STEP);
      double[] farAhead = state(arm, q, qd, qdd, 2 * STEP);
      for (int i = 0; i < 3; i++) {
        assertEquals(slope(far, back, ahead, farAhead, i), now[7 + i], DIFFERENCED);
        assertEquals(slope(far, back, ahead, farAhead, 7 + i), now[13 + i], DIFFERENCED);
        assertEquals(slope(far, back, ahead, farAhead, 10 + i), now[16 + i], DIFFERENCED);
      }
      Quaternion a = new Quaternion(back[3], back[4], back[5], back[6]);
      Quaternion b = new Quaternion(ahead[3], ahead[4], ahead[5], ahead[6]);
      Vec3 turn = b.times(a.inverse()).rotationVector().times(1 / (2 * STEP));
      Vec3 w = new Vec3(now[10], now[11], now[12]);
      // A central difference of second order: error of the order of STEP^2 times rates cubed.
      assertEquals(0, turn.minus(w).norm(), 1e-4);
    }
  }

  private static double[] state(Chain arm, double[] q, double[] qd, double[] qdd, double t) {
    double[] x = new double[4];
    double[] v = new double[4];
    for (int i = 0; i < 4; i++) {
      x[i] = q[i] + qd[i] * t + qdd[i] * t * t / 2;
      v[i] = qd[i] + qdd[i] * t;
    }
    ChainMotion motion = new ChainMotion(arm);
    motion.move(x, v, qdd);
    double[] s = new double[MotionState.SIZE];
    motion.flange(s);
    return s;
  }

  private static double slope(
      double[] far, double[] back, double[] ahead, double[] farAhead, int i) {
    return (far[i] - 8 * back[i] + 8 * ahead[i] - farAhead[i]) / (12 * STEP);
  }

  @Test
  void jacobianAndItsRateGiveTheFlangesMotion() {
    SplittableRandom random = new SplittableRandom(13);
    for (int draw = 0; draw < DRAWS; draw++) {
      double[] qd = Arms.draw(random, 4, 2);
      double[] qdd = Arms.draw(random, 4, 3);
      ChainMotion motion = new ChainMotion(Arms.drawn(random));
      motion.move(Arms.draw(random, 4, 2), qd, qdd);
      double[] s = new double[MotionState.SIZE];
      motion.flange(s);
      double[] jacobian = new double[24];
      double[] rate = new double[24];
      motion.jacobian(jacobian);
      motion.jacobianRate(rate);
      for (int row = 0; row < 6; row++) {
        double twist = 0;
        double second = 0;
        for (int k = 0; k < 4; k++) {
          twist += jacobian[4 * row + k] * qd[k];
          second += jacobian[4 * row + k] * qdd[k] + rate[4 * row + k] * qd[k];
        }
        assertEquals(s[MotionState.VELOCITY + row], twist, EXACT);
        assertEquals(s[MotionState.ACCELERATION + row], second, EXACT);
      }
    }
  }

  @Test
  void limitsOfAMimicBindItsLeader() {
    Joint leader =
        Joint.driven(
            "a",
            JointKind.PRISMATIC,
            Pose.IDENTITY,
            Z,
            new JointLimits(0, 1, 2, 30),
            LinkBody.NONE);
    Joint follower =
        new Joint(
            "b",
            JointKind.PRISMATIC,
            Pose.IDENTITY,
            Z,
            new JointLimits(-1, 0.5, 1, 5),
            LinkBody.NONE,
            Optional.of(new Mimic("a", -2, 0.1)));
    JointLimits both = new Chain(List.of(leader, follower), Pose.IDENTITY).limits(0);
    assertEquals(0, both.lower());
    assertEquals(0.55, both.upper(), EXACT);
    assertEquals(0.5, both.speed());
    assertEquals(30, both.effort());
  }

  @Test
  void refusesWhatIsNoChain() {
    Joint a = joint("a", JointKind.REVOLUTE, Pose.IDENTITY, Optional.empty());
    Joint lost = joint("b", JointKind.REVOLUTE, Pose.IDENTITY, Optional.of(new Mimic("c", 1, 0)));
    assertFault("a chain needs", () -> new Chain(List.of(), Pose.IDENTITY));
    assertFault("a comes twice", () -> new Chain(List.of(a, a), Pose.IDENTITY));
    assertFault("b mimics c", () -> new Chain(List.of(a, lost), Pose.IDENTITY));
    assertFault("multiplier", () -> new Mimic("a", 0, 0));
    assertFault("offset", () -> new Mimic("a", 1, Double.NaN));
    assertFault("lower", () -> new JointLimits(1, 0, 1, 1));
    assertFault("speed", () -> new JointLimits(0, 1, 0, 1));
    assertFault("effort", () -> new JointLimits(0, 1, 1, Double.NaN));
    assertFault("mass", () -> new LinkBody(-1, Vec3.ZERO, LinkBody.NONE.inertia()));
    assertFault(
        "axis of joint x",
        () ->
            Joint.driven(
                "x",
                JointKind.REVOLUTE,
                Pose.IDENTITY,
                Vec3.ZERO,
                JointLimits.NONE,
                LinkBody.NONE));
  }

  @Test
  void refusesArraysOfTheWrongLengthAndNumbersThatAreNone() {
    ChainMotion motion = new ChainMotion(planar());
    assertFault("joint values must be 2 numbers", () -> motion.moveTo(new double[3]));
    assertFault("joint values must be finite", () -> motion.moveTo(new double[] {0, Double.NaN}));
    assertFault("matrix must have 12", () -> motion.jacobian(new double[6]));
  }

  private static void assertFault(String part, Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message != null && message.contains(part), message);
  }

  /** A body split in two is the same body, and carried round and back it is itself. */
  @Test
  void bodiesAddUp() {
    SplittableRandom random = new SplittableRandom(14);
    LinkBody a = Arms.body(random);
    LinkBody b = Arms.body(random);
    Pose pose = Arms.pose(random);
    LinkBody sum = a.plus(b).seenFrom(pose);
    LinkBody other = a.seenFrom(pose).plus(b.seenFrom(pose));
    assertEquals(sum.mass(), other.mass(), EXACT);
    assertEquals(0, sum.centreOfMass().minus(other.centreOfMass()).norm(), EXACT);
    assertArrayEquals(sum.inertia().principal(), other.inertia().principal(), EXACT);
    assertEquals(LinkBody.NONE, LinkBody.NONE.plus(LinkBody.NONE));
  }
}
