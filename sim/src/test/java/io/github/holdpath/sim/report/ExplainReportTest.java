package io.github.holdpath.sim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.DrawnJobs;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.Explanation;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.LawAt;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The printed sum, followed with nothing but the printed numbers. */
class ExplainReportTest {
  private static final String NUMBER = "-?[0-9]+(?:\\.[0-9]+)?";

  /** Shares are printed with four digits: each within 5 in the fourth, which is 5e-4 at most. */
  private static final double FOUR_DIGITS = 5e-4;

  /** Half of the sixth digit at most, and room for a sum of a few. */
  private static final double SIX_DIGITS = 1e-5;

  private static final String CARTONS = worst(DemoScenes.read("cartons", Map.of()).scene());

  private static String worst(Scene scene) {
    double time = HoldStudy.run(scene, 2).worst().time();
    return ExplainReport.text(Explanation.at(scene, 2, time));
  }

  @Test
  void factorOfCartonsFollowsFromItsPrintedShares() {
    double friction = 0.5;
    double radius = 0.0375;
    double preload = after(CARTONS, "preload N0 ");
    double c = after(CARTONS, "cross term c = ");
    double least = Double.POSITIVE_INFINITY;
    for (double[] share : shares(CARTONS)) {
      double f = Math.hypot(share[0], share[1]);
      double m = Math.abs(share[5]) / radius;
      double g = Math.sqrt(f * f + 2 * c * f * m + m * m);
      least = Math.min(least, friction * preload / (g - friction * share[2]));
      double tilt = Math.hypot(share[3], share[4]) - radius / 2 * share[2];
      least = Math.min(least, tilt > 0 ? radius / 2 * preload / tilt : least);
      least = Math.min(least, share[2] < 0 ? preload / -share[2] : least);
    }
    double printed = after(CARTONS, "least over all failing limits: ");
    assertEquals(printed, least, FOUR_DIGITS * printed);
    assertEquals(printed, after(CARTONS, "G - mu n\\) = " + NUMBER + " / " + NUMBER + " = "));
  }

  @Test
  void printedSharesAddUpToThePrintedLoad() {
    List<double[]> shares = shares(CARTONS);
    assertEquals(4, shares.size());
    double[] force = vector(CARTONS, "F in T = R\\^T F");
    for (int k = 0; k < 3; k++) {
      int axis = k;
      double sum = shares.stream().mapToDouble(s -> s[axis]).sum();
      double size = shares.stream().mapToDouble(s -> Math.abs(s[axis])).sum();
      assertEquals(force[k], sum, FOUR_DIGITS * size);
    }
  }

  @Test
  void printedStepsFollowFromEachOther() {
    // The grip of the cartons looks straight down: R turns y and z over.
    double[] acceleration = vector(CARTONS, "a_c in W");
    double mass = after(CARTONS, "in W, m = ");
    double[] force = vector(CARTONS, "F in T = R\\^T F");
    assertEquals(mass * acceleration[0], force[0], SIX_DIGITS);
    assertEquals(-mass * acceleration[1], force[1], SIX_DIGITS * 120);
    assertEquals(-mass * (acceleration[2] + 9.80665), force[2], SIX_DIGITS * 120);
    double[] c = vector(CARTONS, "centre of mass c in T");
    double[] moment = vector(CARTONS, "c x F");
    assertEquals(c[1] * force[2] - c[2] * force[1], moment[0], SIX_DIGITS * 15);
    assertEquals(c[2] * force[0] - c[0] * force[2], moment[1], SIX_DIGITS * 15);
    assertEquals(c[0] * force[1] - c[1] * force[0], moment[2], SIX_DIGITS * 15);
  }

  @Test
  void sharesFollowFromTheGiveAndTheStiffness() {
    double[] d = vector(CARTONS, "d ");
    double[] t = vector(CARTONS, "t ");
    List<double[]> shares = shares(CARTONS);
    double[][] places = {{-0.13, -0.08}, {-0.13, 0.08}, {0.13, -0.08}, {0.13, 0.08}};
    for (int i = 0; i < 4; i++) {
      double x = places[i][0];
      double y = places[i][1];
      double[] expected = {
        4000 * (d[0] - t[2] * y),
        4000 * (d[1] + t[2] * x),
        6000 * (d[2] + t[0] * y - t[1] * x),
        6000 * 0.0375 * 0.0375 / 2 * t[0],
        6000 * 0.0375 * 0.0375 / 2 * t[1],
        4000 * 0.0375 * 0.0375 * t[2]
      };
      for (int k = 0; k < 6; k++) {
        assertEquals(expected[k], shares.get(i)[k], FOUR_DIGITS * Math.abs(expected[k]) + 1e-4);
      }
    }
  }

