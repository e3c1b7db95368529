package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.report.CheckReport;
import io.github.holdpath.sim.report.ExplainReport;
import io.github.holdpath.sim.report.Ink;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.Explanation;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the demo scenes print can be read on a page and is not rounded into a pass. */
class ReportTest {
  private static final int PAGE = 80;
  private static final int INSTANTS = 12;

  private static StudyResult run(String scene, Map<String, String> set) throws SceneException {
    Scene read = SceneReader.read(Path.of(scene), set).scene();
    return HoldStudy.run(read, read.requiredSafety());
  }

  private static void assertFits(String text) {
    text.lines().forEach(line -> assertTrue(line.length() <= PAGE, line.length() + ": " + line));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cartons.json",
        "glass-sheet.json",
        "shaft.json",
        "shaft-arm.json",
        "chocolates.json",
        "gear-blank.json",
        "steel-sheet.json",
        "peaches.json",
        "paint-tin-plain.json",
        "paint-tin.json",
        "cover.json",
        "circuit-board.json",
        "arm-log.json"
      })
  void everyLineFitsIntoAPage(String scene) throws SceneException {
    StudyResult result = run(scene, Map.of());
    assertFits(CheckReport.text(result, Ink.PLAIN));
    for (int i = 0; i <= INSTANTS; i++) {
      double time = result.cycleTime() * ((double) i / INSTANTS);
      assertFits(ExplainReport.text(Explanation.at(result.scene(), result.requiredSafety(), time)));
    }
  }

  @Test
  void aFactorJustBelowItsBoundIsNotRoundedUpToIt() throws SceneException {
    Map<String, String> set =
        Map.of("grip/cups/diameter", "60 mm", "grip/cups/spacing", "250 500 mm");
    StudyResult result = run("glass-sheet.json", set);
    assertTrue(result.factor() < 2 && result.factor() > 1.995, "factor " + result.factor());
    String text = CheckReport.text(result, Ink.PLAIN);
    assertTrue(text.contains("least factor 1.99 is below the required 2 (margin 0.99)"), text);
    assertFalse(text.contains("1.00!"), text);
  }

  @Test
  void movesThatFailTogetherAreSlowedTogether() throws SceneException {
    String text =
        CheckReport.text(run("cartons.json", Map.of("grip/cups/diameter", "60 mm")), Ink.PLAIN);
    assertTrue(text.contains("To slow moves 1, 2, 3 until each holds:"), text);
  }

  @Test
  void slowingIsNotOfferedWhereTheWeightIsTooMuch() throws SceneException {
    String text = CheckReport.text(run("glass-sheet.json", Map.of()), Ink.PLAIN);
    assertTrue(text.contains("No speed helps"), text);
    assertFalse(text.contains("To slow"), text);
  }
}
