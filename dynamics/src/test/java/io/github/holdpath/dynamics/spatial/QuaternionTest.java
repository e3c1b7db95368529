package io.github.holdpath.dynamics.spatial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.Expect;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.RotationOrder;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuaternionTest {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Y = new Vec3(0, 1, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);

  @Test
  void rollPitchYawTurnAboutFixedAxesAsAnIndependentLibraryDoes() {
    Draws draws = new Draws();
    for (int i = 0; i < 500; i++) {
      Vec3 rpy = draws.vector(Math.PI);
      Vec3 v = draws.vector(1);
      // Fixed axes X, Y, Z are the turning axes Z, Y, X.
      Rotation other =
          new Rotation(
              RotationOrder.ZYX, RotationConvention.VECTOR_OPERATOR, rpy.z(), rpy.y(), rpy.x());
      Vector3D expected = other.applyTo(new Vector3D(v.x(), v.y(), v.z()));
      Vec3 actual = Quaternion.ofRpy(rpy.x(), rpy.y(), rpy.z()).rotate(v);
      Expect.near(expected.toArray(), actual, Expect.ALGEBRA);
    }
  }

  @Test
  void rollComesBeforeYaw() {
    Quaternion q = Quaternion.ofRpy(Math.PI / 2, 0, Math.PI / 2);
    // y goes to z by the roll and stays there in the yaw; the other order would end at -x.
    Expect.near(Z, q.rotate(Y), Expect.ALGEBRA);
  }

  @Test
  void productTurnsByTheRightOneFirst() {
    Draws draws = new Draws();
    for (int i = 0; i < 200; i++) {
      Quaternion ab = draws.rotation();
      Quaternion bc = draws.rotation();
      Vec3 v = draws.vector(2);
      Expect.near(ab.rotate(bc.rotate(v)), ab.times(bc).rotate(v), Expect.ALGEBRA);
    }
  }

  @Test
  void turningBackUndoesTurning() {
    Draws draws = new Draws();
    for (int i = 0; i < 200; i++) {
      Quaternion q = draws.rotation();
      Vec3 v = draws.vector(2);
      Expect.near(v, q.rotateBack(q.rotate(v)), Expect.ALGEBRA);
      Expect.near(v, q.inverse().times(q).rotate(v), Expect.ALGEBRA);
    }
  }

  @Test
  void matrixGivesTheSameRotationBack() {
    Draws draws = new Draws();
    for (int i = 0; i < 500; i++) {
      // Any angle, so that each of the four ways out of a matrix is taken.
      Quaternion q = Quaternion.ofAxisAngle(draws.vector(1).unit(), draws.number(0, Math.PI));
      Quaternion back = Quaternion.ofMatrix(q.toMatrix());
      assertEquals(1, Math.abs(q.dot(back)), Expect.ALGEBRA);
      Expect.near(q.rotate(X), back.rotate(X), Expect.ALGEBRA);
    }
  }

  @Test
  void matrixColumnsAreTheTurnedAxes() {
    Quaternion q = new Draws().rotation();
    double[] r = q.toMatrix();
    Expect.near(new double[] {r[0], r[3], r[6]}, q.rotate(X), Expect.ALGEBRA);
    Expect.near(new double[] {r[1], r[4], r[7]}, q.rotate(Y), Expect.ALGEBRA);
    Expect.near(new double[] {r[2], r[5], r[8]}, q.rotate(Z), Expect.ALGEBRA);
  }

  @Test
  void axesArePlacedAsAsked() {
    Draws draws = new Draws();
    for (int i = 0; i < 200; i++) {
      Vec3 z = draws.vector(3);
      Vec3 x = draws.vector(3);
      Quaternion q = Quaternion.ofAxes(z, x);
      Expect.near(z.unit(), q.rotate(Z), Expect.ALGEBRA);
      assertEquals(0, q.rotate(Y).dot(x) / x.norm(), Expect.ALGEBRA, "x lies in the x-z plane");
      assertTrue(q.rotate(X).dot(x) > 0, "x looks the way asked");
    }
  }

  @Test
  void refusesParallelAxesAndZeroAxes() {
    Expect.refused("parallel", () -> Quaternion.ofAxes(Z, new Vec3(0, 0, -2)));
    assertThrows(IllegalArgumentException.class, () -> Quaternion.ofAxes(Vec3.ZERO, X));
    assertThrows(IllegalArgumentException.class, () -> Quaternion.ofAxes(Z, Vec3.ZERO));
  }

  @Test
  void rotationVectorIsAxisTimesAngle() {
    Draws draws = new Draws();
    for (int i = 0; i < 200; i++) {
      Vec3 axis = draws.vector(1).unit();
      double angle = draws.number(0, Math.PI);
      Quaternion q = Quaternion.ofAxisAngle(axis, angle);
      Expect.near(axis.times(angle), q.rotationVector(), 10 * Expect.ALGEBRA);
      Expect.near(axis.times(angle), q.negated().rotationVector(), 10 * Expect.ALGEBRA);
    }
  }

  @ParameterizedTest
  @CsvSource({"1e-3", "1e-7", "1e-11", "1e-13", "1e-100", "0"})
  void rotationVectorOfASmallTurnKeepsItsDigits(double angle) {
    Vec3 axis = new Vec3(2, -1, 2).unit();
    Vec3 v = Quaternion.ofAxisAngle(axis, angle).rotationVector();
    Expect.near(axis.times(angle), v, Expect.ALGEBRA * angle);
  }

  @Test
  void rotationVectorTakesTheShortWay() {
    Expect.near(
        new Vec3(0, 0, -Math.PI / 2),
        Quaternion.ofAxisAngle(Z, 1.5 * Math.PI).rotationVector(),
        Expect.ALGEBRA);
  }

  @Test
  void angleBetweenRotationsIgnoresTheSign() {
    Quaternion a = new Draws().rotation();
    Quaternion b = a.times(Quaternion.ofAxisAngle(new Vec3(0.6, 0, 0.8), 0.7));
    assertEquals(0.7, a.angleTo(b), Expect.ALGEBRA);
    assertEquals(0.7, a.angleTo(b.negated()), Expect.ALGEBRA);
    assertEquals(0.7, b.angleTo(a), Expect.ALGEBRA);
  }

  @Test
  void scalesASmallErrorOfLengthAndRefusesALargeOne() {
    Quaternion q = new Quaternion(1 + 5e-7, 0, 0, 0);
    assertEquals(1, q.w(), Expect.ALGEBRA);
    Expect.refused("quaternion must have length 1", () -> new Quaternion(1 + 2e-6, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Quaternion(0, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Quaternion(Double.NaN, 0, 0, 1));
  }
}
