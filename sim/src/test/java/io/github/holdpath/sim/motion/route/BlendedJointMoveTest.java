package io.github.holdpath.sim.motion.route;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.joint.JointFault;
import io.github.holdpath.sim.motion.joint.JointOutcome;
import io.github.holdpath.sim.motion.joint.JointStart;
import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.JointMotion;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.robot.Scara;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Moves along the joints between other moves, without a stop. */
class BlendedJointMoveTest {
  private static final double FREE = Double.POSITIVE_INFINITY;
  private static final MoveLimits LIMITS = new MoveLimits(1, 6, 120, 4, 30, 900);
  private static final MoveLimits NONE = new MoveLimits(FREE, FREE, 120, FREE, FREE, 900);
  private static final Vec3 UP = new Vec3(0, 0, 0.15);

  /** Limits are kept to this; maxima are searched for. */
  private static final double KEPT = 1 + 1e-6;

  private static final double MEETS = 1e-9;

  private static RouteStep.Move move(
      int i, MoveShape shape, Pose to, MoveLimits limits, double blend, double override) {
    return new RouteStep.Move("route/" + i, "", shape, to, limits, blend, override);
  }

  private static Pose pose(Robot robot, double... q) {
    return robot.flangeAt(q).orElseThrow().times(JointRobots.GRIP);
  }

  private static Pose by(Pose pose, Vec3 way) {
    return new Pose(pose.position().plus(way), pose.rotation());
  }

  private static JointStart near(double... q) {
    List<OptionalDouble> start = new ArrayList<>();
    for (double value : q) {
      start.add(OptionalDouble.of(value));
    }
    return new JointStart(start);
  }

  /** Up by a line, over along the joints, down by a line. */
  private static Route route(
      JointRobots.Case c, LawKind law, MoveLimits along, double zone, double override) {
    Pose a = pose(c.robot(), c.from());
    Pose b = pose(c.robot(), c.to());
    return new Route(
        by(a, UP.times(-1)),
        law,
        List.of(
            move(1, MoveShape.LINE, a, LIMITS, zone, override),
            move(2, MoveShape.JOINTS, b, along, zone, override),
            move(3, MoveShape.LINE, by(b, UP.times(-1)), LIMITS, 0, override)));
  }

  private static JointTrack track(JointRobots.Case c, Route route) {
    JointOutcome outcome = JointRoute.follow(c.robot(), JointRobots.GRIP, route, near(c.from()));
    return assertInstanceOf(JointTrack.class, outcome, outcome.toString());
  }

  private static double norm(double[] s, int at) {
    return Flat.norm(s, at);
  }

  /** Looks four times between the samples of the walk; the largest use of any limit. */
  private static double use(JointRobots.Case c, JointTrack track, Route route) {
    List<RobotJoint> joints = c.robot().joints();
    JointMotion solver = new JointMotion(c.robot(), JointRobots.GRIP);
    int n = joints.size();
    double[] x = new double[n];
    double[] xd = new double[n];
    double[] xdd = new double[n];
    double[] s = new double[MotionState.SIZE];
    double[] use = {0};
    track.visit(
        (piece, t, q, qd, qdd) -> {
          for (int i = 0; i < 4 && !piece.still(); i++) {
            double at = Math.min(piece.to(), t + i * 0.25e-3);
            piece.state(at, s);
            MoveLimits l = ((RouteStep.Move) route.steps().get(piece.segment() - 1)).played();
            use[0] = Math.max(use[0], norm(s, MotionState.VELOCITY) / l.speed());
            use[0] = Math.max(use[0], norm(s, MotionState.ACCELERATION) / l.acceleration());
            use[0] = Math.max(use[0], norm(s, MotionState.ANGULAR_VELOCITY) / l.turnSpeed());
            double alpha = norm(s, MotionState.ANGULAR_ACCELERATION);
            use[0] = Math.max(use[0], alpha / l.turnAcceleration());
            if (piece instanceof JointedPiece known) {
              known.joints(at, x, xd, xdd);
            } else {
              System.arraycopy(q, 0, x, 0, n);
              assertEquals(JointMotion.Outcome.FOLLOWED, solver.solve(s, x, xd, xdd));
            }
            for (int k = 0; k < n; k++) {
              JointLimits own = joints.get(k).limits();
              use[0] = Math.max(use[0], Math.abs(xd[k]) / own.speed());
              use[0] = Math.max(use[0], Math.abs(xdd[k]) / own.acceleration());
            }
          }
        });
    return use[0];
  }

