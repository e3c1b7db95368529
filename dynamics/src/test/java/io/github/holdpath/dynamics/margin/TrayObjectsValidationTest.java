package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.margin.TrayCases.Standing;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Measured masses, sizes and friction of things that a robot carried loose on a tray (see {@code
 * reference/README.md}), against the closed forms of sliding and tipping that the file prints. The
 * tray lies level and moves sideways; the robot of the source tilts its tray, so its own peak
 * accelerations are no check of these numbers.
 */
class TrayObjectsValidationTest {
  private static final double EXACT = 1e-12;

  /** The limits are printed with three decimals. */
  private static final double HALF_LAST_DIGIT = 5.1e-4;

  /** The boxes' centres of mass are printed to 0.01 mm, their heights over edge to the same. */
  private static final double BOX_DIGITS = 2e-3;

  private static final double CONE_SOLVER = 1e-7;

  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Y = new Vec3(0, 1, 0);

  static List<Standing> objects() {
    return TrayCases.objects();
  }

  static List<Standing> boxes() {
    return TrayCases.boxes();
  }

  @Test
  void fifteenObjectsAndTwoBoxesAreThere() {
    assertEquals(15, objects().size());
    assertEquals(2, boxes().size());
  }

  @ParameterizedTest
  @MethodSource("objects")
  void firstToGoIsThatOfTheClosedForms(Standing s) {
    double slip = s.row().get("slipLimit").doubleValue();
    double tip = s.row().get("tipLimit").doubleValue();
    Vec3 narrow = s.base().edgeY() <= s.base().edgeX() ? X : Y;
    assertEquals(Math.min(slip, tip), s.limit(narrow), HALF_LAST_DIGIT);
    assertEquals(s.row().get("firstToGo").stringValue(), s.mode(narrow).label());
  }

  /** With friction to spare the object tips at g b/(2 h), whatever the surface. */
  @ParameterizedTest
  @MethodSource("objects")
  void withFrictionToSpareItTips(Standing s) {
    Standing rough = s.with(10);
    double x = TrayCases.G * s.base().edgeY() / s.com().z();
    double y = TrayCases.G * s.base().edgeX() / s.com().z();
    assertEquals(x, rough.limit(X), EXACT * x);
    assertEquals(y, rough.limit(Y), EXACT * y);
    assertEquals(s.row().get("tipLimit").doubleValue(), Math.min(x, y), HALF_LAST_DIGIT);
    assertEquals(FailureMode.TIP, rough.mode(X));
  }

  /** A base twice as wide as needed leaves the friction alone: mu g, to every side. */
  @ParameterizedTest
  @MethodSource("objects")
  void onAWideBaseItSlides(Standing s) {
    Standing wide =
        new Standing(s.name(), new PatchShape.Disc(1), s.mu(), s.mass(), s.com(), s.row());
    for (double angle : new double[] {0, 0.3, 1.2, 2.6, 4.4}) {
      Vec3 way = new Vec3(Math.cos(angle), Math.sin(angle), 0);
      assertEquals(s.mu() * TrayCases.G, wide.limit(way), EXACT * TrayCases.G);
      assertEquals(FailureMode.SLIP, wide.mode(way));
    }
    assertEquals(s.row().get("slipLimit").doubleValue(), wide.limit(X), HALF_LAST_DIGIT);
  }

  /**
   * As the friction was measured: on a tray tilted by arctan(mu) the object just slides. The part
   * of the weight that no longer presses is load along -z.
   */
  @ParameterizedTest
  @MethodSource("objects")
  void onATiltedTrayItSlidesAtTheMeasuredAngle(Standing s) {
    Standing wide =
        new Standing(s.name(), new PatchShape.Disc(1), s.mu(), s.mass(), s.com(), s.row());
    double angle = Math.atan(s.mu());
    double weight = s.mass() * TrayCases.G;
    Vec3 force = new Vec3(weight * Math.sin(angle), 0, weight * Math.cos(angle) - weight);
    FirstSlip first = wide.hold().firstSlip(new Wrench(force, s.com().cross(force)));
    assertEquals(1, first.factor(), EXACT * 10);
    assertEquals(FailureMode.SLIP, first.mode());
  }

  /** One patch has nothing to share: the first slip is the last hold. */
  @ParameterizedTest
  @MethodSource("objects")
  void wholeGripFactorOfOneBaseIsTheFirstSlip(Standing s) {
    Wrench load = s.perAcceleration(Y);
    double first = s.hold().firstSlip(load).factor();
    double whole =
        new WholeGrip(List.of(s.patch()), List.of(), List.of()).factor(load, first).factor();
    assertEquals(first, whole, CONE_SOLVER * first);
  }

  /** Toward +x the centre of mass has the near edge at x = -base/2 to tip over. */
  @ParameterizedTest
  @MethodSource("boxes")
  void boxesTipOverTheirNearEdgeAndCorner(Standing s) {
    Standing rough = s.with(10);
    double edge = s.row().get("tipLimitX").doubleValue();
    double corner = s.row().get("tipLimitDiagonal").doubleValue();
    Vec3 fromTheEdge = X.times(-1);
    Vec3 fromTheCorner = new Vec3(-1, 1, 0).unit();
    assertEquals(edge, rough.limit(fromTheEdge), BOX_DIGITS);
    assertEquals(corner, rough.limit(fromTheCorner), BOX_DIGITS);
    assertEquals(FailureMode.TIP, rough.mode(fromTheEdge));
  }

  /**
   * Published with the boxes: two on top of each other were dropped by plans that did not allow for
   * their centre of mass. With the friction that was planned with, the tall pair tips before it
   * slides; a single box slides first.
   */
  @Test
  void theTallPairTipsAndTheSingleBoxSlides() {
    Vec3 fromTheEdge = X.times(-1);
    List<Standing> both = boxes();
    assertEquals(FailureMode.SLIP, both.get(0).mode(fromTheEdge));
    assertEquals(FailureMode.TIP, both.get(1).mode(fromTheEdge));
    assertTrue(both.get(1).limit(fromTheEdge) < both.get(1).row().get("slipLimit").doubleValue());
  }
}
