package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.PathCurve;
import io.github.holdpath.sim.robot.Following.Followed;
import io.github.holdpath.sim.robot.Following.OutOfReach;
import io.github.holdpath.sim.robot.Following.PastLimit;
import io.github.holdpath.sim.robot.Following.Singular;
import io.github.holdpath.sim.robot.JointMotion.Outcome;
import io.github.holdpath.sim.robot.Reach.Cause;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PathFollowerTest {
  private static final double EXACT = 1e-9;

  /** What the virtual machine may book on its own, bytes over all calls; one array is 24 a call. */
  private static final long ALLOCATION_NOISE = 4096;

  private static final Vec3 STILL = Vec3.ZERO;
  private static final Pose GRIP =
      new Pose(new Vec3(0.02, 0.01, 0.15), Quaternion.ofRpy(0.1, -0.2, 0.5));

  /** A robot, joint values to begin with, how far it goes and which way. */
  record Case(Robot robot, double[] start, double length, int sign) {}

  static Stream<Case> cases() throws IOException {
    return Stream.of(
        new Case(Robots.gantry(Robots.BASE, Robots.MOUNT), new double[] {0, 0, 0.4, 0}, 0.3, 1),
        new Case(Robots.scara(Robots.BASE, Robots.MOUNT), new double[] {0.5, 1, -0.1, 0}, 0.2, -1),
        new Case(
            Robots.delta(Robots.BASE, Robots.MOUNT, true), new double[] {0, 0.2, 0, 0}, 0.2, 1),
        new Case(
            Robots.logged(Robots.BASE), new double[] {0.3, 0.4, 1.2, 0.5, 0.8, -0.4}, 0.15, -1),
        new Case(Robots.offsetWrist(), new double[] {0.3, 0.4, 1.2, 0.5, 0.8, -0.4}, 0.15, -1),
        new Case(Robots.seven(), new double[] {0.3, 0.4, 0.2, 0.9, 0.1, 0.8, -0.4}, 0.15, -1));
  }

  private static Robots.Line level(Case c, double turn) {
    Pose from = c.robot.flangeAt(c.start).orElseThrow().times(GRIP);
    boolean leans = c.robot instanceof SerialArm;
    // A robot that stays level turns about its own upright and moves in any direction.
    Vec3 up = c.robot.base().rotation().rotate(new Vec3(0, 0, 1));
    Vec3 axis = leans ? new Vec3(0.6, -0.3, 0.5) : up;
    Vec3 way = up.cross(new Vec3(0.3, 0.2, 0.5)).unit().plus(up.times(0.2)).unit();
    return new Robots.Line(from, way.times(c.sign), axis.times(turn), c.length);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void jointsLeadTheToolAlongThePath(Case c) {
    Robots.Line line = level(c, 2);
    Followed followed =
        assertInstanceOf(Followed.class, PathFollower.follow(c.robot, line, GRIP, c.start));
    JointPathSampler sampler = followed.path().sampler();
    SplittableRandom random = new SplittableRandom(41);
    int n = c.start.length;
    double h = 1e-4 * c.length;
    double[][] q = new double[3][n];
    double[][] q1 = new double[3][n];
    double[][] q2 = new double[3][n];
    double[] p = new double[25];
    for (int draw = 0; draw < 200; draw++) {
      double s = random.nextDouble(h, c.length - h);
      for (int i = 0; i < 3; i++) {
        assertEquals(Outcome.FOLLOWED, sampler.at(s + (i - 1) * h, q[i], q1[i], q2[i]));
      }
      assertTrue(sampler.condition() >= followed.leastCondition() * (1 - 1e-6));
      Pose pose = c.robot.flangeAt(q[1]).orElseThrow().times(GRIP);
      line.at(s, p);
      assertEquals(0, pose.position().minus(new Vec3(p[0], p[1], p[2])).norm(), EXACT);
      assertEquals(0, pose.rotation().angleTo(new Quaternion(p[3], p[4], p[5], p[6])), EXACT);
      for (int k = 0; k < n; k++) {
        // Differences err by the step's square and rounding by the step, on rates of some tens.
        assertEquals((q[2][k] - q[0][k]) / (2 * h), q1[1][k], 1e-4 * (1 + Math.abs(q1[1][k])));
        assertEquals((q1[2][k] - q1[0][k]) / (2 * h), q2[1][k], 1e-4 * (1 + Math.abs(q2[1][k])));
      }
    }
  }

  /** The same path twice over gives the same bits; the start is chosen by rule. */
  @Test
  void choosesItsStartByRuleAndRepeatsItself() throws IOException {
    SerialArm arm = Robots.logged(Pose.IDENTITY);
    Pose from = arm.flangeAt(0.3, 0.4, 1.2, 0.5, 0.8, -0.4).orElseThrow();
    Robots.Line line = new Robots.Line(from, new Vec3(0, 0, 1), STILL, 0.1);
    double[][] q = new double[2][6];
    double[] q1 = new double[6];
    for (int i = 0; i < 2; i++) {
      Followed followed =
          assertInstanceOf(Followed.class, PathFollower.follow(arm, line, Pose.IDENTITY));
      followed.path().sampler().at(0.0777, q[i], q1, q1.clone());
    }
    assertTrue(Arrays.equals(q[0], q[1]));
    for (int k = 0; k < 6; k++) {
      assertTrue(arm.joints().get(k).limits().allow(q[0][k]));
    }
  }

  /**
   * The tool turns about the wrist's middle axis, so that the fifth joint goes through 0, where the
   * fourth and sixth axes are in line.
   */
  @Test
  void reportsAWristThatGoesStraight() throws IOException {
    SerialArm arm = Robots.logged(Pose.IDENTITY);
    double[] start = {0.3, 0.4, 1.2, 0.5, 0.3, -0.4};
    Singular singular =
        assertInstanceOf(
            Singular.class, PathFollower.follow(arm, wristTurn(arm, start, 0), WRIST, start));
    assertEquals(0.3, singular.at(), 1e-3);
    assertTrue(singular.words().startsWith("singular at 0."), singular.words());
  }

  /** The wrist's centre in the flange of the arm of the log. */
  private static final Pose WRIST = Pose.at(0, 0, -0.065);

  private static Robots.Line wristTurn(SerialArm arm, double[] start, double lean) {
    ChainMotion motion = arm.motion();
    motion.moveTo(start);
    double[] axis = motion.axis(4);
    double[] other = motion.axis(3);
    // Leant about the fourth axis, the turn misses the straight wrist.
    Vec3 fifth = new Vec3(axis[0], axis[1], axis[2]);
    Vec3 fourth = new Vec3(other[0], other[1], other[2]);
    Vec3 turn = fifth.plus(fourth.cross(fifth).times(lean)).unit().times(-1);
    return new Robots.Line(motion.flangePose().times(WRIST), STILL, turn, 0.6);
  }

  /** Near the straight wrist two joints swing by half a turn, but none jumps. */
  @Test
  void passesNearASingularityWithoutAJump() throws IOException {
    SerialArm arm = Robots.logged(Pose.IDENTITY);
    double[] start = {0.3, 0.4, 1.2, -0.5, 0.3, -0.4};
    Robots.Line line = wristTurn(arm, start, 0.05);
    Followed followed =
        assertInstanceOf(Followed.class, PathFollower.follow(arm, line, WRIST, start));
    assertTrue(followed.leastCondition() < 0.02, "near: " + followed.leastCondition());
    assertEquals(0.3, followed.leastConditionAt(), 0.01);
    JointPathSampler sampler = followed.path().sampler();
    double[] q = new double[6];
    double[] q1 = new double[6];
    double[] before = start.clone();
    double most = 0;
    for (int i = 0; i <= 6000; i++) {
      assertEquals(Outcome.FOLLOWED, sampler.at(0.6 * i / 6000, q, q1, new double[6]));
      for (int k = 0; k < 6; k++) {
        assertEquals(before[k], q[k], 0.02);
      }
      most = Math.max(most, Math.abs(q1[3]));
      System.arraycopy(q, 0, before, 0, 6);
    }
    assertTrue(Math.abs(q[3] - start[3]) > 2.5, "the fourth joint swings by " + q[3]);
    assertTrue(most > 30, "and fast: " + most);
  }

  @Test
  void saysWhereTheReachEnds() {
    Scara scara = Robots.scara(Pose.IDENTITY, Robot.HANGING);
    Pose from = new Pose(new Vec3(0, 0.5, -0.1), Robot.HANGING.rotation());
    Robots.Line line = new Robots.Line(from, new Vec3(1, 0, 0), STILL, 0.5);
    OutOfReach out =
        assertInstanceOf(OutOfReach.class, PathFollower.follow(scara, line, Pose.IDENTITY));
    assertEquals(Math.sqrt(0.36 - 0.25), out.at(), 1e-8);
    assertEquals(0.5, out.worstAt(), EXACT);
    assertEquals(Math.hypot(0.5, 0.5) - 0.6, out.why().measure(), EXACT);
    assertTrue(out.words().contains("both arms stretched"), out.words());
  }

  @Test
  void saysWhereASearchedArmDoesNotReach() {
    SerialArm arm = Robots.offsetWrist();
    double[] start = {0.3, 0.4, 1.2, 0.5, 0.8, -0.4};
    Pose from = arm.flangeAt(start).orElseThrow();
    Robots.Line line = new Robots.Line(from, new Vec3(0, 0, 1), STILL, 2);
    OutOfReach out =
        assertInstanceOf(OutOfReach.class, PathFollower.follow(arm, line, Pose.IDENTITY, start));
    assertEquals(Cause.NOT_FOUND, out.why().cause());
    assertTrue(out.at() > 0.05 && out.at() < 1.5, out.words());
    assertEquals(2, out.worstAt(), 0.01);
  }

  @Test
  void saysThatTheToolCannotLean() {
    Scara scara = Robots.scara(Pose.IDENTITY, Robot.HANGING);
    Pose from = new Pose(new Vec3(0, 0.4, -0.1), Robot.HANGING.rotation());
    Robots.Line line = new Robots.Line(from, STILL, new Vec3(1, 0, 0), 0.5);
    OutOfReach out =
        assertInstanceOf(OutOfReach.class, PathFollower.follow(scara, line, Pose.IDENTITY));
    assertEquals(Cause.CANNOT_LEAN, out.why().cause());
    assertEquals(0.5, out.why().measure(), EXACT);
    assertEquals(0, out.at(), 1e-5);
  }

  /** A parabola that leaves the range by a tenth of a millimetre over a stretch of 2 cm. */
  @Test
  void findsAStopPassedBetweenKnots() {
    Gantry gantry = Robots.gantry(Pose.IDENTITY, Pose.IDENTITY);
    PathCurve curve =
        new PathCurve() {
          @Override
          public double length() {
            return 1;
          }

          @Override
          public void at(double s, double[] out) {
            Arrays.fill(out, 0);
            double u = s - 0.37;
            double[] x = {s, 0.5001 - u * u, 0, 1, 0, 0, 0, 1, -2 * u, 0, 0, 0, 0, 0, -2};
            System.arraycopy(x, 0, out, 0, x.length);
          }
        };
    PastLimit past =
        assertInstanceOf(PastLimit.class, PathFollower.follow(gantry, curve, Pose.IDENTITY));
    assertEquals("y", past.joint());
    assertEquals(0.36, past.at(), 1e-6);
    assertEquals(0.37, past.worstAt(), 1e-6);
    assertEquals(1e-4, past.beyond(), EXACT);
    assertEquals(0.5001, past.value(), EXACT);
  }

  @Test
  void saysWhichJointIsPastItsStopAtTheStart() {
    Gantry gantry = Robots.gantry(Pose.IDENTITY, Pose.IDENTITY);
    Robots.Line line = new Robots.Line(Pose.at(0, 0.7, 0.1), new Vec3(1, 0, 0), STILL, 1);
    PastLimit past =
        assertInstanceOf(PastLimit.class, PathFollower.follow(gantry, line, Pose.IDENTITY));
    assertEquals("y", past.joint());
    assertEquals(0, past.at());
    assertEquals(0.2, past.beyond(), EXACT);
    assertTrue(past.words().contains("joint y passes its stop"), past.words());
  }

  /** An endless joint counts its turns. */
  @Test
  void endlessJointIsNotWrapped() {
    Gantry gantry =
        new Gantry(
            Optional.of(Robots.range(-1, 1)),
            Optional.empty(),
            Optional.empty(),
            Optional.of(JointLimits.NONE),
            Pose.IDENTITY,
            Pose.IDENTITY,
            OptionalDouble.empty());
    Robots.Line line = new Robots.Line(Pose.IDENTITY, STILL, new Vec3(0, 0, 1), 9);
    Followed followed =
        assertInstanceOf(Followed.class, PathFollower.follow(gantry, line, Pose.IDENTITY));
    double[] q = new double[2];
    followed.path().sampler().at(9, q, new double[2], new double[2]);
    assertEquals(9, q[1], EXACT);
    assertEquals(JointKind.CONTINUOUS, gantry.joints().get(1).kind());
  }

  @Test
  void refusesWhatIsNoPath() {
    Gantry gantry = Robots.gantry(Pose.IDENTITY, Pose.IDENTITY);
    Robots.Line none = new Robots.Line(Pose.IDENTITY, STILL, STILL, 0);
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> PathFollower.follow(gantry, none, Pose.IDENTITY))
            .getMessage();
    assertTrue(message != null && message.contains("curve"), message);
  }

  /** A straight slide that allocates nothing itself. */
  private static PathCurve slide(Case c) {
    double[] flat = new double[25];
    level(c, 0).at(0, flat);
    return new PathCurve() {
      @Override
      public double length() {
        return c.length;
      }

      @Override
      public void at(double s, double[] out) {
        System.arraycopy(flat, 0, out, 0, out.length);
        for (int i = 0; i < 3; i++) {
          out[i] += s * flat[7 + i];
        }
      }
    };
  }

  @ParameterizedTest
  @MethodSource("cases")
  void samplingAllocatesNothing(Case c) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    Followed followed =
        assertInstanceOf(Followed.class, PathFollower.follow(c.robot, slide(c), GRIP, c.start));
    JointPathSampler sampler = followed.path().sampler();
    double[][] q = new double[3][c.start.length];
    sampler.at(0, q[0], q[1], q[2]);
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < 1000; i++) {
      sampler.at(c.length * i / 1000, q[0], q[1], q[2]);
    }
    long booked = threads.getCurrentThreadAllocatedBytes() - before;
    assertTrue(booked < ALLOCATION_NOISE, "bytes allocated: " + booked);
  }

  @Test
  void saysThatThePathBeginsOutOfReach() {
    Scara scara = Robots.scara(Pose.IDENTITY, Robot.HANGING);
    Pose from = new Pose(new Vec3(0, 0.7, -0.1), Robot.HANGING.rotation());
    Robots.Line line = new Robots.Line(from, new Vec3(0, 1, 0), STILL, 0.2);
    OutOfReach out =
        assertInstanceOf(OutOfReach.class, PathFollower.follow(scara, line, Pose.IDENTITY));
    assertEquals(0, out.at());
    assertEquals(0.3, out.why().measure(), EXACT);
    assertEquals(0.2, out.worstAt(), EXACT);
    Robots.Line away = new Robots.Line(Pose.at(3, 0, 0), new Vec3(0, 1, 0), STILL, 0.2);
    OutOfReach searched =
        assertInstanceOf(
            OutOfReach.class, PathFollower.follow(Robots.offsetWrist(), away, Pose.IDENTITY));
    assertEquals(Cause.NOT_FOUND, searched.why().cause());
  }
}