  @Test
  void keepsTheLimitsOfGripAndJoints() {
    for (JointRobots.Case c : JointRobots.cases()) {
      for (LawKind law : LawKind.values()) {
        for (MoveLimits along : List.of(LIMITS, NONE)) {
          Route route = route(c, law, along, 0.05, 1);
          JointTrack track = track(c, route);
          assertTrue(track.slowings().isEmpty(), track.slowings().toString());
          double use = use(c, track, route);
          assertTrue(use <= KEPT && use > 0.5, c.robot() + " " + law + " " + use);
        }
      }
    }
  }

  @Test
  void doesNotStopAndTakesLessTimeThanWithStops() {
    for (JointRobots.Case c : JointRobots.cases()) {
      for (LawKind law : List.of(LawKind.TRAPEZOID, LawKind.S_CURVE)) {
        Motion blended = track(c, route(c, law, LIMITS, 0.06, 1)).motion();
        Motion stopped = track(c, route(c, law, LIMITS, 0, 1)).motion();
        assertTrue(
            blended.duration() < stopped.duration(),
            c.robot() + " " + law + " " + blended.duration() + " " + stopped.duration());
        double[] s = new double[MotionState.SIZE];
        for (MotionPiece piece : blended.pieces()) {
          for (int i = 0; i <= 20; i++) {
            double t = piece.from() + (piece.to() - piece.from()) * i / 20;
            if (t > 0.1 && t < blended.duration() - 0.1) {
              piece.state(t, s);
              assertTrue(norm(s, MotionState.VELOCITY) > 0.05);
            }
          }
        }
      }
    }
  }

  @Test
  void jointsGoOnTheirLineInsideAndOnWithoutAJump() {
    for (JointRobots.Case c : JointRobots.cases()) {
      JointTrack track = track(c, route(c, LawKind.S_CURVE, LIMITS, 0.05, 1));
      double[][] before = {null, null, null};
      double[] time = {0};
      int[] inside = {0};
      double[] q0 = c.from();
      double[][] first = {null};
      track.visit(
          (piece, t, q, qd, qdd) -> {
            if (before[0] != null) {
              double dt = t - time[0];
              for (int k = 0; k < q.length; k++) {
                double mean = dt * (qd[k] + before[1][k]) / 2;
                double bend = dt * dt * (qdd[k] - before[2][k]) / 12;
                // Hermite's rule: what is left is of the order of dt^5 and of the iterations; at
                // borders of zones jerk jumps.
                assertEquals(0, q[k] - before[0][k] - mean + bend, 1e-7, c.robot() + " " + t);
                // Jerk of joints is finite: no jump of acceleration between samples 1 ms apart.
                assertEquals(before[2][k], qdd[k], 6, c.robot() + " at " + t);
              }
            }
            if (piece instanceof JointedPiece) {
              inside[0]++;
              first[0] = first[0] == null ? q.clone() : first[0];
              double u = (q[0] - q0[0]) / (first[0][0] - q0[0]);
              for (int k = 0; k < q.length; k++) {
                assertEquals(q0[k] + u * (first[0][k] - q0[k]), q[k], 100 * MEETS);
              }
            }
            before[0] = q.clone();
            before[1] = qd.clone();
            before[2] = qdd.clone();
            time[0] = t;
          });
      assertTrue(inside[0] > 50, "only " + inside[0]);
      assertEquals(track.motion().duration(), time[0], 1e-12);
    }
  }

  /** The same ends, with and without blends: the blend changes no branch. */
  @Test
  void endsInTheSamePostureAsWithStops() {
    for (JointRobots.Case c : JointRobots.cases()) {
      List<double[]> ends = new ArrayList<>();
      for (double zone : new double[] {0, 0.05}) {
        double[][] last = {null};
        track(c, route(c, LawKind.QUINTIC, LIMITS, zone, 1))
            .visit((piece, t, q, qd, qdd) -> last[0] = q.clone());
        ends.add(last[0]);
      }
      assertArrayEquals(ends.get(0), ends.get(1), 10 * MEETS);
    }
  }

