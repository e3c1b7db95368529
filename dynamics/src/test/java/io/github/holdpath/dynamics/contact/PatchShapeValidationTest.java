package io.github.holdpath.dynamics.contact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Reference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Constants of contact patches against worked values and the exact friction limit under even
 * pressure.
 *
 * @see "Goyal, Ruina, Papadopoulos: Planar sliding with dry friction, Wear 143, 1991"
 * @see "Howe, Cutkosky: Practical force-motion models for sliding manipulation, IJRR 15(6), 1996"
 */
class PatchShapeValidationTest {
  /** By how much the safe formula may pass the exact limit, relative to friction times normal. */
  private static final double ABOVE_EXACT = 2e-4;

  /** The file gives eight to nine digits. */
  private static final double INNER = 1e-7;

  /** The file gives ten digits of the torsion radius. */
  private static final double FILE_RADIUS = 1e-10;

  /** What the formula gives away at most, relative: 8.4 % for a pad of 8:1, 8.7 % for a line. */
  private static final double BELOW_EXACT = 0.088;

  static Stream<JsonNode> rows() {
    return Reference.rows("limit-surface.json", "rows");
  }

  private static PatchShape shape(JsonNode row) {
    double a = row.get("a").doubleValue();
    String name = row.get("shape").stringValue();
    return switch (name) {
      case "ring" -> new PatchShape.Ring(a);
      case "disc" -> new PatchShape.Disc(a);
      case "line" -> new PatchShape.Line(a);
      case "rect" -> new PatchShape.Rectangle(a, row.get("b").doubleValue());
      default -> throw new IllegalArgumentException("no shape is called " + name);
    };
  }

  /** Theory, eq. 2.1, from the constants of the shape alone. */
  private static double slip(PatchShape s, double fx, double fy, double m) {
    double cross =
        s.round()
            ? s.crossX() * Math.hypot(fx, fy)
            : s.crossX() * Math.abs(fx) + s.crossY() * Math.abs(fy);
    return Math.sqrt(fx * fx + fy * fy + 2 * cross * m + m * m);
  }

  @Test
  void fileHoldsEveryShape() {
    assertEquals(225, rows().count());
    assertEquals(4, rows().map(r -> r.get("shape").stringValue()).distinct().count());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void safeFormulaStaysInsideTheExactLimit(JsonNode row) {
    double force = Math.toRadians(row.get("forceDirDeg").doubleValue());
    double torsion = Math.toRadians(row.get("torsionDeg").doubleValue());
    double f = Math.cos(torsion);
    double reach =
        1 / slip(shape(row), f * Math.cos(force), f * Math.sin(force), Math.sin(torsion));
    double exact = row.get("radius").doubleValue();
    assertEquals(row.get("inner").doubleValue(), reach, INNER, row::toString);
    assertTrue(reach <= exact + ABOVE_EXACT, () -> reach + " above " + row);
    assertTrue(reach >= exact * (1 - BELOW_EXACT), () -> reach + " far below " + row);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void torsionRadiusIsThatOfTheFile(JsonNode row) {
    assertEquals(row.get("e").doubleValue(), shape(row).torsionRadius(), FILE_RADIUS);
  }

  /** Torsion radii to six digits, integrated by an independent program. */
  @ParameterizedTest
  @CsvSource({"1, 1, 0.382598, 5e-7", "30, 15, 8.89850, 5e-6", "40, 10, 10.6078, 5e-5"})
  void torsionRadiusOfRectanglesIsTheWorkedOne(double a, double b, double e, double halfDigit) {
    assertEquals(e, new PatchShape.Rectangle(a, b).torsionRadius(), halfDigit);
  }

  /** A ring with f = M slips at f = 2/pi exactly, which fixes its cross term. */
  @Test
  void ringMeetsItsExactLimitWhereForceAndTorsionAreAlike() {
    double f = 2 / Math.PI;
    assertEquals(1, slip(new PatchShape.Ring(0.02), f, 0, f), 1e-12);
  }

  /** A line across its length: f^2 + M = 1 exactly; the formula touches it only from inside. */
  @Test
  void lineStaysInsideItsExactParabola() {
    PatchShape line = new PatchShape.Line(0.05);
    for (int i = 0; i <= 100; i++) {
      double f = i / 100.0;
      assertTrue(slip(line, 0, f, 1 - f * f) >= 1 - 1e-12, "f = " + f);
    }
  }

  /**
   * The least cross term with which the exact limit is not passed anywhere, to four digits, found
   * numerically by an independent program: shape, sides, along x, along y.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 0.1346, 0.1346",
    "1.5, 1, 0, 0.2063",
    "2, 1, 0.0312, 0.2557",
    "3, 1, 0, 0.3175",
    "4, 1, 0, 0.3542",
    "6, 1, 0, 0.3956",
    "8, 1, 0, 0.4184",
    "1, 4, 0.3542, 0"
  })
  void crossTermsAreWhatTheExactLimitNeedsAndLittleMore(
      double a, double b, double neededX, double neededY) {
    PatchShape s = new PatchShape.Rectangle(a, b);
    assertTrue(s.crossX() >= neededX, s + " along x: " + s.crossX());
    assertTrue(s.crossY() >= neededY, s + " along y: " + s.crossY());
    // A square needs more along its diagonal (0.1518) than along a side.
    double spare = a == b ? 0.022 : 0.003;
    if (neededX > 0.1) {
      assertEquals(neededX, s.crossX(), spare);
    }
    assertEquals(neededY, s.crossY(), spare);
  }

  /** Ring and disc: needed cross terms 0.2337 and 0.1489 to four digits. */
  @Test
  void crossTermsOfRoundShapesAreThoseNeeded() {
    assertEquals(0.2337, new PatchShape.Ring(1).crossX(), 5e-5);
    assertEquals(0.1489, new PatchShape.Disc(1).crossX(), 1.5e-4);
  }

  /** Cup of 20 mm lip radius under 75.3982 N: opens at 0.753982 N m, tips at 1.50796 N m. */
  @Test
  void lipOpensAndTipsAtTheWorkedMoments() {
    PatchShape lip = new PatchShape.Ring(0.02);
    assertEquals(0.753982, 75.3982 * lip.kernX(), 5e-7);
    assertEquals(1.50796, 75.3982 * lip.edgeX(), 5e-6);
  }

  /** Textbook: a face of 30 mm opens at a/6 and tips at a/2, a disc at R/4 and R. */
  @Test
  void facesOpenAndTipWhereTheTextbookSays() {
    PatchShape pad = new PatchShape.Rectangle(0.03, 0.015);
    assertEquals(0.005, pad.kernY(), 1e-15);
    assertEquals(0.015, pad.edgeY(), 1e-15);
    assertEquals(0.0025, pad.kernX(), 1e-15);
    assertEquals(0.0075, pad.edgeX(), 1e-15);
    PatchShape disc = new PatchShape.Disc(0.02);
    assertEquals(0.005, disc.kernX(), 1e-15);
    assertEquals(0.02, disc.edgeY(), 1e-15);
  }

  /** Mindlin 1949: shear to normal stiffness 2 (1 - nu)/(2 - nu); 0.666667 at nu = 0.5. */
  @Test
  void shearStiffnessIsMindlinsForAMaterialThatKeepsItsVolume() {
    double nu = 0.5;
    assertEquals(2 * (1 - nu) / (2 - nu), PatchStiffness.SHEAR_PER_NORMAL, 1e-15);
    assertEquals(6000, PatchStiffness.ofNormal(9000).shear(), 1e-9);
  }
}
