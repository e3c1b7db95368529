package io.github.holdpath.sim.motion.route;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.joint.JointFault;
import io.github.holdpath.sim.motion.joint.JointOutcome;
import io.github.holdpath.sim.motion.joint.JointStart;
import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.robot.Scara;
import io.github.holdpath.sim.robot.SerialArm;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class JointMoveTest {
  private static final double FREE = Double.POSITIVE_INFINITY;
  private static final Quaternion DOWN = Robot.HANGING.rotation();
  private static final MoveLimits LIMITS = new MoveLimits(2, 10, 200, 6, 40, 900);
  private static final MoveLimits NONE = new MoveLimits(FREE, FREE, FREE, FREE, FREE, FREE);

  /** What a sum of a few roundings leaves. */
  private static final double ALGEBRA = 1e-12;

  /** A crest that is searched for is found to a few roundings; ten times that of a sum. */
  private static final double SEARCHED = 1e-11;

  /** Poses asked for by the task: a nanometre. */
  private static final double MEETS = 1e-9;

  private static Pose down(double x, double y, double z, double yaw) {
    return new Pose(new Vec3(x, y, z), Quaternion.ofRpy(0, 0, yaw).times(DOWN));
  }

  private static RouteStep.Move along(int i, Pose to, MoveLimits limits, double override) {
    return new RouteStep.Move("route/" + i, "", MoveShape.JOINTS, to, limits, 0, override);
  }

  private static RouteStep.Move line(int i, Pose to) {
    return new RouteStep.Move("route/" + i, "", to, LIMITS);
  }

  private static JointOutcome follow(Robot robot, LawKind law, Pose start, RouteStep... steps) {
    List<RouteStep> all = new ArrayList<>(List.of(new RouteStep.Take("route/1", 0.1)));
    all.addAll(List.of(steps));
    return JointRoute.follow(
        robot, JointRobots.GRIP, new Route(start, law, all), JointStart.any(robot));
  }

  private static JointTrack track(Robot robot, LawKind law, Pose start, RouteStep... steps) {
    JointOutcome outcome = follow(robot, law, start, steps);
    return assertInstanceOf(JointTrack.class, outcome, outcome.toString());
  }

  /** Robots with two poses of the grip that each reaches. */
  private record Case(Robot robot, Pose from, Pose to) {}

  private static List<Case> cases() {
    Robot arm = JointRobots.endlessArm();
    return List.of(
        new Case(JointRobots.gantry(FREE, FREE), down(0.5, -0.4, 0.3, 0), down(0.7, 0.5, 0.5, 1)),
        new Case(JointRobots.scara(6, 60), down(0.5, -0.4, 0.05, 0), down(0.45, 0.5, 0.1, 1)),
        new Case(JointRobots.delta(), down(-0.2, 0.05, -0.95, 0), down(0.2, -0.1, -0.8, 2)),
        new Case(
            arm,
            arm.flangeAt(-0.8, 0.4, 1.0, 0.3, 0.9, 2.9).orElseThrow().times(JointRobots.GRIP),
            arm.flangeAt(1.1, 0.2, 1.3, -0.5, 0.6, -2.9).orElseThrow().times(JointRobots.GRIP)));
  }

  private static double[] norms(double[] s) {
    return new double[] {
      Flat.norm(s, MotionState.VELOCITY),
      Flat.norm(s, MotionState.ACCELERATION),
      Flat.norm(s, MotionState.ANGULAR_VELOCITY),
      Flat.norm(s, MotionState.ANGULAR_ACCELERATION)
    };
  }

  @Test
  void goesFromPoseToPoseWithAllJointsInProportion() {
    for (Case c : cases()) {
      for (LawKind law : LawKind.values()) {
        JointTrack track = track(c.robot(), law, c.from(), along(2, c.to(), LIMITS, 1));
        List<MotionPiece> pieces = track.motion().pieces();
        MotionPiece last = pieces.get(pieces.size() - 1);
        double[] s = new double[MotionState.SIZE];
        last.state(last.to(), s);
        Pose end = MotionState.of(s).pose();
        assertEquals(0, end.position().minus(c.to().position()).norm(), MEETS);
        assertEquals(0, end.rotation().angleTo(c.to().rotation()), 10 * MEETS); // acos of near 1
        assertEquals(0, norms(s)[0], MEETS);
        List<double[]> walked = new ArrayList<>();
        track.visit((piece, t, q, qd, qdd) -> walked.add(q.clone()));
        double[] q0 = walked.get(0);
        double[] q1 = walked.get(walked.size() - 1);
        int most = 0;
        for (int k = 0; k < q0.length; k++) {
          most = Math.abs(q1[k] - q0[k]) > Math.abs(q1[most] - q0[most]) ? k : most;
        }
        for (double[] q : walked) {
          double u = (q[most] - q0[most]) / (q1[most] - q0[most]);
          for (int k = 0; k < q.length; k++) {
            assertEquals(q0[k] + u * (q1[k] - q0[k]), q[k], ALGEBRA);
          }
        }
      }
    }
  }

  @Test
  void keepsEveryLimitAndMeetsOne() {
    for (Case c : cases()) {
      for (LawKind law : LawKind.values()) {
        JointTrack track = track(c.robot(), law, c.from(), along(2, c.to(), LIMITS, 1));
        assertTrue(track.slowings().isEmpty(), track.slowings().toString());
        double[] use = {0};
        double[] s = new double[MotionState.SIZE];
        List<RobotJoint> joints = c.robot().joints();
        track.visit(
            (piece, t, q, qd, qdd) -> {
              piece.state(t, s);
              double[] n = norms(s);
              use[0] = Math.max(use[0], Math.max(n[0] / 2, n[1] / 10));
              use[0] = Math.max(use[0], Math.max(n[2] / 6, n[3] / 40));
              for (int k = 0; k < q.length; k++) {
                JointLimits l = joints.get(k).limits();
                use[0] = Math.max(use[0], Math.abs(qd[k]) / l.speed());
                use[0] = Math.max(use[0], Math.abs(qdd[k]) / l.acceleration());
              }
            });
        assertTrue(use[0] <= 1 + SEARCHED, law + " " + use[0]);
        MotionSegment m = track.motion().segments().get(0);
        assertTrue(
            m.peakSpeed() <= 2 * (1 + SEARCHED) && m.peakAcceleration() <= 10 * (1 + SEARCHED));
        if (law.boundsJerk()) {
          use[0] = Math.max(use[0], Math.max(m.peakJerk() / 200, m.peakTurnJerk() / 900));
          assertTrue(use[0] <= 1 + SEARCHED, law + " jerk " + use[0]);
        }
        // Samples 1 ms apart miss a crest by a little.
        assertTrue(use[0] > 0.999, c.robot() + " " + law + " " + use[0]);
      }
    }
  }

  @Test
  void statesAreEachOthersDerivativesAndJerksThoseOfTheStates() {
    double h = 1e-5;
    for (Case c : cases()) {
      JointTrack track = track(c.robot(), LawKind.CYCLOIDAL, c.from(), along(2, c.to(), LIMITS, 1));
      double jerk = 0;
      double turnJerk = 0;
      for (MotionPiece piece : track.motion().pieces()) {
        for (int i = 1; i < 200 && !piece.still(); i++) {
          double t = piece.from() + (piece.to() - piece.from()) * i / 200;
          double[] a = new double[MotionState.SIZE];
          double[] b = new double[MotionState.SIZE];
          double[] s = new double[MotionState.SIZE];
          piece.state(t - h, a);
          piece.state(t + h, b);
          piece.state(t, s);
          double[] third = new double[6];
          for (int k = 0; k < 3; k++) {
            // Second order differences of values of about 1: their error is below 1e-6 of rates.
            int p = MotionState.POSITION + k;
            int v = MotionState.VELOCITY + k;
            int acc = MotionState.ACCELERATION + k;
            int w = MotionState.ANGULAR_VELOCITY + k;
            int alpha = MotionState.ANGULAR_ACCELERATION + k;
            assertEquals((b[p] - a[p]) / (2 * h), s[v], 1e-6);
            assertEquals((b[v] - a[v]) / (2 * h), s[acc], 1e-5);
            assertEquals((b[w] - a[w]) / (2 * h), s[alpha], 1e-4);
            third[k] = (b[acc] - a[acc]) / (2 * h);
            third[3 + k] = (b[alpha] - a[alpha]) / (2 * h);
          }
          Quaternion turned =
              MotionState.of(b)
                  .pose()
                  .rotation()
                  .times(MotionState.of(a).pose().rotation().inverse());
          int w = MotionState.ANGULAR_VELOCITY;
          assertEquals(turned.x() * Math.signum(turned.w()) / h, s[w], 1e-5);
          jerk = Math.max(jerk, Flat.norm(third, 0));
          turnJerk = Math.max(turnJerk, Flat.norm(third, 3));
        }
      }
      MotionSegment m = track.motion().segments().get(0);
      assertEquals(1, jerk / m.peakJerk(), 1e-3, c.robot().toString());
      assertEquals(1, turnJerk / m.peakTurnJerk(), 1e-3, c.robot().toString());
    }
  }

  @Test
  void aGantryGoesAsALineDoes() {
    // The grip is off the axis that turns, so a turn would lead it along a bend.
    Pose from = down(0.5, -0.4, 0.3, 0.3);
    Pose to = down(0.7, 0.5, 0.5, 0.3);
    for (LawKind law : LawKind.values()) {
      Motion joint =
          track(JointRobots.gantry(FREE, FREE), law, from, along(2, to, LIMITS, 0.6)).motion();
      Motion straight =
          track(
                  JointRobots.gantry(FREE, FREE),
                  law,
                  from,
                  new RouteStep.Move("route/2", "", MoveShape.LINE, to, LIMITS, 0, 0.6))
              .motion();
      assertEquals(straight.duration(), joint.duration(), ALGEBRA);
      assertEquals(straight.pieces().size(), joint.pieces().size());
      double[] a = new double[MotionState.SIZE];
      double[] b = new double[MotionState.SIZE];
      for (int i = 0; i < joint.pieces().size(); i++) {
        MotionPiece one = joint.pieces().get(i);
        MotionPiece other = straight.pieces().get(i);
        double middle = (one.from() + one.to()) / 2;
        one.state(middle, a);
        other.state(middle, b);
        assertArrayEquals(b, a, SEARCHED * 100);
        assertEquals(other.distance(middle), one.distance(middle), SEARCHED);
      }
      MotionSegment m = joint.segments().get(0);
      MotionSegment n = straight.segments().get(0);
      assertEquals(n.length(), m.length(), ALGEBRA);
      assertEquals(n.turn(), m.turn(), ALGEBRA);
      assertEquals(n.peakAcceleration(), m.peakAcceleration(), SEARCHED * 10);
    }
  }

  /** A joint that swings alone leads along a circle: by hand. */
  @Test
  void aShoulderAloneSwingsOnACircle() {
    JointLimits wide = JointRobots.range(3, 2, 10);
    Scara robot =
        new Scara(
            0.5, 0.4, wide, wide, wide, wide, Robot.HANGING, Pose.IDENTITY, OptionalDouble.empty());
    Pose from = robot.flangeAt(-0.6, 0.9, -0.1, 0.2).orElseThrow().times(JointRobots.GRIP);
    Pose to = robot.flangeAt(0.9, 0.9, -0.1, 0.2).orElseThrow().times(JointRobots.GRIP);
    JointTrack track = track(robot, LawKind.TRAPEZOID, from, along(2, to, NONE, 1));
    MotionSegment m = track.motion().segments().get(0);
    double radius = Math.hypot(from.position().x(), from.position().y());
    assertEquals(1.5 * radius, m.length(), MEETS);
    assertEquals(1.5, m.turn(), MEETS);
    // 1.5 rad at 2 rad/s and 10 rad/s^2: 1.5/2 + 2/10 s; at 2 rad/s just before braking both count.
    assertEquals(0.95, m.to() - m.from(), MEETS);
    assertEquals(2 * radius, m.peakSpeed(), MEETS);
    assertEquals(radius * Math.hypot(10, 4), m.peakAcceleration(), MEETS * 10);
    assertEquals(10, m.peakTurnAcceleration(), MEETS * 10);
  }

  @Test
  void walksOnThroughLinesAndMovesAlongTheJoints() {
    Pose a = down(0.5, -0.4, 0.05, 0);
    Pose b = down(0.45, 0.5, 0.1, 1);
    for (LawKind law : LawKind.values()) {
      JointTrack track =
          track(
              JointRobots.scara(1.5, 15),
              law,
              a,
              line(2, down(0.5, -0.3, 0.1, 0.2)),
              along(3, b, LIMITS, 1),
              new RouteStep.Wait("route/4", 0.05),
              line(5, down(0.55, 0.3, 0.1, 1)),
              along(6, a, LIMITS, 0.5));
      assertTrue(!track.slowings().isEmpty(), "the lines must be slowed for the joints");
      double[][] before = {null, null};
      double[] time = {0};
      track.visit(
          (piece, t, q, qd, qdd) -> {
            if (before[0] != null) {
              double dt = t - time[0];
              for (int k = 0; k < q.length; k++) {
                // Steps of 1 ms at up to 15 rad/s^2; 2e-9 for iterations.
                double jump = q[k] - before[0][k] - dt * (qd[k] + before[1][k]) / 2;
                assertEquals(0, jump, 2e-9 + 15 * dt * dt);
              }
            }
            before[0] = q.clone();
            before[1] = qd.clone();
            time[0] = t;
          });
      assertEquals(track.motion().duration(), time[0], ALGEBRA);
      assertArrayEquals(track.start(), before[0], MEETS);
    }
  }

  @Test
  void takesTheNearestPostureAndTheShorterWayRound() {
    SerialArm arm = JointRobots.endlessArm();
    double[] from = {-0.8, 0.4, 1.0, 0.3, 0.9, 2.9};
    double[] to = {0.5, 0.6, 1.2, -0.2, 0.7, -2.9};
    Pose start = arm.flangeAt(from).orElseThrow().times(JointRobots.GRIP);
    Pose target = arm.flangeAt(to).orElseThrow().times(JointRobots.GRIP);
    List<OptionalDouble> near = new ArrayList<>();
    for (double q : from) {
      near.add(OptionalDouble.of(q));
    }
    Route route = new Route(start, LawKind.S_CURVE, List.of(along(1, target, LIMITS, 1)));
    JointTrack track =
        assertInstanceOf(
            JointTrack.class,
            JointRoute.follow(arm, JointRobots.GRIP, route, new JointStart(near)));
    double[][] last = {null};
    track.visit((piece, t, q, qd, qdd) -> last[0] = q.clone());
    to[5] += 2 * Math.PI;
    assertArrayEquals(from, track.start(), MEETS);
    assertArrayEquals(to, last[0], MEETS);
  }

  @Test
  void overrideIsTheSameMotionSlower() {
    for (Case c : cases()) {
      Motion full =
          track(c.robot(), LawKind.S_CURVE, c.from(), along(2, c.to(), LIMITS, 1)).motion();
      Motion half =
          track(c.robot(), LawKind.S_CURVE, c.from(), along(2, c.to(), LIMITS, 0.5)).motion();
      assertEquals(2 * (full.duration() - 0.1), half.duration() - 0.1, ALGEBRA);
      MotionSegment m = full.segments().get(0);
      MotionSegment n = half.segments().get(0);
      assertEquals(m.peakSpeed() / 2, n.peakSpeed(), SEARCHED);
      assertEquals(m.peakAcceleration() / 4, n.peakAcceleration(), SEARCHED * 10);
      assertEquals(m.peakJerk() / 8, n.peakJerk(), SEARCHED * 200);
    }
  }

  @Test
  void keepsLimitsOnDrawnMovesBetweenItsSamples() {
    SplittableRandom random = new SplittableRandom(16);
    SerialArm arm = JointRobots.endlessArm();
    int followed = 0;
    for (int i = 0; i < 40; i++) {
      Pose a = drawn(arm, random);
      Pose b = drawn(arm, random);
      LawKind law = LawKind.values()[i % LawKind.values().length];
      if (follow(arm, law, a, along(2, b, LIMITS, 1)) instanceof JointTrack track) {
        followed++;
        double[] s = new double[MotionState.SIZE];
        for (MotionPiece piece : track.motion().pieces()) {
          for (int k = 0; k <= 1000; k++) {
            piece.state(piece.from() + (piece.to() - piece.from()) * k / 1000, s);
            double[] n = norms(s);
            double use = Math.max(Math.max(n[0] / 2, n[1] / 10), Math.max(n[2] / 6, n[3] / 40));
            assertTrue(use <= 1 + SEARCHED, i + ": " + use);
          }
        }
      }
    }
    assertTrue(followed >= 30, "only " + followed);
  }

  private static Pose drawn(SerialArm arm, SplittableRandom random) {
    double[] q = new double[6];
    for (int k = 0; k < 6; k++) {
      q[k] = random.nextDouble(-2.5, 2.5);
    }
    return arm.flangeAt(q).orElseThrow().times(JointRobots.GRIP);
  }

  private static JointFault fault(JointOutcome outcome) {
    return assertInstanceOf(JointFault.class, outcome);
  }

  @Test
  void saysWhatKeepsItFromTheTarget() {
    Scara robot = JointRobots.scara(6, 60);
    Pose start = down(0.5, -0.4, 0.05, 0);
    JointFault far =
        fault(follow(robot, LawKind.TRAPEZOID, start, along(2, down(1.5, 0, 0, 0), LIMITS, 1)));
    assertEquals("route/2", far.pointer());
    assertTrue(far.words().contains("out of the robot's reach"), far.words());
    JointFault before =
        fault(
            follow(
                robot,
                LawKind.TRAPEZOID,
                start,
                line(2, down(1.5, 0, 0.05, 0)),
                along(3, start, LIMITS, 1)));
    assertEquals("route/2", before.pointer());
    JointFault stop =
        fault(follow(robot, LawKind.TRAPEZOID, start, along(2, down(-0.7, -0.1, 9, 0), LIMITS, 1)));
    assertTrue(stop.words().contains("passes its upper stop"), stop.words());
    JointFault atStart =
        fault(follow(robot, LawKind.TRAPEZOID, down(2, 0, 0, 0), along(2, start, LIMITS, 1)));
    assertEquals("", atStart.pointer());
  }

  @Test
  void saysWhatBoundsNothing() {
    Pose start = down(0.5, -0.4, 0.05, 0);
    RouteStep move = along(2, down(0.45, 0.5, 0.1, 1), NONE, 1);
    JointFault speed = fault(follow(JointRobots.scara(FREE, 9), LawKind.S_CURVE, start, move));
    assertTrue(speed.words().contains("nothing bounds the speed"), speed.words());
    JointFault jump = fault(follow(JointRobots.scara(9, FREE), LawKind.S_CURVE, start, move));
    assertTrue(jump.words().contains("nothing bounds the acceleration"), jump.words());
    JointFault jerk = fault(follow(JointRobots.scara(9, 9), LawKind.S_CURVE, start, move));
    assertTrue(jerk.words().contains("nothing bounds the jerk"), jerk.words());
    track(JointRobots.scara(9, 9), LawKind.TRAPEZOID, start, move);
  }

  @Test
  void refusesWhatOnlyACallerCanGetWrong() {
    Pose start = down(0.5, -0.4, 0.05, 0);
    Pose end = down(0.45, 0.5, 0.1, 1);
    Route route = new Route(start, LawKind.TRAPEZOID, List.of(along(1, end, LIMITS, 1)));
    String words = assertThrows(IllegalArgumentException.class, route::motion).toString();
    assertTrue(words.contains("route/1") && words.contains("needs a robot"), words);
    RouteStep blended = new RouteStep.Move("route/2", "", MoveShape.JOINTS, end, LIMITS, 0.05, 1);
    assertThrows(
        IllegalArgumentException.class,
        () -> follow(JointRobots.scara(6, 60), LawKind.TRAPEZOID, start, blended));
  }
}