  @Test
  void leavesTheMovesInTheZonesAlone() {
    for (JointRobots.Case c : JointRobots.cases()) {
      double zone = 0.05;
      Pose[] corners = {pose(c.robot(), c.from()), pose(c.robot(), c.to())};
      JointLine line = JointLineTest.line(c.robot(), c.from(), c.to());
      double[] q = new double[c.from().length];
      double[] s = new double[MotionState.SIZE];
      for (MotionPiece piece :
          track(c, route(c, LawKind.S_CURVE, LIMITS, zone, 1)).motion().pieces()) {
        for (int i = 0; i <= 20; i++) {
          piece.state(piece.from() + (piece.to() - piece.from()) * i / 20, s);
          Vec3 p = MotionState.of(s).pose().position();
          boolean free = true;
          for (Pose corner : corners) {
            free &= p.minus(corner.position()).norm() > zone * (1 + MEETS);
          }
          // Outside of both zones it is on the first line, on the last or on that of the joints.
          if (free) {
            double miss = Double.POSITIVE_INFINITY;
            for (Pose corner : corners) {
              Vec3 d = p.minus(corner.position());
              miss = Math.min(miss, Math.hypot(d.x(), d.y()));
            }
            if (piece instanceof JointedPiece known) {
              known.joints(
                  piece.from() + (piece.to() - piece.from()) * i / 20, q, q.clone(), q.clone());
              Pose there = pose(c.robot(), q);
              miss = there.position().minus(p).norm();
            }
            assertEquals(0, miss, MEETS);
          }
        }
      }
      assertTrue(line.length() > 2 * zone);
    }
  }

  @Test
  void overrideIsTheSameMotionSlower() {
    JointRobots.Case c = JointRobots.cases().get(1);
    Robot wide = JointRobots.scara(0.5, 0.4, 400, 4e4);
    JointRobots.Case free = new JointRobots.Case(wide, c.from(), c.to());
    Motion full = track(free, route(free, LawKind.S_CURVE, LIMITS, 0.05, 1)).motion();
    Motion half = track(free, route(free, LawKind.S_CURVE, LIMITS, 0.05, 0.5)).motion();
    assertEquals(2 * full.duration(), half.duration(), MEETS);
  }

  @Test
  void joinsTwoMovesAlongTheJoints() {
    Robot robot = JointRobots.scara();
    double[] a = {-0.8, 0.9, -0.1, 0.2};
    double[] b = {0, 1.2, -0.15, 0};
    double[] d = {0.8, 0.7, -0.1, 0.4};
    JointRobots.Case c = new JointRobots.Case(robot, a, d);
    for (LawKind law : LawKind.values()) {
      Route route =
          new Route(
              pose(robot, a),
              law,
              List.of(
                  move(1, MoveShape.JOINTS, pose(robot, b), LIMITS, 0.1, 1),
                  move(2, MoveShape.JOINTS, pose(robot, d), LIMITS, 0, 1)));
      JointTrack track = track(c, route);
      double use = use(c, track, route);
      assertTrue(use <= KEPT, law + " " + use);
      double[][] last = {null};
      track.visit((piece, t, q, qd, qdd) -> last[0] = q.clone());
      assertArrayEquals(d, last[0], MEETS);
    }
  }

  @Test
  void keepsLimitsOnDrawnRoutes() {
    SplittableRandom random = new SplittableRandom(71);
    Robot arm = JointRobots.arm();
    int followed = 0;
    for (int i = 0; i < 120; i++) {
      double[] from = JointRobots.draw(random);
      double[] to = new double[6];
      for (int k = 0; k < 6; k++) {
        to[k] = from[k] + random.nextDouble(-0.8, 0.8);
      }
      Pose a = pose(arm, from);
      Pose b = pose(arm, to);
      Vec3 way = new Vec3(random.nextDouble(-0.2, 0.2), random.nextDouble(-0.2, 0.2), 0.1);
      LawKind law = LawKind.values()[i % LawKind.values().length];
      double zone = random.nextDouble(0.01, 0.06);
      Route route =
          new Route(
              by(a, way),
              law,
              List.of(
                  move(1, MoveShape.LINE, a, LIMITS, zone, 1),
                  move(2, MoveShape.JOINTS, b, LIMITS, zone, random.nextDouble(0.4, 1)),
                  move(3, MoveShape.LINE, by(b, way), LIMITS, 0, 1)));
      JointRobots.Case c = new JointRobots.Case(arm, from, to);
      if (JointRoute.follow(arm, JointRobots.GRIP, route, near(from)) instanceof JointTrack track) {
        followed++;
        double use = use(c, track, route);
        assertTrue(use <= KEPT, i + ": " + use);
        assertTrue(track.slowings().isEmpty(), i + ": " + track.slowings());
      }
    }
    assertTrue(followed >= 40, "only " + followed);
  }

  private static JointFault fault(Robot robot, Route route, double[] from) {
    return assertInstanceOf(
        JointFault.class, JointRoute.follow(robot, JointRobots.GRIP, route, near(from)));
  }

  @Test
  void tellsTheLargestZoneThatFits() {
    JointRobots.Case c = JointRobots.cases().get(1);
    JointFault large = fault(c.robot(), route(c, LawKind.TRAPEZOID, LIMITS, 0.2, 1), c.from());
    assertEquals("route/1/blend", large.pointer());
    // The line is 150 mm long.
    assertTrue(large.words().contains("write \"150 mm\" or less"), large.words());
    track(c, route(c, LawKind.TRAPEZOID, LIMITS, 0.149, 1));
  }

