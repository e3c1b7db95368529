package io.github.holdpath.dynamics.inertia;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InertiaTest {
  /** Iterative eigenvalues of two programs: some roundings of the largest one. */
  private static final double EIGEN = 1e-12;

  /** Points and the sums over them, worked out from the definition of inertia. */
  private record Cloud(List<Vec3> points, List<Double> masses) {
    static Cloud drawn(Draws draws, int n) {
      List<Vec3> points = new ArrayList<>();
      List<Double> masses = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        points.add(draws.vector(0.5));
        masses.add(draws.number(0.1, 2));
      }
      return new Cloud(points, masses);
    }

    MassProperties sum() {
      double m = 0;
      Vec3 first = Vec3.ZERO;
      for (int i = 0; i < points.size(); i++) {
        m += masses.get(i);
        first = first.plus(points.get(i).times(masses.get(i)));
      }
      Vec3 c = first.times(1 / m);
      double[][] s = new double[3][3];
      for (int i = 0; i < points.size(); i++) {
        Vec3 r = points.get(i).minus(c);
        double[] d = {r.x(), r.y(), r.z()};
        for (int j = 0; j < 3; j++) {
          for (int k = 0; k < 3; k++) {
            s[j][k] += masses.get(i) * ((j == k ? r.dot(r) : 0) - d[j] * d[k]);
          }
        }
      }
      return new MassProperties(
          m, c, new Inertia(s[0][0], s[1][1], s[2][2], s[0][1], s[0][2], s[1][2]));
    }

    Cloud moved(Pose pose) {
      return new Cloud(points.stream().map(pose::apply).toList(), masses);
    }

    Cloud and(Cloud o) {
      List<Vec3> p = new ArrayList<>(points);
      p.addAll(o.points);
      List<Double> m = new ArrayList<>(masses);
      m.addAll(o.masses);
      return new Cloud(p, m);
    }
  }

  private static double[] numbers(Inertia i) {
    return new double[] {i.xx(), i.yy(), i.zz(), i.xy(), i.xz(), i.yz()};
  }

  private static void near(MassProperties expected, MassProperties actual) {
    assertEquals(expected.mass(), actual.mass(), Expect.ALGEBRA * expected.mass());
    Expect.near(expected.centreOfMass(), actual.centreOfMass(), 10 * Expect.ALGEBRA);
    double[] e = numbers(expected.inertia());
    Expect.near(e, numbers(actual.inertia()), 10 * Expect.ALGEBRA * Expect.largest(e), "inertia");
  }

  /** Handbook: m (b^2 + c^2)/12. */
  @Test
  void boxIsThatOfTheHandbook() {
    Inertia i = Inertia.solidBox(12, new Vec3(1, 2, 3));
    Expect.near(new double[] {13, 10, 5, 0, 0, 0}, numbers(i), Expect.ALGEBRA * 13, "box");
  }

  /** Handbook: 2/5 m r^2. */
  @Test
  void sphereIsThatOfTheHandbook() {
    Inertia i = Inertia.solidSphere(5, 0.3);
    Expect.near(new double[] {0.18, 0.18, 0.18, 0, 0, 0}, numbers(i), Expect.ALGEBRA, "sphere");
  }

  /** Handbook: m (R^2 + r^2)/2 along, m (3 (R^2 + r^2) + l^2)/12 across. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void tubeIsThatOfTheHandbookAboutEachAxis(int axis) {
    double[] i = numbers(Inertia.tube(2, 0.4, 0.3, 1.5, axis));
    for (int k = 0; k < 3; k++) {
      assertEquals(k == axis ? 0.25 : 0.5, i[k], Expect.ALGEBRA);
      assertEquals(0, i[3 + k]);
    }
  }

  @Test
  void tubeIsTheSolidCylinderLessItsBore() {
    double density = 1000;
    double outer = density * Math.PI * 0.05 * 0.05 * 0.2;
    double bore = density * Math.PI * 0.03 * 0.03 * 0.2;
    Inertia solid = Inertia.tube(outer, 0.05, 0, 0.2, 2);
    Inertia core = Inertia.tube(bore, 0.03, 0, 0.2, 2);
    Inertia tube = Inertia.tube(outer - bore, 0.05, 0.03, 0.2, 2);
    double[] sum = numbers(tube.plus(core));
    Expect.near(numbers(solid), sum, Expect.ALGEBRA * solid.xx(), "tube and core");
  }

  @Test
  void principalMomentsAreTheEigenvaluesOfAnIndependentLibrary() {
    Draws draws = new Draws();
    for (int n = 0; n < 500; n++) {
      Inertia i = Cloud.drawn(draws, 5).sum().inertia();
      double[][] m = {{i.xx(), i.xy(), i.xz()}, {i.xy(), i.yy(), i.yz()}, {i.xz(), i.yz(), i.zz()}};
      double[] expected =
          new EigenDecompositionSymmetric(new Array2DRowRealMatrix(m)).getEigenvalues();
      Arrays.sort(expected);
      Expect.near(expected, i.principal(), EIGEN * expected[2], "principal moments");
    }
  }

  @Test
  void principalMomentsOfATurnedCylinderComeTwice() {
    Draws draws = new Draws();
    for (int n = 0; n < 200; n++) {
      Inertia rod = Inertia.tube(1, 0.01, 0, 1, 2);
      double[] p = rod.rotated(draws.rotation()).principal();
      Expect.near(new double[] {rod.zz(), rod.xx(), rod.xx()}, p, EIGEN, "rod");
      Inertia plate = Inertia.tube(1, 1, 0, 0.01, 2);
      p = plate.rotated(draws.rotation()).principal();
      Expect.near(new double[] {plate.xx(), plate.xx(), plate.zz()}, p, EIGEN, "plate");
    }
  }

  @Test
  void principalMomentsOfASphereAreAlike() {
    double[] p = Inertia.solidSphere(1, 0.5).principal();
    Expect.near(new double[] {0.1, 0.1, 0.1}, p, Expect.ALGEBRA, "sphere");
  }

  @Test
  void realBodiesHaveNoFault() {
    Draws draws = new Draws();
    assertEquals("", Inertia.POINT.fault());
    for (int n = 0; n < 200; n++) {
      assertEquals("", draws.body().inertia().fault());
      assertEquals("", Cloud.drawn(draws, 4).sum().inertia().fault());
    }
  }

  /** Two points have no inertia about their line, and the other two moments are equal. */
  @Test
  void infinitelyThinRodsHaveNoFaultInAnyDirection() {
    Draws draws = new Draws();
    for (int n = 0; n < 500; n++) {
      assertEquals("", Inertia.ofPointAt(2, draws.vector(1)).fault());
    }
  }

  /** For a flat body the largest moment is the sum of the other two: the border of the rule. */
  @Test
  void infinitelyThinPlatesHaveNoFaultInAnyDirection() {
    Draws draws = new Draws();
    for (int n = 0; n < 500; n++) {
      Inertia plate = Inertia.solidBox(1, new Vec3(draws.number(0.1, 1), 0.5, 0));
      assertEquals("", plate.rotated(draws.rotation()).fault());
    }
  }

  @Test
  void triangleRuleIsHeldInAnyDirection() {
    Draws draws = new Draws();
    for (int n = 0; n < 200; n++) {
      Inertia i = new Inertia(1, 2, 3.0001, 0, 0, 0).rotated(draws.rotation());
      assertTrue(i.fault().startsWith("breaks the triangle rule"), i.fault());
      i = new Inertia(1, 2, 2.9999, 0, 0, 0).rotated(draws.rotation());
      assertEquals("", i.fault());
    }
  }

  @Test
  void triangleRuleNamesBothSides() {
    String fault = new Inertia(1, 2, 4, 0, 0, 0).fault();
    assertTrue(fault.contains("4.0 kg*m^2") && fault.contains("3.0 kg*m^2"), fault);
  }

  @Test
  void negativeMomentIsAFaultEvenBehindPositiveDiagonals() {
    String fault = new Inertia(1, 1, 1, 1.5, 0, 0).fault();
    assertTrue(fault.startsWith("has a negative principal moment (-0.5"), fault);
    fault = new Inertia(-1, -1, -1, 0, 0, 0).fault();
    assertTrue(fault.startsWith("has a negative principal moment (-1"), fault);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void numbersThatAreNotFiniteAreAFault(double bad) {
    assertTrue(new Inertia(bad, 1, 1, 0, 0, 0).fault().contains("finite"));
    assertTrue(new Inertia(1, 1, 1, 0, bad, 0).fault().contains("finite"));
  }

  @Test
  void principalMomentsRefuseWhatIsNotFinite() {
    for (int i = 0; i < 6; i++) {
      double[] n = {1, 1, 1, 0, 0, 0};
      n[i] = Double.NaN;
      Inertia bad = new Inertia(n[0], n[1], n[2], n[3], n[4], n[5]);
      Expect.refused("inertia must be finite", bad::principal);
    }
  }

  @Test
  void massPropertiesRefuseWhatNoBodyHas() {
    Vec3 c = Vec3.ZERO;
    for (double mass : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      Expect.refused("mass must be positive", () -> new MassProperties(mass, c, Inertia.POINT));
    }
    Inertia impossible = new Inertia(1, 2, 4, 0, 0, 0);
    Expect.refused("inertia breaks the triangle rule", () -> new MassProperties(1, c, impossible));
  }

  @Test
  void inertiaTimesVectorIsTheSumOverThePoints() {
    Draws draws = new Draws();
    for (int n = 0; n < 50; n++) {
      Cloud cloud = Cloud.drawn(draws, 6);
      MassProperties body = cloud.sum();
      Vec3 w = draws.vector(5);
      Vec3 spin = Vec3.ZERO;
      for (int i = 0; i < 6; i++) {
        Vec3 r = cloud.points().get(i).minus(body.centreOfMass());
        spin = spin.plus(r.cross(w.cross(r)).times(cloud.masses().get(i)));
      }
      Expect.near(spin, body.inertia().times(w), 100 * Expect.ALGEBRA);
    }
  }

  @Test
  void steinersAdditionIsThatOfAPointMass() {
    Inertia i = Inertia.ofPointAt(2, new Vec3(1, 2, 3));
    Expect.near(
        new double[] {26, 20, 10, -4, -6, -12}, numbers(i), Expect.ALGEBRA * 26, "point mass");
  }

  @Test
  void sumOfTwoBodiesIsTheSumOverAllTheirPoints() {
    Draws draws = new Draws();
    for (int n = 0; n < 100; n++) {
      Cloud a = Cloud.drawn(draws, 4);
      Cloud b = Cloud.drawn(draws, 7);
      near(a.and(b).sum(), a.sum().plus(b.sum()));
    }
  }

  @Test
  void bodySeenFromAnotherFrameIsTheSumOverTheMovedPoints() {
    Draws draws = new Draws();
    for (int n = 0; n < 100; n++) {
      Cloud cloud = Cloud.drawn(draws, 6);
      Pose pose = draws.pose();
      near(cloud.moved(pose).sum(), cloud.sum().seenFrom(pose));
    }
  }

  @Test
  void quarterTurnSwapsTheMoments() {
    Inertia i = new Inertia(1, 2, 2.5, 0, 0, 0);
    Inertia turned = i.rotated(Quaternion.ofAxisAngle(new Vec3(0, 0, 1), Math.PI / 2));
    Expect.near(
        new double[] {2, 1, 2.5, 0, 0, 0}, numbers(turned), 10 * Expect.ALGEBRA, "quarter turn");
  }
}
