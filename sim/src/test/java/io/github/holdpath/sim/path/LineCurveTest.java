package io.github.holdpath.sim.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LineCurveTest {
  /** Algebra in doubles on numbers of about 1. */
  private static final double ALGEBRA = 1e-12;

  private static final double DIFFERENCE = 1e-10;

  @Test
  void goesByTheDistance() {
    Quaternion end = Quaternion.ofAxisAngle(new Vec3(0, 0, 1), 0.5);
    LineCurve line = LineCurve.between(Pose.IDENTITY, new Pose(new Vec3(3, 4, 0), end));
    assertEquals(5, line.length());
    double[] p = Draws.at(line, 2.5);
    assertEquals(1.5, p[0], ALGEBRA);
    assertEquals(2, p[1], ALGEBRA);
    assertEquals(0.6, p[PathPoint.TANGENT], ALGEBRA);
    assertEquals(0.1, p[PathPoint.TURN + 2], ALGEBRA);
    assertEquals(Math.sin(0.125), p[PathPoint.ROTATION + 3], ALGEBRA);
    CurveBounds bounds = CurveBounds.of(line, 0, 5);
    assertEquals(0, bounds.maxCurvature());
    assertEquals(0.1, bounds.maxTurn(), ALGEBRA);
  }

  @Test
  void goesByTheAngleWhereItOnlyTurns() {
    Quaternion end = Quaternion.ofAxisAngle(new Vec3(0, 1, 0), 0.5);
    LineCurve line = LineCurve.between(Pose.at(1, 2, 3), new Pose(new Vec3(1, 2, 3), end));
    assertEquals(0.5, line.length(), ALGEBRA);
    double[] p = Draws.at(line, 0.2);
    assertEquals(2, p[1]);
    assertEquals(0, Draws.size(p, PathPoint.TANGENT));
    assertEquals(1, p[PathPoint.TURN + 1], ALGEBRA);
    assertEquals(Math.sin(0.1), p[PathPoint.ROTATION + 2], ALGEBRA);
  }

  @Test
  void derivativesAgreeWithDifferences() {
    SplittableRandom random = new SplittableRandom(61);
    for (int i = 0; i < 200; i++) {
      Pose from = Draws.pose(random);
      Quaternion end = Draws.near(from.rotation(), 3, random);
      LineCurve line = LineCurve.between(from, new Pose(Draws.point(random), end));
      double scale = Draws.scale(line, CurveBounds.of(line, 0, line.length()));
      double s = random.nextDouble(0.1, 0.9) * line.length();
      assertEquals(0, Draws.differenceError(line, s, scale), DIFFERENCE);
    }
  }
}