  @Test
  void tellsEveryCornerThatCannotBeRounded() {
    JointRobots.Case c = JointRobots.cases().get(1);
    Pose a = pose(c.robot(), c.from());
    Pose b = pose(c.robot(), c.to());
    Pose below = by(b, UP.times(-1));
    Route route =
        new Route(
            by(a, UP.times(-1)),
            LawKind.TRAPEZOID,
            List.of(
                move(1, MoveShape.LINE, a, LIMITS, 0.2, 1),
                move(2, MoveShape.JOINTS, b, LIMITS, 0.05, 1),
                move(3, MoveShape.LINE, below, LIMITS, 0.05, 1),
                move(4, MoveShape.LINE, turned(below, 0.3), LIMITS, 0.05, 1),
                move(5, MoveShape.LINE, turned(below, 0.5), LIMITS, 0, 1)));
    List<JointFault> all = fault(c.robot(), route, c.from()).all();
    assertEquals(
        List.of("route/1/blend", "route/3/blend", "route/4/blend"),
        all.stream().map(JointFault::pointer).toList());
    assertTrue(all.get(0).words().contains("write \"150 mm\" or less"), all.get(0).words());
    assertTrue(all.get(1).words().contains("one move goes on"), all.get(1).words());
    assertTrue(all.get(2).words().contains("both moves only turn"), all.get(2).words());
  }

  private static Pose turned(Pose pose, double angle) {
    Quaternion by = Quaternion.ofAxisAngle(new Vec3(0, 0, 1), angle);
    return new Pose(pose.position(), by.times(pose.rotation()));
  }

  @Test
  void saysWhyABlendCannotBe() {
    Robot seven = JointRobots.seven();
    double[] from = {0.1, 0.5, 0.2, 0.9, 0.1, 0.7, 0};
    double[] to = {0.5, 0.7, 0.1, 1.1, 0.2, 0.6, 0.3};
    Route spare = route(new JointRobots.Case(seven, from, to), LawKind.TRAPEZOID, LIMITS, 0.05, 1);
    JointFault many = fault(seven, spare, from);
    assertEquals("route/1/blend", many.pointer());
    assertTrue(many.words().contains("more than six joints"), many.words());

    JointRobots.Case c = JointRobots.cases().get(1);
    Pose a = pose(c.robot(), c.from());
    Pose b = pose(c.robot(), c.to());
    Route far =
        new Route(
            a,
            LawKind.TRAPEZOID,
            List.of(
                move(1, MoveShape.LINE, by(a, new Vec3(2, 0, 0)), LIMITS, 0.05, 1),
                move(2, MoveShape.JOINTS, b, LIMITS, 0, 1)));
    JointFault reach = fault(c.robot(), far, c.from());
    assertEquals("route/1", reach.pointer());
    assertTrue(reach.words().contains("out of the robot's reach on its way"), reach.words());

    // The elbow may not end on its side of the start, so it passes the stretched arm.
    JointLimits wide = JointRobots.range(3, 4, 40);
    Robot even =
        new Scara(
            0.4,
            0.4,
            wide,
            new JointLimits(-1.5, 1.1, 4, 40, FREE),
            wide,
            wide,
            Robot.HANGING,
            Pose.IDENTITY,
            OptionalDouble.empty());
    double[] folds = {-0.5, 1, -0.1, 0};
    Pose start = even.flangeAt(folds).orElseThrow();
    Pose end = even.flangeAt(0.6, -1.2, -0.1, 0).orElseThrow();
    Route stands =
        new Route(
            start,
            LawKind.TRAPEZOID,
            List.of(
                move(1, MoveShape.JOINTS, end, LIMITS, 0.05, 1),
                move(2, MoveShape.LINE, by(end, UP), LIMITS, 0, 1)));
    JointFault still =
        assertInstanceOf(
            JointFault.class, JointRoute.follow(even, Pose.IDENTITY, stands, near(folds)));
    assertEquals("route/1/blend", still.pointer());
    assertTrue(still.words().contains("all but stands still"), still.words());
  }

  @Test
  void saysWhatBoundsNothing() {
    JointRobots.Case c = JointRobots.cases().get(1);
    MoveLimits none = new MoveLimits(FREE, FREE, FREE, FREE, FREE, FREE);
    JointFault jerk = fault(c.robot(), route(c, LawKind.S_CURVE, none, 0.05, 1), c.from());
    assertEquals("route/2", jerk.pointer());
    assertTrue(jerk.words().contains("nothing bounds the jerk"), jerk.words());
  }
}
