package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole-grip factors of 71 patch sets against a general cone solver of another language (see {@code
 * reference/README.md}), which carries about 1e-7 itself; the file's own tolerance is 1e-5.
 */
class WholeGripValidationTest {
  private static final double FACTOR = 1e-6;

  /** The two bounds of a solve come this close, or the answer is not certified. */
  private static final double GAP = 1e-8;

  static List<ReferenceCases.Case> cases() {
    return ReferenceCases.all();
  }

  private static WholeGripFactor solve(ReferenceCases.Case c, ConePatch.Limits limits) {
    Wrench load = c.load().total();
    double scale = Math.max(c.hold().firstSlip(load).factor(), 1e-3);
    return new WholeGrip(c.patches(), c.drives(), c.closures(), limits).factor(load, scale);
  }

  private static void agrees(ReferenceCases.Case c, ConePatch.Limits limits, String key) {
    if (!c.expected().has(key)) {
      return;
    }
    double expected = c.expected().get(key).asDouble();
    WholeGripFactor whole = solve(c, limits);
    assertEquals(expected, whole.factor(), FACTOR * Math.max(1, expected), key);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void wholeGripFactorAgrees(ReferenceCases.Case c) {
    agrees(c, ConePatch.Limits.PLAIN, "H2");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void outerFactorAgrees(ReferenceCases.Case c) {
    agrees(c, ConePatch.Limits.OUTER, "H2outer");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void sealedFactorAgrees(ReferenceCases.Case c) {
    agrees(c, ConePatch.Limits.SEALED, "H2sealed");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void boundsMeetAndLieAboveTheFirstSlip(ReferenceCases.Case c) {
    WholeGripFactor whole = solve(c, ConePatch.Limits.PLAIN);
    double first = c.hold().firstSlip(c.load().total()).factor();
    assertTrue(Math.abs(whole.gap()) <= GAP, c.id() + " gap " + whole.gap());
    assertTrue(whole.factor() >= first * (1 - GAP), c.id() + ": " + first + " " + whole);
  }
}
