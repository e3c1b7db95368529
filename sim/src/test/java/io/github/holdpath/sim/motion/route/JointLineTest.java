package io.github.holdpath.sim.motion.route;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.ArcPath;
import io.github.holdpath.sim.path.BlendPath;
import io.github.holdpath.sim.path.CurveBounds;
import io.github.holdpath.sim.path.LineCurve;
import io.github.holdpath.sim.path.PathChain;
import io.github.holdpath.sim.path.PathCurve;
import io.github.holdpath.sim.path.PathPiece;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.robot.Robot;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

class JointLineTest {
  /** What geometry is promised to, m, rad or relative. */
  private static final double EXACT = 1e-9;

  /** A sum of a few roundings. */
  private static final double ALGEBRA = 1e-12;

  /** Differences of eighth order over a hundredth of the way in which a curve changes. */
  private static final double DIFFERENCE = 1e-9;

  static JointLine line(Robot robot, double[] from, double[] to) {
    Pose start = robot.flangeAt(from).orElseThrow().times(JointRobots.GRIP);
    return JointLine.of(
        new JointWay(new JointStates(robot, JointRobots.GRIP, from, to, start.rotation())));
  }

  private static double[] at(PathCurve curve, double s) {
    double[] p = new double[PathPoint.SIZE];
    curve.at(s, p);
    return p;
  }

  private static Pose pose(double[] p) {
    return new Pose(new Vec3(p[0], p[1], p[2]), new Quaternion(p[3], p[4], p[5], p[6]));
  }

  private static double size(double[] p, int at) {
    return Math.sqrt(p[at] * p[at] + p[at + 1] * p[at + 1] + p[at + 2] * p[at + 2]);
  }

  /** The shoulder of a scara swings alone: a circle about its axis, and the grip turns with it. */
  private static JointLine swing() {
    return line(JointRobots.scara(), new double[] {-0.6, 0.9, -0.1, 0.2}, swung());
  }

  private static double[] swung() {
    return new double[] {0.9, 0.9, -0.1, 0.2};
  }

  private static ArcPath arc(JointLine swing) {
    return ArcPath.about(
        pose(at(swing, 0)),
        Vec3.ZERO,
        new Vec3(0, 0, 1),
        1.5,
        pose(at(swing, swing.length())).rotation());
  }

  @Test
  void aShoulderAloneIsAnArc() {
    JointLine swing = swing();
    ArcPath arc = arc(swing);
    assertEquals(arc.length(), swing.length(), ALGEBRA);
    for (int i = 0; i <= 50; i++) {
      double s = arc.length() * i / 50;
      assertArrayEquals(at(arc, s), at(swing, s), EXACT);
    }
    assertEquals(1 / arc.radius(), swing.bounds(0, swing.length()).maxCurvature(), EXACT);
  }

  @Test
  void aBlendIntoAShoulderSwingIsThatIntoAnArc() {
    JointLine swing = swing();
    ArcPath arc = arc(swing);
    Pose corner = pose(at(swing, 0));
    for (Vec3 way : List.of(new Vec3(0.1, 0.3, 0), new Vec3(0, 0, 0.4), new Vec3(0.3, -0.1, 0.2))) {
      PathCurve line =
          LineCurve.between(new Pose(corner.position().minus(way), corner.rotation()), corner);
      BlendPath one = BlendPath.between(line, swing, 0.12);
      BlendPath other = BlendPath.between(line, arc, 0.12);
      assertEquals(other.length(), one.length(), EXACT);
      assertEquals(other.missed(), one.missed(), EXACT);
      assertTrue(one.reach() <= 0.12 * (1 + ALGEBRA));
      for (int i = 0; i <= 40; i++) {
        double[] a = at(other, other.length() * i / 40);
        double[] b = at(one, one.length() * i / 40);
        for (int k = 0; k < a.length; k++) {
          // Third derivatives are of the size of curvature squared.
          assertEquals(a[k], b[k], EXACT * Math.max(1, Math.abs(a[k])));
        }
      }
    }
  }

  @Test
  void itsParameterIsTheWay() {
    GaussIntegratorFactory rules = new GaussIntegratorFactory();
    for (JointRobots.Case c : JointRobots.cases()) {
      JointLine line = line(c.robot(), c.from(), c.to());
      double[] p = new double[PathPoint.SIZE];
      double sum = 0;
      for (int i = 0; i < 64; i++) {
        GaussIntegrator rule = rules.legendre(20, i / 64.0, (i + 1) / 64.0);
        sum +=
            rule.integrate(
                u -> {
                  line.way().states().path(u, p);
                  return size(p, PathPoint.TANGENT);
                });
      }
      assertEquals(sum, line.length(), EXACT * sum);
      double[] q = new double[c.from().length];
      for (int i = 0; i <= 20; i++) {
        double s = line.length() * i / 20;
        assertEquals(1, size(at(line, s), PathPoint.TANGENT), ALGEBRA);
        line.joints(s, 0, 0, q, q.clone(), q.clone());
        Pose there = c.robot().flangeAt(q).orElseThrow().times(JointRobots.GRIP);
        assertEquals(0, there.position().minus(pose(at(line, s)).position()).norm(), ALGEBRA);
      }
      line.joints(line.length(), 0, 0, q, q.clone(), q.clone());
      assertArrayEquals(c.to(), q, ALGEBRA);
    }
  }

