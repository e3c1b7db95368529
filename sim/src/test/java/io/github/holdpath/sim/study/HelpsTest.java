package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Derivatives of the factor against those of handbook formulas, worked out by hand. */
class HelpsTest {
  /** A central difference with a step of 1e-5 misses 1e-10; rounding adds 1e-10. */
  private static final double DIFFERENCE = 1e-8;

  private static Help help(StudyResult result, String input) {
    return result.helps().stream().filter(h -> h.input().equals(input)).findFirst().orElseThrow();
  }

  /** Two jaws lift: factor 2 mu F / (m (g + a)). */
  @Test
  void jawsThatLiftFollowTheHandbookFormula() {
    Scene scene =
        Jobs.scene(
            Jobs.point(2, Vec3.ZERO),
            Jobs.jaws(Mechanism.SYNCHRONISED, 100, 0.3),
            Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0, 0, 0.5)));
    StudyResult result = HoldStudy.run(scene, 1);
    double factor = 2 * 0.3 * 100 / (2 * (Jobs.G + 5));
    assertEquals(factor, result.factor(), DIFFERENCE * factor);
    assertEquals(0.1 * factor, help(result, "force per jaw").gain(), DIFFERENCE * factor);
    assertEquals(0.1 * factor, help(result, "friction").gain(), DIFFERENCE * factor);
    Help slower = help(result, "acceleration there");
    assertEquals(0.1 * factor * 5 / (Jobs.G + 5), slower.gain(), DIFFERENCE * factor);
    assertTrue(help(result, "force per jaw").more() && !slower.more());
    assertTrue(
        result.helps().stream().noneMatch(h -> h.input().equals("pad size")),
        "nothing turns or tips these pads");
  }

  /** One cup lifts: factor P / (m (g + a)); the area, and with it P, grows with the square. */
  @Test
  void aCupThatLiftsGainsTwiceByItsDiameter() {
    Scene scene =
        Jobs.scene(
            Jobs.point(1, new Vec3(0, 0, 0.05)),
            Jobs.cups(100, 0.5, Vec3.ZERO),
            Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0, 0, 0.5)));
    StudyResult result = HoldStudy.run(scene, 1);
    double factor = 100 / (Jobs.G + 5);
    assertEquals(0.1 * factor, help(result, "vacuum").gain(), DIFFERENCE * factor);
    assertEquals(
        0.2 * factor, help(result, "cup diameter at this vacuum").gain(), DIFFERENCE * factor);
    assertEquals("cup diameter at this vacuum", result.helps().get(0).input());
  }

  @Test
  void theBestComesFirst() {
    Scene scene =
        Jobs.scene(
            Jobs.point(4, new Vec3(0.02, 0, 0.1)),
            Jobs.cups(80, 0.5, new Vec3(0.1, 0, 0), new Vec3(-0.1, 0, 0), new Vec3(0, 0.1, 0)),
            Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0.6, 0, 0)));
    List<Double> gains = HoldStudy.run(scene, 1).helps().stream().map(Help::gain).toList();
    assertTrue(gains.size() >= 4, gains.toString());
    assertEquals(gains.stream().sorted(java.util.Comparator.reverseOrder()).toList(), gains);
  }

  /** The headroom with nothing in hand is that of a study which asks for a safety of one. */
  @Test
  void speedWithNothingInHandIsThatOfSafetyOne() {
    Scene scene =
        Jobs.scene(
            Jobs.point(2, new Vec3(0.01, 0, 0.05)),
            Jobs.cups(60, 0.5, new Vec3(0.05, 0, 0), new Vec3(-0.05, 0, 0)),
            Jobs.route(LawKind.S_CURVE, Jobs.LIMITS, Jobs.START, Jobs.by(0.6, 0, 0.2)));
    assertEquals(
        HoldStudy.run(scene, 1).speedHeadroom(),
        HoldStudy.run(scene, 2).speedHeadroomLimit(),
        1e-9);
  }
}
