package io.github.holdpath.dynamics.spatial;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.Expect;
import org.junit.jupiter.api.Test;

/** Vectors, poses, wrenches and the flat form of a motion state. */
class SpatialTest {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Y = new Vec3(0, 1, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);

  @Test
  void vectorProductIsRightHanded() {
    assertEquals(Z, X.cross(Y));
    assertEquals(X, Y.cross(Z));
    assertEquals(Y, Z.cross(X));
  }

  @Test
  void vectorProductIsSquareToBothAndAsLongAsTheParallelogram() {
    Draws draws = new Draws();
    for (int i = 0; i < 100; i++) {
      Vec3 a = draws.vector(3);
      Vec3 b = draws.vector(3);
      Vec3 c = a.cross(b);
      double scale = a.norm() * b.norm();
      assertEquals(0, c.dot(a), Expect.ALGEBRA * scale * a.norm());
      assertEquals(0, c.dot(b), Expect.ALGEBRA * scale * b.norm());
      double area2 = scale * scale - a.dot(b) * a.dot(b);
      assertEquals(area2, c.dot(c), Expect.ALGEBRA * scale * scale);
    }
  }

  @Test
  void unitKeepsDirectionAndRefusesZero() {
    Expect.near(new Vec3(0.6, 0, -0.8), new Vec3(3, 0, -4).unit(), Expect.ALGEBRA);
    assertThrows(IllegalArgumentException.class, Vec3.ZERO::unit);
  }

  @Test
  void vectorRefusesWhatIsNotFinite() {
    assertThrows(IllegalArgumentException.class, () -> new Vec3(Double.NaN, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Vec3(0, Double.POSITIVE_INFINITY, 0));
    assertThrows(IllegalArgumentException.class, () -> new Vec3(0, 0, Double.NEGATIVE_INFINITY));
  }

  @Test
  void posesChainLikeTheirFrames() {
    Draws draws = new Draws();
    for (int i = 0; i < 100; i++) {
      Pose ab = draws.pose();
      Pose bc = draws.pose();
      Vec3 p = draws.vector(2);
      Expect.near(ab.apply(bc.apply(p)), ab.times(bc).apply(p), 10 * Expect.ALGEBRA);
      Expect.near(p, ab.inverse().apply(ab.apply(p)), 10 * Expect.ALGEBRA);
    }
  }

  @Test
  void poseCarriesAPointByRotationThenPosition() {
    Pose pose = new Pose(new Vec3(10, 0, 0), Quaternion.ofAxisAngle(Z, Math.PI / 2));
    Expect.near(new Vec3(10, 1, 0), pose.apply(X), 10 * Expect.ALGEBRA);
  }

  @Test
  void forceAwayFromTheOriginTurns() {
    Wrench atB = new Wrench(new Vec3(0, 0, 5), Vec3.ZERO);
    Wrench atA = atB.seenFrom(Pose.at(2, 0, 0));
    assertEquals(new Vec3(0, 0, 5), atA.force());
    assertEquals(new Vec3(0, -10, 0), atA.moment());
  }

  /** Force times velocity plus moment times turning rate is the same about every point. */
  @Test
  void powerDoesNotDependOnTheFrame() {
    Draws draws = new Draws();
    for (int i = 0; i < 200; i++) {
      Pose ab = draws.pose();
      Wrench inB = new Wrench(draws.vector(50), draws.vector(5));
      Vec3 velocityOfB = draws.vector(3);
      Vec3 turningInB = draws.vector(6);
      Vec3 turningInA = ab.rotation().rotate(turningInB);
      // Velocity of the body's point at A's origin, by the rule for rigid bodies.
      Vec3 velocityOfA = ab.rotation().rotate(velocityOfB).minus(turningInA.cross(ab.position()));
      Wrench inA = inB.seenFrom(ab);
      double power = inB.force().dot(velocityOfB) + inB.moment().dot(turningInB);
      double seen = inA.force().dot(velocityOfA) + inA.moment().dot(turningInA);
      double scale = inB.force().norm() * 10 + inB.moment().norm() * 10;
      assertEquals(power, seen, Expect.ALGEBRA * scale);
    }
  }

  @Test
  void wrenchComesBackFromThereAndBack() {
    Draws draws = new Draws();
    for (int i = 0; i < 100; i++) {
      Pose ab = draws.pose();
      Wrench w = new Wrench(draws.vector(50), draws.vector(5));
      Expect.near(w, w.seenFrom(ab).seenFrom(ab.inverse()), 10 * Expect.ALGEBRA, "there and back");
    }
  }

  @Test
  void wrenchArithmeticIsByComponent() {
    Wrench a = Wrench.of(new double[] {9, 1, 2, 3, 4, 5, 6}, 1);
    assertArrayEquals(new double[] {1, 2, 3, 4, 5, 6}, a.toArray());
    assertEquals(a.times(3), a.plus(a).plus(a));
    assertEquals(Wrench.ZERO, a.minus(a));
  }

  @Test
  void motionStateComesBackFromItsFlatForm() {
    Draws draws = new Draws();
    for (int i = 0; i < 50; i++) {
      MotionState state = draws.motion();
      double[] flat = state.toArray();
      assertEquals(MotionState.SIZE, flat.length);
      Expect.near(flat, MotionState.of(flat).toArray(), Expect.ALGEBRA, "flat form");
    }
  }

  @Test
  void flatFormHoldsEachQuantityAtItsOffset() {
    MotionState s =
        new MotionState(
            new Pose(new Vec3(1, 2, 3), new Quaternion(0.5, -0.5, 0.5, -0.5)),
            new Vec3(4, 5, 6),
            new Vec3(7, 8, 9),
            new Vec3(10, 11, 12),
            new Vec3(13, 14, 15));
    double[] f = s.toArray();
    assertEquals(1, f[MotionState.POSITION]);
    assertEquals(0.5, f[MotionState.ROTATION]);
    assertEquals(-0.5, f[MotionState.ROTATION + 3]);
    assertEquals(4, f[MotionState.VELOCITY]);
    assertEquals(7, f[MotionState.ANGULAR_VELOCITY]);
    assertEquals(10, f[MotionState.ACCELERATION]);
    assertEquals(13, f[MotionState.ANGULAR_ACCELERATION]);
    assertEquals(s, MotionState.of(f));
  }

  @Test
  void atRestNothingMoves() {
    Pose pose = new Draws().pose();
    double[] f = MotionState.atRest(pose).toArray();
    for (int i = MotionState.VELOCITY; i < MotionState.SIZE; i++) {
      assertEquals(0, f[i]);
    }
    assertEquals(pose, MotionState.atRest(pose).pose());
  }
}
