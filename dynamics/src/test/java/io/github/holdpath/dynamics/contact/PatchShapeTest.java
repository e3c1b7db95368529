package io.github.holdpath.dynamics.contact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.spatial.Pose;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PatchShapeTest {
  /** Cells along each side of a face when its sums are taken by the midpoint rule. */
  private static final int CELLS = 1000;

  /** Relative error of the midpoint rule with that many cells, of the order 1/CELLS^2. */
  private static final double MIDPOINT = 3e-6;

  private static final List<PatchShape> SHAPES =
      List.of(
          new PatchShape.Ring(0.02),
          new PatchShape.Disc(0.03),
          new PatchShape.Rectangle(0.03, 0.015),
          new PatchShape.Rectangle(0.01, 0.04),
          new PatchShape.Rectangle(0.02, 0.02),
          new PatchShape.Line(0.05));

  static Stream<PatchShape> shapes() {
    return SHAPES.stream();
  }

  @Test
  void everyKindOfShapeIsAmongTheOnesTested() {
    assertEquals(
        Arrays.stream(PatchShape.class.getPermittedSubclasses()).collect(Collectors.toSet()),
        SHAPES.stream().map(Object::getClass).collect(Collectors.toSet()));
  }

  @ParameterizedTest
  @CsvSource({"0.03, 0.015", "0.04, 0.01", "0.01, 0.04", "0.02, 0.02", "0.08, 0.01"})
  void rectangleConstantsAreMeansOverItsFace(double a, double b) {
    PatchShape s = new PatchShape.Rectangle(a, b);
    near(mean(a, b, Math::hypot), s.torsionRadius());
    near(mean(a, b, (x, y) -> y * y), s.tiltX());
    near(mean(a, b, (x, y) -> x * x), s.tiltY());
    near(mean(a, b, (x, y) -> x * x + y * y), s.torsion());
    assertEquals(a * b, s.area(), Expect.ALGEBRA * a * b);
  }

  private static double mean(double a, double b, DoubleBinaryOperator f) {
    double sum = 0;
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < CELLS; j++) {
        sum += f.applyAsDouble(((i + 0.5) / CELLS - 0.5) * a, ((j + 0.5) / CELLS - 0.5) * b);
      }
    }
    return sum / CELLS / CELLS;
  }

  /** In rings of width dr, each with the weight of its length. */
  @Test
  void discConstantsAreMeansOverItsFace() {
    double radius = 0.03;
    double weight = 0;
    double first = 0;
    double second = 0;
    for (int i = 0; i < CELLS; i++) {
      double r = (i + 0.5) / CELLS * radius;
      weight += r;
      first += r * r;
      second += r * r * r;
    }
    PatchShape s = new PatchShape.Disc(radius);
    near(first / weight, s.torsionRadius());
    near(second / weight, s.torsion());
    near(second / weight / 2, s.tiltX());
    assertEquals(Math.PI * radius * radius, s.area(), Expect.ALGEBRA);
  }

  @Test
  void lineConstantsAreMeansOverItsLength() {
    double length = 0.05;
    PatchShape s = new PatchShape.Line(length);
    near(mean(length, length, (x, y) -> Math.abs(x)), s.torsionRadius());
    near(mean(length, length, (x, y) -> x * x), s.tiltY());
    near(mean(length, length, (x, y) -> x * x), s.torsion());
    assertEquals(0, s.tiltX(), "it turns freely about itself");
    assertEquals(0, s.area(), "its pressure is not defined");
    assertEquals(Double.POSITIVE_INFINITY, s.kernX());
    assertEquals(Double.POSITIVE_INFINITY, s.edgeX());
  }

  private static void near(double expected, double actual) {
    assertEquals(expected, actual, MIDPOINT * expected);
  }

  /** Stiffness about x and y adds up to the polar one, as for every flat figure. */
  @ParameterizedTest
  @MethodSource("shapes")
  void tiltingStiffnessAddsUpToThatOfTorsion(PatchShape s) {
    assertEquals(s.torsion(), s.tiltX() + s.tiltY(), Expect.ALGEBRA * s.torsion());
  }

  /** Pressure that is linear over the face reaches zero at the edge: kern = second moment/edge. */
  @ParameterizedTest
  @MethodSource("shapes")
  void kernIsWhereLinearPressureReachesZeroAtTheEdge(PatchShape s) {
    assertEquals(s.tiltY() / s.edgeY(), s.kernY(), Expect.ALGEBRA * s.kernY());
    if (s.tiltX() > 0) {
      assertEquals(s.tiltX() / s.edgeX(), s.kernX(), Expect.ALGEBRA * s.kernX());
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void torsionRadiusLiesBetweenZeroAndTheFarthestPoint(PatchShape s) {
    assertTrue(s.torsionRadius() > 0);
    // Mean distance is never above the root of the mean square.
    assertTrue(s.torsionRadius() <= Math.sqrt(s.torsion()) * (1 + Expect.ALGEBRA));
  }

  @ParameterizedTest
  @CsvSource({"0.03, 0.015", "0.07, 0.02", "0.02, 0.02"})
  void turnedRectangleSwapsItsConstants(double a, double b) {
    PatchShape s = new PatchShape.Rectangle(a, b);
    PatchShape t = new PatchShape.Rectangle(b, a);
    assertEquals(s.torsionRadius(), t.torsionRadius(), Expect.ALGEBRA);
    assertEquals(s.crossX(), t.crossY(), Expect.ALGEBRA);
    assertEquals(s.crossY(), t.crossX(), Expect.ALGEBRA);
    assertEquals(s.kernX(), t.kernY(), Expect.ALGEBRA);
    assertEquals(s.edgeX(), t.edgeY(), Expect.ALGEBRA);
    assertEquals(s.tiltX(), t.tiltY(), Expect.ALGEBRA);
  }

  @Test
  void veryLongRectangleActsLikeALine() {
    PatchShape strip = new PatchShape.Rectangle(1, 1e-6);
    PatchShape line = new PatchShape.Line(1);
    // Relative to the length, the width counts for no more than its own ratio.
    double ratio = 1e-5;
    assertEquals(line.torsionRadius(), strip.torsionRadius(), ratio);
    assertEquals(line.crossX(), strip.crossX(), ratio);
    assertEquals(line.crossY(), strip.crossY(), ratio);
    assertEquals(line.torsion(), strip.torsion(), ratio);
    assertEquals(line.kernY(), strip.kernY(), ratio);
  }

  @Test
  void onlyALipIsSealedAndOnlyRoundShapesAreRound() {
    for (PatchShape s : SHAPES) {
      assertEquals(s instanceof PatchShape.Ring, s.sealed(), s.label());
      assertEquals(
          s instanceof PatchShape.Ring || s instanceof PatchShape.Disc, s.round(), s.label());
    }
  }

  @Test
  void roundShapesAreAlikeInEveryDirection() {
    for (PatchShape s : SHAPES.stream().filter(PatchShape::round).toList()) {
      assertEquals(s.crossX(), s.crossY(), s.label());
      assertEquals(s.kernX(), s.kernY(), s.label());
      assertEquals(s.edgeX(), s.edgeY(), s.label());
      assertEquals(s.tiltX(), s.tiltY(), s.label());
    }
  }

  @Test
  void labelsTellTheKindsApart() {
    assertEquals(
        List.of("ring", "disc", "rectangle", "rectangle", "rectangle", "line"),
        SHAPES.stream().map(PatchShape::label).toList());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.01, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesSizesThatAreNotPositive(double bad) {
    Expect.refused("radius must be positive", () -> new PatchShape.Ring(bad));
    Expect.refused("radius must be positive", () -> new PatchShape.Disc(bad));
    Expect.refused("a must be positive", () -> new PatchShape.Rectangle(bad, 1));
    Expect.refused("b must be positive", () -> new PatchShape.Rectangle(1, bad));
    Expect.refused("length must be positive", () -> new PatchShape.Line(bad));
  }

  private static ContactPatch patch(
      PatchShape shape, double friction, double preload, double pull, double max, boolean ledge) {
    return new ContactPatch(
        "p", Pose.IDENTITY, shape, friction, preload, pull, PatchStiffness.ALIKE, max, max, ledge);
  }

  @Test
  void largestNormalForceIsPressureTimesArea() {
    PatchShape face = new PatchShape.Rectangle(0.03, 0.02);
    assertEquals(60, patch(face, 0.3, 1, 0, 1e5, false).maxNormal(), Expect.ALGEBRA * 60);
    PatchShape line = new PatchShape.Line(0.03);
    assertEquals(Double.POSITIVE_INFINITY, patch(line, 0.3, 1, 0, 1e5, false).maxNormal());
    double none = Double.POSITIVE_INFINITY;
    assertEquals(none, patch(face, 0.3, 1, 0, none, false).maxNormal());
  }

  @Test
  void patchRefusesWhatCannotBe() {
    PatchShape s = new PatchShape.Disc(0.01);
    Expect.refused("friction must be finite", () -> patch(s, -0.3, 1, 0, 1, false));
    Expect.refused("friction must be finite", () -> patch(s, Double.NaN, 1, 0, 1, false));
    Expect.refused("preload must be finite", () -> patch(s, 0.3, -1, 0, 1, false));
    Expect.refused("pull must be finite", () -> patch(s, 0.3, 1, -1, 1, false));
    Expect.refused("permitted pressure", () -> patch(s, 0.3, 1, 0, 0, false));
    Expect.refused("permitted pressure", () -> patch(s, 0.3, 1, 0, Double.NaN, false));
    Expect.refused("a ledge has neither", () -> patch(s, 0.3, 1, 0, 1, true));
    Expect.refused("a ledge has neither", () -> patch(s, 0.3, 0, 1, 1, true));
    assertFalse(patch(s, 0, 0, 0, 1, false).ledge());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void stiffnessRefusesWhatIsNotPositive(double bad) {
    Expect.refused("stiffness must be positive", () -> new PatchStiffness(bad, 1));
    Expect.refused("stiffness must be positive", () -> new PatchStiffness(1, bad));
  }
}
