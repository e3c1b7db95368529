package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * 71 patch sets under load against an independent program in another language that follows the same
 * published mechanics with a general linear-algebra library (see {@code reference/README.md}).
 */
class HoldModelValidationTest {
  /** Both programs work in doubles; the file prints ten significant digits. */
  private static final double FACTOR = 1e-9;

  /** Printed digits of the wrench components in the file. */
  private static final double WRENCH = 1e-9;

  /** Balance of the shares is algebra in doubles over numbers of very different size. */
  private static final double BALANCE = 1e-10;

  static List<ReferenceCases.Case> cases() {
    return ReferenceCases.all();
  }

  @Test
  void allSeventyOneSetsAreThere() {
    assertEquals(71, cases().size());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void firstSlipFactorAgrees(ReferenceCases.Case c) {
    FirstSlip first = c.hold().firstSlip(c.load().total());
    double expected = c.expected().get("H1").asDouble();
    assertEquals(expected, first.factor(), FACTOR * Math.max(1, expected), "H1");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void modeAndPatchAgree(ReferenceCases.Case c) {
    FirstSlip first = c.hold().firstSlip(c.load().total());
    String mode = c.expected().get("mode").asString();
    assertEquals(mode, first.mode() == FailureMode.NONE ? "none" : first.mode().label());
    if (first.patch() >= 0) {
      assertEquals(c.expected().get("patch").asInt(), first.patch());
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void openingFactorAgrees(ReferenceCases.Case c) {
    double expected = c.expected().get("open").asDouble();
    assertEquals(
        expected, c.hold().opening(c.load().total()), FACTOR * Math.max(1, expected), "opening");
  }

  /** The other program's bisection stops at 1e-12; the file prints ten digits. */
  @ParameterizedTest
  @MethodSource("cases")
  void carefulFactorAgrees(ReferenceCases.Case c) {
    double expected = c.expected().get("H1e").asDouble();
    FirstSlip careful = c.hold().careful(c.load().total());
    assertEquals(expected, careful.factor(), 1e-8 * Math.max(1, expected), "H1e");
    assertTrue(careful.factor() <= c.hold().firstSlip(c.load().total()).factor());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void requiredWrenchAgrees(ReferenceCases.Case c) {
    double[] w = c.load().total().toArray();
    double size = 0;
    for (int k = 0; k < 6; k++) {
      size = Math.max(size, Math.abs(c.expected().get("w").get(k).asDouble()));
    }
    for (int k = 0; k < 6; k++) {
      assertEquals(c.expected().get("w").get(k).asDouble(), w[k], WRENCH * size);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void sharesBalanceTheLoad(ReferenceCases.Case c) {
    HoldModel hold = c.hold();
    Wrench load = c.load().total();
    List<Wrench> shares = hold.shares(load);
    Wrench sum = hold.uncarried(load);
    for (int i = 0; i < shares.size(); i++) {
      sum = sum.plus(shares.get(i).seenFrom(c.patches().get(i).pose()));
    }
    Wrench rest = sum.minus(load);
    assertEquals(0, rest.force().norm(), BALANCE * load.force().norm());
    assertEquals(
        0, rest.moment().norm(), BALANCE * (load.moment().norm() + load.force().norm() * reach(c)));
  }

  private static double reach(ReferenceCases.Case c) {
    return c.patches().stream().mapToDouble(p -> p.pose().position().norm()).max().orElse(1) + 0.01;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void normalsUnderTheWholeLoadAgree(ReferenceCases.Case c) {
    if (c.expected().get("mode").asString().equals("floats")) {
      return; // the other program gives none where the load is not carried
    }
    List<Wrench> shares = c.hold().shares(c.load().total());
    for (int i = 0; i < shares.size(); i++) {
      double preload = c.patches().get(i).preload();
      double expected = c.expected().get("normals").get(i).asDouble();
      assertEquals(
          expected,
          preload + shares.get(i).force().z(),
          1e-8 * Math.max(preload, Math.abs(expected)));
    }
  }

  /** lambdaIn of the file is k^2 at S = 1 and S = 1.5; its search stops at 1e-6 relative. */
  @ParameterizedTest
  @MethodSource("cases")
  void speedHeadroomAgrees(ReferenceCases.Case c) {
    assertHeadroom(c, 1, "lambdaIn");
    assertHeadroom(c, 1.5, "lambdaIn15");
  }

  private static void assertHeadroom(ReferenceCases.Case c, double safety, String key) {
    HoldModel hold = c.hold();
    double[] load = new double[12];
    System.arraycopy(c.load().gravity().toArray(), 0, load, 0, 6);
    System.arraycopy(c.load().motion().toArray(), 0, load, 6, 6);
    double k = new SpeedHeadroom(hold, safety, hold.workspace()).of(load);
    double expected = c.expected().get(key).asDouble();
    assertEquals(expected, k * k, 1e-6 * Math.max(1, expected), key);
  }

  @Test
  void aLoadThatNothingCarriesIsNamed() {
    ReferenceCases.Case c =
        cases().stream().filter(x -> x.id().equals("g-floats")).findFirst().orElseThrow();
    Wrench load = c.load().total();
    Wrench rest = c.hold().uncarried(load);
    double size = load.force().norm();
    // All that acts along the closing axis, and nothing else.
    assertEquals(0, rest.force().minus(new Vec3(0, load.force().y(), 0)).norm(), BALANCE * size);
    assertEquals(0, rest.moment().norm(), BALANCE * size);
  }
}