  @Test
  void numbersStandApartAndAreNumbers() {
    for (int i = 0; i < 20; i++) {
      String text = worst(new DrawnJobs(300 + i).next(i));
      assertFalse(text.contains("NaN") || text.contains("Infinity"), text);
      for (double[] share : shares(text)) {
        assertEquals(6, share.length, text);
      }
      assertEquals(3, vector(text, "I alpha \\+ omega x I omega").length, text);
    }
  }

  @Test
  void loadThatFloatsNamesWhatIsNotCarried() {
    Route along = Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0, 0.5, 0));
    String text =
        worst(
            Jobs.scene(
                Jobs.point(2, Vec3.ZERO), Jobs.jaws(Mechanism.INDEPENDENT, 100, 0.2), along));
    double[] force = vector(text, "force not carried");
    assertEquals(0, force[0], SIX_DIGITS);
    assertEquals(10, Math.abs(force[1]), SIX_DIGITS * 10);
    assertEquals(0, force[2], SIX_DIGITS);
    assertTrue(text.contains("factor is 0"), text);
  }

  @Test
  void tellsWhetherThePartIsHeld() {
    Scene scene = DemoScenes.read("cartons", Map.of()).scene();
    String before = ExplainReport.text(Explanation.at(scene, 2, 0.1));
    assertTrue(before.contains("At 0.1000 s, before the first move. The part is not held"), before);
    assertTrue(CARTONS.contains("At 0.8778 s, move 2, part held."), CARTONS);
  }

  @Test
  void showsTheLawWithThePhaseOfTheInstant() {
    assertTrue(
        CARTONS.contains("\n  trapezoid over 1.7755 m, from 0.7950 s to 1.8719 s\n"), CARTONS);
    assertTrue(CARTONS.contains("\n  Governed by: speed, acceleration\n"), CARTONS);
    assertTrue(
        Pattern.compile("\n    1 +0.7950 +0.8778 +0.57712 +0.57712 +0 +0\n  > 2 +0.8778 +1.0201")
            .matcher(CARTONS)
            .find(),
        CARTONS);
    Scene turning = DemoScenes.read("glass-sheet", Map.of()).scene();
    var turn = turning.motion().motion().segments().get(1);
    String text = ExplainReport.text(Explanation.at(turning, 2, (turn.from() + turn.to()) / 2));
    assertTrue(Pattern.compile("turn speed +90 +90 deg/s +100 %").matcher(text).find(), text);
    assertTrue(text.contains("\n  Governed by: turn speed, turn acceleration\n"), text);
    String recorded = String.join("\n", LawWords.lines(new LawAt.Recorded()));
    assertTrue(recorded.contains("recorded: it follows no law"), recorded);
    String still = ExplainReport.text(Explanation.at(turning, 2, 0));
    assertTrue(still.contains("The tool stands still: no law runs."), still);
    for (String line : (CARTONS + text + still + recorded).split("\n")) {
      assertTrue(line.length() <= Text.WIDTH, line);
    }
  }

  private static List<double[]> shares(String text) {
    List<double[]> shares = new ArrayList<>();
    String table = text.substring(text.indexOf("\n  share "), text.indexOf("\n  sum about T"));
    for (String line : table.split("\n")) {
      if (line.startsWith("  ") && !line.startsWith("  share") && line.length() > 14) {
        shares.add(numbers(line.substring(14)));
      }
    }
    return shares;
  }

  private static double[] vector(String text, String name) {
    Matcher m = Pattern.compile("\n  " + name + " *((?: +" + NUMBER + "){3})").matcher(text);
    assertTrue(m.find(), name + " in\n" + text);
    return numbers(m.group(1));
  }

  private static double[] numbers(String text) {
    return Pattern.compile(" +")
        .splitAsStream(text.strip())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  private static double after(String text, String words) {
    Matcher m = Pattern.compile(words + "(" + NUMBER + ")").matcher(text);
    assertTrue(m.find(), words + " in\n" + text);
    return Double.parseDouble(m.group(1));
  }

  @Test
  void tellsThatSpeedChangesByPlaceAlongTheJoints() {
    Scene scene = DemoScenes.read("chocolates", Map.of()).scene();
    String text = ExplainReport.text(Explanation.at(scene, 2, 0.45));
    assertTrue(text.contains("along the joints speed changes by place"), text);
  }
}