  @Test
  void derivativesAgreeWithDifferences() {
    double[] weights = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};
    int[][] pairs = {
      {PathPoint.POSITION, PathPoint.TANGENT, 0},
      {PathPoint.TANGENT, PathPoint.SECOND, 1},
      {PathPoint.SECOND, PathPoint.THIRD, 2},
      {PathPoint.TURN, PathPoint.TURN_SECOND, 2},
      {PathPoint.TURN_SECOND, PathPoint.TURN_THIRD, 3}
    };
    for (JointRobots.Case c : JointRobots.cases()) {
      JointLine line = line(c.robot(), c.from(), c.to());
      CurveBounds b = line.bounds(0, line.length());
      double scale =
          1 / (1 / line.length() + b.maxCurvature() + b.maxTurn() + Math.sqrt(b.maxTurnSecond()));
      double h = scale / 100;
      for (int j = 1; j < 20; j++) {
        double s = line.length() * j / 20;
        double[] d = new double[PathPoint.SIZE];
        for (int i = 1; i <= 4; i++) {
          double[] next = at(line, s + i * h);
          double[] before = at(line, s - i * h);
          for (int k = 0; k < d.length; k++) {
            d[k] += weights[i - 1] * (next[k] - before[k]) / h;
          }
        }
        double[] p = at(line, s);
        for (int[] pair : pairs) {
          for (int k = 0; k < 3; k++) {
            double miss = (d[pair[0] + k] - p[pair[1] + k]) * Math.pow(scale, pair[2]);
            assertEquals(0, miss, DIFFERENCE, c.robot() + " " + pair[1]);
          }
        }
      }
    }
  }

  /** Both ends of each blend, and a curve of each robot between two lines. */
  @Test
  void goesOnThroughBlendsWithoutAJump() {
    for (JointRobots.Case c : JointRobots.cases()) {
      JointLine middle = line(c.robot(), c.from(), c.to());
      Pose a = pose(at(middle, 0));
      Pose b = pose(at(middle, middle.length()));
      Vec3 up = new Vec3(0, 0, 0.2);
      PathCurve first = LineCurve.between(new Pose(a.position().minus(up), a.rotation()), a);
      PathCurve last = LineCurve.between(b, new Pose(b.position().minus(up), b.rotation()));
      PathChain chain = (PathChain) PathChain.build(List.of(first, middle, last), 0.08, 0.06);
      double scale = 0.01;
      for (int i = 1; i < chain.pieces().size(); i++) {
        PathPiece piece = chain.pieces().get(i);
        double[] x = new double[PathPoint.SIZE];
        double[] y = new double[PathPoint.SIZE];
        chain.at(i - 1, piece.start(), x);
        chain.at(i, piece.start(), y);
        for (int k = 0; k < PathPoint.THIRD; k++) {
          double power = k < PathPoint.TANGENT ? 1 : k < PathPoint.SECOND ? 1 : scale;
          assertEquals(0, (x[k] - y[k]) * power, EXACT, c.robot() + " piece " + i);
        }
      }
    }
  }

  @Test
  void turnsInPlaceWhereTheOriginStands() {
    Robot robot = JointRobots.gantry();
    Pose onAxis = Pose.at(0, 0, 0.1);
    double[] from = {0.1, 0.2, 0.3, 0.4};
    double[] to = {0.1, 0.2, 0.3, 1.9};
    Pose start = robot.flangeAt(from).orElseThrow().times(onAxis);
    JointLine line =
        JointLine.of(new JointWay(new JointStates(robot, onAxis, from, to, start.rotation())));
    assertEquals(1.5, line.length(), ALGEBRA);
    double[] p = at(line, 0.7);
    assertEquals(0, size(p, PathPoint.TANGENT), 0);
    assertEquals(1, size(p, PathPoint.TURN), ALGEBRA);
    assertEquals(0, line.bounds(0, 1.5).maxCurvature(), 0);
  }

  /** A folded arm that opens: the grip goes in along a line and out again, and stands between. */
  @Test
  void refusesAWayThatStandsStill() {
    Robot robot = JointRobots.evenScara();
    double[] from = {-0.5, 1, -0.1, 0};
    double[] to = {0.5, -1, -0.1, 0};
    Pose start = robot.flangeAt(from).orElseThrow();
    JointWay way = new JointWay(new JointStates(robot, Pose.IDENTITY, from, to, start.rotation()));
    assertTrue(JointLine.stands(way));
    assertThrows(IllegalArgumentException.class, () -> JointLine.of(way));
    assertFalse(JointLine.stands(swing().way()));
  }

  @Test
  void boundsHoldAllAlong() {
    SplittableRandom random = new SplittableRandom(63);
    Robot arm = JointRobots.arm();
    int looked = 0;
    for (int i = 0; i < 60; i++) {
      double[] from = JointRobots.draw(random);
      double[] to = JointRobots.draw(random);
      Pose start = arm.flangeAt(from).orElseThrow().times(JointRobots.GRIP);
      JointWay way =
          new JointWay(new JointStates(arm, JointRobots.GRIP, from, to, start.rotation()));
      if (JointLine.stands(way)) {
        continue;
      }
      looked++;
      JointLine line = JointLine.of(way);
      CurveBounds b = line.bounds(0, line.length());
      for (int k = 0; k <= 3000; k++) {
        double[] p = at(line, line.length() * k / 3000);
        assertTrue(size(p, PathPoint.SECOND) <= b.maxCurvature() * (1 + EXACT));
        assertTrue(size(p, PathPoint.TURN) <= b.maxTurn() * (1 + EXACT));
        assertTrue(size(p, PathPoint.TURN_SECOND) <= b.maxTurnSecond() * (1 + EXACT));
      }
    }
    assertTrue(looked >= 40, "only " + looked);
  }
}
