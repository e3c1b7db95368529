package io.github.holdpath.sim.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ArcPathTest {
  /** Algebra in doubles on numbers of about 1. */
  private static final double ALGEBRA = 1e-12;

  /** Differences of eighth order, with the rounding of three orders. */
  private static final double DIFFERENCE = 1e-10;

  private static final Vec3 UP = new Vec3(0, 0, 1);
  private static final int DRAWS = 500;

  @Test
  void quarterCircleByHand() {
    double r = 2;
    double h = Math.sqrt(0.5);
    Quaternion end = Quaternion.ofAxisAngle(new Vec3(1, 0, 0), 1);
    ArcPath arc =
        ArcPath.through(
            Pose.at(r, 0, 5), new Vec3(r * h, r * h, 5), new Pose(new Vec3(0, r, 5), end));
    assertEquals(r, arc.radius(), ALGEBRA);
    assertEquals(Math.PI / 2, arc.angle(), ALGEBRA);
    assertEquals(Math.PI, arc.length(), ALGEBRA);
    double[] p = Draws.at(arc, Math.PI / 3);
    assertVector(r * Math.cos(Math.PI / 6), r * Math.sin(Math.PI / 6), 5, p, PathPoint.POSITION);
    assertVector(-0.5, Math.cos(Math.PI / 6), 0, p, PathPoint.TANGENT);
    assertVector(-Math.cos(Math.PI / 6) / r, -0.5 / r, 0, p, PathPoint.SECOND);
    assertVector(0.5 / 4, -Math.cos(Math.PI / 6) / 4, 0, p, PathPoint.THIRD);
    assertVector(1 / Math.PI, 0, 0, p, PathPoint.TURN);
    assertVector(0, 0, 0, p, PathPoint.TURN_SECOND);
    assertVector(0, 0, 0, p, PathPoint.TURN_THIRD);
    assertEquals(Math.cos(1.0 / 6), p[PathPoint.ROTATION], ALGEBRA);
  }

  @Test
  void goesTheLongWayThroughItsPoint() {
    ArcPath arc = ArcPath.through(Pose.at(1, 0, 0), new Vec3(-1, 0, 0), Pose.at(0, 1, 0));
    assertEquals(1.5 * Math.PI, arc.angle(), ALGEBRA);
    assertEquals(-1, arc.axis().z(), ALGEBRA);
    assertVector(-1, 0, 0, Draws.at(arc, Math.PI), PathPoint.POSITION);
  }

  @Test
  void passesItsThreePoints() {
    SplittableRandom random = new SplittableRandom(31);
    for (int i = 0; i < DRAWS; i++) {
      Pose from = Draws.pose(random);
      Vec3 via = Draws.point(random);
      Pose to = new Pose(Draws.point(random), Draws.near(from.rotation(), 3, random));
      ArcPath arc = ArcPath.through(from, via, to);
      Vec3 end = to.position();
      // Angles that are nearly straight make the circle large and lose digits with it.
      double tolerance = ALGEBRA * (1 + arc.radius());
      assertVector(
          end.x(), end.y(), end.z(), Draws.at(arc, arc.length()), PathPoint.POSITION, tolerance);
      double half = Math.asin(Math.min(1, via.minus(from.position()).norm() / 2 / arc.radius()));
      double first = 2 * half * arc.radius();
      double second = 2 * Math.PI * arc.radius() - first;
      double near =
          Math.min(
              away(via, Draws.at(arc, Math.min(first, arc.length()))),
              away(via, Draws.at(arc, Math.min(second, arc.length()))));
      // The arc sine keeps half of the digits where the point lies across the whole circle.
      assertEquals(0, near, 1e-6 * (1 + arc.radius()));
      assertEquals(arc.radius(), via.minus(arc.centre()).norm(), 1e-9 * (1 + arc.radius()));
      assertEquals(0, Draws.end(arc).rotation().angleTo(to.rotation()), ALGEBRA);
    }
  }

  private static double away(Vec3 point, double[] p) {
    return new Vec3(p[0], p[1], p[2]).minus(point).norm();
  }

  @Test
  void derivativesAgreeWithDifferences() {
    SplittableRandom random = new SplittableRandom(32);
    for (int i = 0; i < DRAWS; i++) {
      Pose from = Draws.pose(random);
      Quaternion end = Draws.near(from.rotation(), 3, random);
      ArcPath arc =
          ArcPath.about(
              from, Draws.point(random), Draws.point(random), random.nextDouble(-6, 6), end);
      double scale = Draws.scale(arc, CurveBounds.of(arc, 0, arc.length()));
      double s = random.nextDouble(0.2, 0.8) * arc.length();
      assertEquals(0, Draws.differenceError(arc, s, scale), DIFFERENCE);
    }
  }

  @Test
  void goesAboutItsAxisEitherWayAndMoreThanOnce() {
    Pose from = Pose.at(2, 0, 3);
    ArcPath back = ArcPath.about(from, Vec3.ZERO, UP, -Math.PI / 2, from.rotation());
    assertVector(0, -2, 3, Draws.at(back, back.length()), PathPoint.POSITION);
    ArcPath twice = ArcPath.about(from, Vec3.ZERO, UP.times(7), 5 * Math.PI, from.rotation());
    assertEquals(10 * Math.PI, twice.length(), 1e-11);
    assertVector(-2, 0, 3, Draws.at(twice, twice.length()), PathPoint.POSITION);
    assertEquals(new Vec3(0, 0, 3), back.centre());
  }

  @Test
  void boundsAreExact() {
    Quaternion end = Quaternion.ofAxisAngle(UP, 1.2);
    ArcPath arc = ArcPath.about(Pose.at(4, 0, 0), Vec3.ZERO, UP, 1, end);
    CurveBounds bounds = CurveBounds.of(arc, 0, arc.length());
    assertEquals(1, bounds.maxTangent(), ALGEBRA);
    assertEquals(0.25, bounds.maxCurvature(), ALGEBRA);
    assertEquals(0.3, bounds.maxTurn(), ALGEBRA);
    assertEquals(0, bounds.maxTurnSecond(), ALGEBRA);
  }

  @Test
  void refusesPointsThatMakeNoCircle() {
    Pose from = Pose.at(0, 0, 0);
    Pose to = Pose.at(1, 0, 0);
    refuses("straight line", from, new Vec3(0.5, 4e-7, 0), to);
    refuses("straight line", from, new Vec3(2, 0, 0), to);
    refuses("is its start", from, new Vec3(0, 0, 0), to);
    refuses("is its end", from, new Vec3(1, 0, 0), to);
    refuses("full circle", from, new Vec3(0.5, 0.5, 0), from);
    Pose half = new Pose(to.position(), Quaternion.ofAxisAngle(UP, Math.PI));
    refuses("180 degrees", from, new Vec3(0.5, 0.5, 0), half);
    assertTrue(ArcPath.fault(from, new Vec3(0.5, 1e-5, 0), to).isEmpty());
  }

  private static void refuses(String words, Pose from, Vec3 via, Pose to) {
    assertTrue(ArcPath.fault(from, via, to).orElseThrow().contains(words));
    String message =
        assertThrows(IllegalArgumentException.class, () -> ArcPath.through(from, via, to))
            .getMessage();
    assertTrue(message != null && message.contains(words), message);
  }

  @Test
  void refusesAxesThatMakeNoArc() {
    Pose from = Pose.at(1, 0, 0);
    refusesAbout("no direction", from, Vec3.ZERO, 1, Quaternion.IDENTITY);
    refusesAbout("on its own axis", Pose.at(0, 0, 2), UP, 1, Quaternion.IDENTITY);
    refusesAbout("angle of the arc is 0", from, UP, 0, Quaternion.IDENTITY);
    refusesAbout("finite", from, UP, Double.NaN, Quaternion.IDENTITY);
    refusesAbout("180 degrees", from, UP, 1, Quaternion.ofAxisAngle(UP, Math.PI));
  }

  private static void refusesAbout(
      String words, Pose from, Vec3 axis, double angle, Quaternion end) {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> ArcPath.about(from, Vec3.ZERO, axis, angle, end))
            .getMessage();
    assertTrue(message != null && message.contains(words), message);
  }

  private static void assertVector(double x, double y, double z, double[] p, int at) {
    assertVector(x, y, z, p, at, ALGEBRA);
  }

  private static void assertVector(
      double x, double y, double z, double[] p, int at, double tolerance) {
    assertEquals(x, p[at], tolerance);
    assertEquals(y, p[at + 1], tolerance);
    assertEquals(z, p[at + 2], tolerance);
  }
}
