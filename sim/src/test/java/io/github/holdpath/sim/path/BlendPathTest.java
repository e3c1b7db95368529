package io.github.holdpath.sim.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

class BlendPathTest {
  private static final int CORNERS = 2000;
  private static final int DRAWS = 150;

  /** Algebra in doubles on numbers of about 1. */
  private static final double ALGEBRA = 1e-12;

  /** The way is exact to 1e-12 of the whole; steps of sharp corners are down to 1e-5 of it. */
  private static final double DIFFERENCE = 1e-7;

  /** What the way is exact to, as a share of the whole. */
  private static final double WAY = 1e-9;

  /** A blend with what is needed to follow it by its own parameter. */
  private record Drawn(Corner corner, BlendPath blend) {
    BlendShape shape() {
      return BlendCheck.shape(corner, blend.zone(), blend.depthBefore(), blend.depthAfter());
    }

    double scale() {
      return Draws.scale(blend, blend.bounds(0, blend.length()));
    }
  }

  @Test
  void neverLeavesTheZone() {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < CORNERS; i++) {
      Drawn drawn = i % 4 == 0 ? turns(random) : moves(random);
      BlendPath blend = drawn.blend;
      BlendShape shape = drawn.shape();
      double worst =
          IntStream.rangeClosed(0, 100)
              .mapToDouble(k -> shape.away(Draws.at(blend, blend.length() * k / 100)))
              .max()
              .orElseThrow();
      assertTrue(worst <= blend.zone() * (1 + ALGEBRA), () -> "leaves the zone in draw");
      assertEquals(blend.zone(), blend.reach(), WAY * blend.zone());
      assertTrue(blend.missed() < blend.reach());
    }
  }

  @Test
  void takesOverFromItsNeighboursWithoutAJump() {
    SplittableRandom random = new SplittableRandom(42);
    for (int i = 0; i < DRAWS; i++) {
      Drawn drawn = i % 4 == 0 ? turns(random) : moves(random);
      BlendPath blend = drawn.blend;
      double scale = drawn.scale();
      PathCurve before = drawn.corner.before();
      double[] leaving = Draws.at(before, before.length() - blend.depthBefore());
      assertEquals(0, Draws.jump(leaving, Draws.at(blend, 0), scale), ALGEBRA);
      double[] entering = Draws.at(drawn.corner.after(), blend.depthAfter());
      for (int k = 3; k < 7; k++) {
        entering[k] *= blend.signAfter();
      }
      assertEquals(0, Draws.jump(entering, Draws.at(blend, blend.length()), scale), ALGEBRA);
    }
  }

  @Test
  void derivativesAgreeWithDifferences() {
    SplittableRandom random = new SplittableRandom(43);
    for (int i = 0; i < DRAWS; i++) {
      Drawn drawn = i % 4 == 0 ? turns(random) : moves(random);
      double s = random.nextDouble(0.1, 0.9) * drawn.blend.length();
      assertEquals(0, Draws.differenceError(drawn.blend, s, drawn.scale()), DIFFERENCE);
    }
  }

  @Test
  void itsParameterIsTheLengthOfTheWay() {
    SplittableRandom random = new SplittableRandom(44);
    for (int i = 0; i < DRAWS; i++) {
      Drawn drawn = i % 4 == 0 ? turns(random) : moves(random);
      BlendShape shape = drawn.shape();
      double u = random.nextDouble();
      double way = way(shape, 0, u);
      double length = way + way(shape, u, 1);
      assertEquals(length, drawn.blend.length(), WAY * length);
      double[] there = new double[PathPoint.SIZE];
      shape.at(u, new double[BlendShape.WORK], there);
      double[] actual = Draws.at(drawn.blend, way);
      assertEquals(0, Draws.distance(there, actual, PathPoint.POSITION), WAY * length);
      assertEquals(0, Draws.distance(there, actual, PathPoint.ROTATION), WAY);
      int rate = shape.turns() ? PathPoint.TURN : PathPoint.TANGENT;
      assertEquals(1, Draws.size(actual, rate), ALGEBRA);
    }
  }

  /** Length of the way by a quadrature of another library, 20 points in each of 64 parts. */
  private static double way(BlendShape shape, double from, double to) {
    double[] work = new double[BlendShape.WORK];
    double[] point = new double[PathPoint.SIZE];
    GaussIntegratorFactory rules = new GaussIntegratorFactory();
    double sum = 0;
    for (int i = 0; i < 64; i++) {
      double a = from + (to - from) * i / 64;
      double b = from + (to - from) * (i + 1) / 64;
      GaussIntegrator rule = rules.legendre(20, a, b);
      sum +=
          rule.integrate(
              u -> {
                shape.at(u, work, point);
                return shape.speed(point);
              });
    }
    return sum;
  }

  @Test
  void boundsHoldOnTheWholeBlend() {
    SplittableRandom random = new SplittableRandom(45);
    for (int i = 0; i < DRAWS; i++) {
      Drawn drawn = i % 4 == 0 ? turns(random) : moves(random);
      BlendPath blend = drawn.blend;
      CurveBounds bounds = blend.bounds(0, blend.length());
      double curvature = 0;
      double turnSecond = 0;
      for (int k = 0; k <= 1000; k++) {
        double[] p = Draws.at(blend, blend.length() * k / 1000);
        curvature = Math.max(curvature, Draws.size(p, PathPoint.SECOND));
        turnSecond = Math.max(turnSecond, Draws.size(p, PathPoint.TURN_SECOND));
        assertTrue(Draws.size(p, PathPoint.TURN) <= bounds.maxTurn() * (1 + WAY));
      }
      assertTrue(curvature <= bounds.maxCurvature() * (1 + WAY));
      assertTrue(turnSecond <= bounds.maxTurnSecond() * (1 + WAY));
    }
  }

  @Test
  void squareCornerOfTwoLinesByHand() {
    double r = 0.1;
    BlendPath blend = BlendPath.between(lineX(1, 0), lineY(1, 1), r);
    // Weight at the middle for 90 degrees: 0.7 (1/2) + 0.3 (11/16); the way from the corner there
    // is half of it along each line.
    double middle = r / 2 * (0.7 / 2 + 0.3 * 11 / 16);
    double[] p = Draws.at(blend, blend.length() / 2);
    assertEquals(1 - middle, p[0], ALGEBRA);
    assertEquals(middle, p[1], ALGEBRA);
    assertEquals(middle * Math.sqrt(2), blend.missed(), ALGEBRA);
    assertEquals(r, blend.reach(), ALGEBRA);
    assertEquals(r, blend.depthBefore(), ALGEBRA);
    // A circle of the same zone bends by 1/r; continuous curvature costs a little more.
    double curvature = blend.bounds(0, blend.length()).maxCurvature();
    assertTrue(curvature > 1 / r && curvature < 1.1 / r, () -> "peak " + curvature);
  }

  @Test
  void straightOnStaysOnTheLine() {
    BlendPath blend = BlendPath.between(lineX(1, 0), lineX(2, 1), 0.2);
    assertEquals(0.4, blend.length(), ALGEBRA);
    assertEquals(0, blend.missed(), ALGEBRA);
    for (int i = 0; i <= 10; i++) {
      double s = 0.04 * i;
      double[] p = Draws.at(blend, s);
      assertEquals(0.8 + s, p[0], ALGEBRA);
      assertEquals(0, Math.abs(p[1]) + Math.abs(p[2]), ALGEBRA);
      assertEquals(0, Draws.size(p, PathPoint.SECOND), 1e-9);
    }
  }

  @Test
  void runsBackwardsAlongTheSameCurve() {
    Vec3 a = new Vec3(0.3, -0.2, 0.1);
    Vec3 c = new Vec3(1, 2, 3);
    Vec3 b = new Vec3(1.5, 1, 3.4);
    Quaternion qa = Quaternion.ofRpy(0.3, 0.4, 0.5);
    Quaternion qc = Quaternion.ofRpy(-0.3, 0.9, 1.5);
    Quaternion qb = Quaternion.ofRpy(0.1, -0.5, 2);
    PathCurve one = LineCurve.between(new Pose(a, qa), new Pose(c, qc));
    PathCurve two = LineCurve.between(new Pose(c, qc), new Pose(b, qb));
    PathCurve oneBack = LineCurve.between(new Pose(c, qc), new Pose(a, qa));
    PathCurve twoBack = LineCurve.between(new Pose(b, qb), new Pose(c, qc));
    BlendPath there = BlendPath.between(one, two, 0.3);
    BlendPath back = BlendPath.between(twoBack, oneBack, 0.3);
    double s = 0.3 * there.length();
    double[] p = Draws.at(there, s);
    double[] q = Draws.at(back, back.length() - s);
    assertEquals(0, Draws.distance(p, q, PathPoint.POSITION), ALGEBRA);
    assertEquals(0, Draws.distance(p, q, PathPoint.SECOND), 1e-10);
    for (int k = 0; k < 3; k++) {
      assertEquals(-p[PathPoint.TURN + k], q[PathPoint.TURN + k], 1e-10);
    }
  }

  @Test
  void refusesMovesThatDoNotMeet() {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> BlendPath.between(lineX(1, 0), lineY(1, 1.1), 0.1))
            .getMessage();
    assertTrue(message != null && message.contains("after must begin"), message);
  }

  @Test
  void refusesAReversalWithItsReason() {
    PathCurve back = LineCurve.between(Pose.at(1, 0, 0), Pose.at(0, 0.001, 0));
    String message =
        assertThrows(
                IllegalArgumentException.class, () -> BlendPath.between(lineX(1, 0), back, 0.1))
            .getMessage();
    assertTrue(message != null && message.contains("turns back by 179.9 degrees"), message);
  }

  private static PathCurve lineX(double to, double from) {
    return LineCurve.between(Pose.at(from, 0, 0), Pose.at(to, 0, 0));
  }

  private static PathCurve lineY(double to, double x) {
    return LineCurve.between(Pose.at(x, 0, 0), Pose.at(x, to, 0));
  }

  private static Drawn moves(SplittableRandom random) {
    PathCurve before = Draws.move(Draws.pose(random), random);
    return drawn(before, Draws.move(Draws.end(before), random), random);
  }

  private static Drawn turns(SplittableRandom random) {
    PathCurve before = Draws.turn(Draws.pose(random), random);
    return drawn(before, Draws.turn(Draws.end(before), random), random);
  }

  /** A blend of any zone that fits; drawn corners are not sharp enough to be refused. */
  private static Drawn drawn(PathCurve before, PathCurve after, SplittableRandom random) {
    Corner corner = new Corner(before, after);
    double most = new BlendCheck(0, corner, 0).largest(before.length(), after.length());
    double zone = most * random.nextDouble(0.001, 1);
    return new Drawn(corner, BlendPath.between(before, after, zone));
  }
}
