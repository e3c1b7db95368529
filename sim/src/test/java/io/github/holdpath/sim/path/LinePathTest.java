package io.github.holdpath.sim.path;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.SplittableRandom;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class LinePathTest {
  /** Algebra in doubles on numbers of about 1. */
  private static final double ALGEBRA = 1e-12;

  /** Step of a central difference: its own error is about the step squared. */
  private static final double STEP = 1e-5;

  private static final double DIFFERENCE = 1e-8;

  /** The other library takes an arc cosine near 1, which keeps half of the digits. */
  private static final double ARC_COSINE = 1e-7;

  private static final int DRAWS = 500;

  @Test
  void beginsAndEndsAtItsPoses() {
    SplittableRandom random = new SplittableRandom(21);
    for (int i = 0; i < DRAWS; i++) {
      LinePath path = draw(random);
      assertArrayEquals(MotionState.atRest(path.from()).toArray(), at(path, 0, 0, 0), ALGEBRA);
      assertArrayEquals(MotionState.atRest(path.to()).toArray(), at(path, 1, 0, 0), ALGEBRA);
    }
  }

  @Test
  void turnsAsAnIndependentRotationDoes() {
    SplittableRandom random = new SplittableRandom(22);
    for (int i = 0; i < DRAWS; i++) {
      LinePath path = draw(random);
      Rotation from = rotation(path.from().rotation());
      Rotation turn = rotation(path.to().rotation()).applyTo(from.revert());
      assertEquals(turn.getAngle(), path.angle(), ALGEBRA);
      double u = random.nextDouble();
      Vector3D axis = turn.getAxis(RotationConvention.VECTOR_OPERATOR);
      Rotation part = new Rotation(axis, u * turn.getAngle(), RotationConvention.VECTOR_OPERATOR);
      double[] s = at(path, u, 0, 0);
      Rotation actual = rotation(new Quaternion(s[3], s[4], s[5], s[6]));
      assertEquals(0, Rotation.distance(part.applyTo(from), actual), ARC_COSINE);
    }
  }

  @Test
  void takesTheShorterOfTheTwoArcs() {
    Pose from = Pose.IDENTITY;
    Quaternion quarter = Quaternion.ofAxisAngle(new Vec3(0, 0, 1), Math.PI / 2);
    LinePath path = LinePath.between(from, new Pose(Vec3.ZERO, quarter.negated()));
    assertEquals(Math.PI / 2, path.angle(), ALGEBRA);
    double[] middle = at(path, 0.5, 1, 0);
    assertEquals(Math.cos(Math.PI / 8), middle[MotionState.ROTATION], ALGEBRA);
    assertEquals(Math.sin(Math.PI / 8), middle[MotionState.ROTATION + 3], ALGEBRA);
    assertEquals(Math.PI / 2, middle[MotionState.ANGULAR_VELOCITY + 2], ALGEBRA);
    assertEquals(quarter.w(), path.to().rotation().w(), ALGEBRA);
  }

  @Test
  void turnsAboutAnAxisOfTheWorld() {
    Quaternion down = Quaternion.ofRpy(Math.PI, 0, 0);
    Quaternion turned = Quaternion.ofAxisAngle(new Vec3(0, 0, 1), 1).times(down);
    LinePath path = LinePath.between(new Pose(Vec3.ZERO, down), new Pose(Vec3.ZERO, turned));
    double[] s = at(path, 0.3, 2, 5);
    assertEquals(2, s[MotionState.ANGULAR_VELOCITY + 2], ALGEBRA);
    assertEquals(5, s[MotionState.ANGULAR_ACCELERATION + 2], ALGEBRA);
    assertEquals(0, s[MotionState.ANGULAR_VELOCITY], ALGEBRA);
    assertEquals(0, path.length());
  }

  @Test
  void ratesAgreeWithDifferences() {
    SplittableRandom random = new SplittableRandom(23);
    for (int i = 0; i < DRAWS; i++) {
      LinePath path = draw(random);
      double u = random.nextDouble(0.1, 0.9);
      double du = random.nextDouble(-2, 2);
      double ddu = random.nextDouble(-2, 2);
      double[] s = at(path, u, du, ddu);
      double[] before = after(path, u, du, ddu, -STEP);
      double[] next = after(path, u, du, ddu, STEP);
      double[] w = angularVelocity(s, before, next);
      for (int k = 0; k < 3; k++) {
        assertEquals(rate(before, next, k), s[MotionState.VELOCITY + k], DIFFERENCE);
        assertEquals(w[k], s[MotionState.ANGULAR_VELOCITY + k], DIFFERENCE);
        double a = rate(before, next, MotionState.VELOCITY + k);
        assertEquals(a, s[MotionState.ACCELERATION + k], DIFFERENCE);
        double al = rate(before, next, MotionState.ANGULAR_VELOCITY + k);
        assertEquals(al, s[MotionState.ANGULAR_ACCELERATION + k], DIFFERENCE);
      }
    }
  }

  @Test
  void tellsHalfATurn() {
    Pose half = new Pose(new Vec3(1, 0, 0), Quaternion.ofRpy(0, 0, Math.PI));
    Pose nearly = new Pose(Vec3.ZERO, Quaternion.ofRpy(0, 0, Math.PI - 2e-6));
    Pose within = new Pose(Vec3.ZERO, Quaternion.ofRpy(0, 0, Math.PI + 5e-7));
    assertTrue(LinePath.turnIsAmbiguous(Pose.IDENTITY, half));
    assertTrue(LinePath.turnIsAmbiguous(Pose.IDENTITY, within));
    assertFalse(LinePath.turnIsAmbiguous(Pose.IDENTITY, nearly));
    String message =
        assertThrows(IllegalArgumentException.class, () -> LinePath.between(Pose.IDENTITY, half))
            .getMessage();
    assertTrue(message != null && message.contains("180 degrees"), message);
  }

  @Test
  void takesRoundingForNoMove() {
    Quaternion q = Quaternion.ofRpy(0.3, 0.2, 0.1);
    Pose pose = new Pose(new Vec3(1, 2, 3), q);
    Pose rounded = new Pose(new Vec3(1 + 1e-15, 2, 3), q.negated());
    Pose near = new Pose(new Vec3(1 + 1e-9, 2, 3), q);
    assertTrue(LinePath.standsStill(pose, rounded));
    assertFalse(LinePath.standsStill(pose, near));
    assertThrows(IllegalArgumentException.class, () -> LinePath.between(pose, rounded));
    assertEquals(1e-9, LinePath.between(pose, near).length(), 1e-15);
    assertEquals(0, LinePath.between(pose, near).angle());
  }

  private static LinePath draw(SplittableRandom random) {
    return LinePath.between(pose(random), pose(random));
  }

  private static Pose pose(SplittableRandom random) {
    Vec3 p = new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
    return new Pose(
        p,
        Quaternion.ofRpy(
            random.nextDouble(-3, 3), random.nextDouble(-1.5, 1.5), random.nextDouble(-3, 3)));
  }

  private static double[] at(LinePath path, double u, double du, double ddu) {
    double[] s = new double[MotionState.SIZE];
    path.state(u, du, ddu, s);
    return s;
  }

  private static double[] after(LinePath path, double u, double du, double ddu, double t) {
    return at(path, u + t * (du + t * ddu / 2), du + t * ddu, ddu);
  }

  private static double rate(double[] before, double[] next, int at) {
    return (next[at] - before[at]) / (2 * STEP);
  }

  /** Vector part of {@code 2 dq/dt q^-1}. */
  private static double[] angularVelocity(double[] s, double[] before, double[] next) {
    double dw = rate(before, next, 3);
    double dx = rate(before, next, 4);
    double dy = rate(before, next, 5);
    double dz = rate(before, next, 6);
    return new double[] {
      2 * (-dw * s[4] + dx * s[3] - dy * s[6] + dz * s[5]),
      2 * (-dw * s[5] + dx * s[6] + dy * s[3] - dz * s[4]),
      2 * (-dw * s[6] - dx * s[5] + dy * s[4] + dz * s[3])
    };
  }

  private static Rotation rotation(Quaternion q) {
    // This library turns the other way with the same numbers.
    return new Rotation(q.w(), -q.x(), -q.y(), -q.z(), false);
  }
}
