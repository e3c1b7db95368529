package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Reach.Cause;
import io.github.holdpath.sim.robot.Reach.Reached;
import io.github.holdpath.sim.robot.Reach.Unreachable;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RobotInverseTest {
  /** Poses of a metre, m and rad. */
  private static final double ROUND_TRIP = 1e-9;

  /** Joint values where the arm is not near a singularity, which magnifies rounding. */
  private static final double JOINTS = 1e-9;

  private static final double WELL_CONDITIONED = 0.01;

  static Stream<Robot> closedForm() throws IOException {
    return Stream.of(
        Robots.gantry(Robots.BASE, Robots.MOUNT),
        Robots.scara(Robots.BASE, Robots.MOUNT),
        Robots.delta(Robots.BASE, Robots.MOUNT, true),
        Robots.delta(Robots.BASE, Robots.MOUNT, false),
        Robots.logged(Robots.BASE),
        Robots.published(),
        Robots.oblique());
  }

  static Stream<Robot> all() throws IOException {
    return Stream.concat(closedForm(), Stream.of(Robots.offsetWrist(), Robots.seven()));
  }

  @ParameterizedTest
  @MethodSource("closedForm")
  void forwardOfInverseIsThePoseAndInverseOfForwardTheJoints(Robot robot) {
    SplittableRandom random = new SplittableRandom(31);
    FlangeSolver solver = new FlangeSolver(robot);
    int compared = 0;
    for (int draw = 0; draw < 300; draw++) {
      double[] q = Robots.draw(robot, random, 0.02);
      Pose pose = robot.flangeAt(q).orElseThrow();
      List<Posture> postures = assertInstanceOf(Reached.class, robot.inverse(pose)).postures();
      double nearest = Double.POSITIVE_INFINITY;
      for (Posture posture : postures) {
        assertPose(pose, robot.flangeAt(posture.values()).orElseThrow());
        nearest = Math.min(nearest, apart(robot, q, posture.values()));
      }
      if (solver.conditionAt(q) > WELL_CONDITIONED) {
        assertEquals(0, nearest, JOINTS, "the joints drawn are among the postures");
        compared++;
      }
    }
    assertTrue(compared > 200, "most draws are compared, but only " + compared + " were");
  }

  @Test
  void searchFindsThePoseWhereThereIsNoClosedForm() {
    SplittableRandom random = new SplittableRandom(32);
    for (Robot robot : List.of(Robots.offsetWrist(), Robots.seven())) {
      assertFalse(((SerialArm) robot).hasClosedForm());
      for (int draw = 0; draw < 20; draw++) {
        Pose pose = robot.flangeAt(Robots.draw(robot, random, 0.1)).orElseThrow();
        List<Posture> postures = assertInstanceOf(Reached.class, robot.inverse(pose)).postures();
        for (Posture posture : postures) {
          assertPose(pose, robot.flangeAt(posture.values()).orElseThrow());
        }
      }
    }
  }

  private static void assertPose(Pose expected, Pose actual) {
    assertEquals(0, actual.position().minus(expected.position()).norm(), ROUND_TRIP);
    assertEquals(0, actual.rotation().angleTo(expected.rotation()), ROUND_TRIP);
  }

  private static double apart(Robot robot, double[] a, double[] b) {
    double most = 0;
    for (int k = 0; k < a.length; k++) {
      double d = a[k] - b[k];
      if (robot.joints().get(k).kind().turns()) {
        d -= 2 * Math.PI * Math.rint(d / (2 * Math.PI));
      }
      most = Math.max(most, Math.abs(d));
    }
    return most;
  }

  /** Columns against central differences of poses. */
  @ParameterizedTest
  @MethodSource("all")
  void jacobianIsThatOfDifferences(Robot robot) {
    SplittableRandom random = new SplittableRandom(33);
    RobotMotion motion = robot.motion();
    int n = robot.joints().size();
    double h = 1e-5;
    for (int draw = 0; draw < 20; draw++) {
      double[] q = Robots.draw(robot, random, 0.05);
      double[] jacobian = new double[6 * n];
      assertTrue(motion.moveTo(q));
      motion.jacobian(jacobian);
      for (int k = 0; k < n; k++) {
        double[] to = q.clone();
        to[k] += h;
        Pose ahead = robot.flangeAt(to).orElseThrow();
        to[k] -= 2 * h;
        Pose back = robot.flangeAt(to).orElseThrow();
        Vec3 v = ahead.position().minus(back.position()).times(1 / (2 * h));
        Vec3 w =
            ahead.rotation().times(back.rotation().inverse()).rotationVector().times(1 / (2 * h));
        double[] column = {v.x(), v.y(), v.z(), w.x(), w.y(), w.z()};
        for (int row = 0; row < 6; row++) {
          // Rounding by the step, 1e-11, and the square of the step on rates of some units.
          assertEquals(column[row], jacobian[row * n + k], 1e-8);
        }
      }
    }
  }

  /** Velocity and acceleration of the flange against differences along a parabola of the joints. */
  @ParameterizedTest
  @MethodSource("all")
  void flangesMotionIsThatOfDifferences(Robot robot) {
    SplittableRandom random = new SplittableRandom(34);
    int n = robot.joints().size();
    double h = 1e-4;
    for (int draw = 0; draw < 20; draw++) {
      double[] q = Robots.draw(robot, random, 0.05);
      double[] qd = Arms.draw(random, n, 1);
      double[] qdd = Arms.draw(random, n, 2);
      double[] now = state(robot, q, qd, qdd, 0);
      double[] back = state(robot, q, qd, qdd, -h);
      double[] ahead = state(robot, q, qd, qdd, h);
      for (int i = 0; i < 3; i++) {
        assertEquals((ahead[i] - back[i]) / (2 * h), now[7 + i], 1e-5);
        assertEquals((ahead[7 + i] - back[7 + i]) / (2 * h), now[13 + i], 1e-5);
        assertEquals((ahead[10 + i] - back[10 + i]) / (2 * h), now[16 + i], 1e-5);
      }
    }
  }

  private static double[] state(Robot robot, double[] q, double[] qd, double[] qdd, double t) {
    double[] x = new double[q.length];
    double[] v = new double[q.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = q[i] + qd[i] * t + qdd[i] * t * t / 2;
      v[i] = qd[i] + qdd[i] * t;
    }
    RobotMotion motion = robot.motion();
    assertTrue(motion.move(x, v, qdd));
    double[] s = new double[19];
    motion.flange(s);
    return s;
  }

  /** A wrist that meets in a point, a shoulder to the side: eight ways to stand, all different. */
  @Test
  void industrialArmHasEightPostures() throws IOException {
    SerialArm arm = Robots.logged(Pose.IDENTITY);
    assertTrue(arm.hasClosedForm());
    Pose pose = arm.flangeAt(0.3, 0.4, 1.2, 0.5, 0.8, -0.4).orElseThrow();
    List<Posture> postures = assertInstanceOf(Reached.class, arm.inverse(pose)).postures();
    assertEquals(8, postures.stream().map(Posture::branch).distinct().count());
    List<Posture> ranked = StartChoice.ranked(arm, postures);
    assertFalse(ranked.isEmpty());
    for (Posture posture : ranked) {
      assertTrue(StartChoice.room(arm, posture) >= 0);
    }
  }

  @Test
  void scaraBendsItsElbowBothWays() {
    Scara scara = Robots.scara(Pose.IDENTITY, Robot.HANGING);
    Pose pose = new Pose(new Vec3(0.4, 0, -0.1), Robot.HANGING.rotation());
    List<Posture> both = assertInstanceOf(Reached.class, scara.inverse(pose)).postures();
    double[] left = both.get(0).values();
    double[] right = both.get(1).values();
    assertEquals("elbow left", both.get(0).branch());
    assertTrue(left[0] > 0 && right[0] < 0, "the left elbow is to the left of the hand");
    assertEquals(left[0], -right[0], JOINTS);
    assertEquals(left[1], -right[1], JOINTS);
    assertEquals(-0.1, left[2], JOINTS);
  }

  /** Arms level and rods of which the height follows from Pythagoras. */
  @Test
  void deltaStandsWherePythagorasSays() {
    Delta delta = Robots.delta(Pose.IDENTITY, Pose.IDENTITY, false);
    Pose pose = delta.flangeAt(0, 0, 0).orElseThrow();
    double out = 0.2 - 0.045 + 0.35;
    assertEquals(-Math.sqrt(0.8 * 0.8 - out * out), pose.position().z(), JOINTS);
    assertEquals(0, Math.hypot(pose.position().x(), pose.position().y()), JOINTS);
    // Three equal angles lower it along the axis.
    assertTrue(delta.flangeAt(0.5, 0.5, 0.5).orElseThrow().position().z() < pose.position().z());
    // A raised first arm draws the platform over to its side.
    assertTrue(delta.flangeAt(-0.3, 0, 0).orElseThrow().position().x() > 0.01);
  }

  @Test
  void deltaSaysWhereItsRodsDoNotMeet() {
    Delta wide =
        new Delta(
            0.5,
            0.1,
            0.3,
            0.65,
            Robots.range(-1, 3),
            Optional.empty(),
            Pose.IDENTITY,
            Pose.IDENTITY,
            OptionalDouble.empty());
    assertTrue(wide.flangeAt(0, 0, 0).isEmpty());
    assertTrue(wide.flangeAt(1.5, 1.5, 1.5).isPresent());
  }

  @Test
  void saysWhatKeepsARobotFromAPose() {
    Quaternion down = Robot.HANGING.rotation();
    Pose leaning = new Pose(new Vec3(0.3, 0, -0.1), Quaternion.ofRpy(0, 0.2, 0).times(down));
    Scara scara = Robots.scara(Pose.IDENTITY, Robot.HANGING);
    Delta delta = Robots.delta(Pose.IDENTITY, Robot.HANGING, false);
    Gantry gantry = Robots.gantry(Pose.IDENTITY, Robot.HANGING);
    for (Robot robot : List.of(scara, delta, gantry)) {
      assertFault(robot.inverse(leaning), Cause.CANNOT_LEAN, 0.2, "the tool cannot lean");
    }
    Pose turned = new Pose(new Vec3(0.1, 0, -0.6), Quaternion.ofRpy(0, 0, 0.3).times(down));
    assertFault(delta.inverse(turned), Cause.CANNOT_TURN, 0.3, "this delta has no turning axis");
    assertFault(
        scara.inverse(new Pose(new Vec3(0.5, 0.5, 0), down)),
        Cause.TOO_FAR,
        Math.sqrt(0.5) - 0.6,
        "both arms stretched");
    assertFault(
        scara.inverse(new Pose(new Vec3(0.01, 0, 0), down)), Cause.TOO_NEAR, 0.04, "folded");
    assertFault(
        delta.inverse(new Pose(new Vec3(0, 0, -1.5), down)),
        Cause.TOO_FAR,
        Math.hypot(0.2 - 0.045, 1.5) - 0.35 - 0.8,
        "arm 1 and its rod stretched");
    Gantry planar =
        new Gantry(
            gantry.x(),
            Optional.empty(),
            gantry.z(),
            Optional.empty(),
            Pose.IDENTITY,
            Pose.IDENTITY,
            OptionalDouble.empty());
    assertFault(planar.inverse(Pose.at(0.1, -0.2, 0)), Cause.NO_AXIS, 0.2, "no such axis");
    assertEquals(2, planar.joints().size());
    Unreachable far =
        assertInstanceOf(Unreachable.class, Robots.oblique().inverse(Pose.at(3, 0, 0)));
    assertEquals(Cause.TOO_FAR, far.cause());
    assertTrue(far.measure() > 1 && far.measure() < 3, "metres out: " + far.measure());
  }

  private static void assertFault(Reach reach, Cause cause, double measure, String words) {
    Unreachable fault = assertInstanceOf(Unreachable.class, reach);
    assertEquals(cause, fault.cause());
    assertTrue(fault.reason().contains(words), fault.reason());
    assertEquals(measure, fault.measure(), 1e-9);
  }

  @Test
  void roomIsTheShareOfHalfTheRange() {
    JointLimits limits = Robots.range(-1, 3);
    assertEquals(1, limits.room(1));
    assertEquals(0.25, limits.room(-0.5));
    assertEquals(-0.5, limits.room(4));
    assertEquals(1, JointLimits.NONE.room(100));
    assertEquals(5, limits.withAcceleration(5).acceleration());
    assertThrows(IllegalArgumentException.class, () -> limits.withAcceleration(0));
  }

  @Test
  void refusesSizesThatAreNone() {
    Scara scara = Robots.scara(Pose.IDENTITY, Pose.IDENTITY);
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new Scara(
                        0.3,
                        -0.2,
                        scara.shoulder(),
                        scara.elbow(),
                        scara.lift(),
                        scara.turn(),
                        Pose.IDENTITY,
                        Pose.IDENTITY,
                        OptionalDouble.empty()))
            .getMessage();
    assertTrue(message != null && message.contains("foreArm"), message);
    assertThrows(
        IllegalArgumentException.class,
        () -> new SerialArm(Robots.seven().chain(), Pose.IDENTITY, OptionalDouble.of(0)));
  }
}
