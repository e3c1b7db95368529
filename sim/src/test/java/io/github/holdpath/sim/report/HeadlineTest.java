package io.github.holdpath.sim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.sim.study.StudyResult;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeadlineTest {
  private static StudyResult judged(String name, Map<String, String> set) throws SceneException {
    Scene scene = SceneReader.read(Path.of("../scenes/" + name + ".json"), set).scene();
    return HoldStudy.run(scene, scene.requiredSafety());
  }

  @Test
  void tellsVerdictPlaceAndMode() throws SceneException {
    Headline h = Headline.of(judged("cartons", Map.of()));
    assertFalse(h.holds());
    assertEquals("DOES NOT HOLD: least factor 1.08, required 2, margin 0.54", h.verdict());
    assertEquals(
        "Tightest at 0.878 s in move 2 (across): cup 2,1 slips first", h.tightest().orElseThrow());
    assertEquals("margin 0.54: cup 2,1 slips first", h.mark().orElseThrow());
    assertEquals("carton, 12 kg, held by suction", h.subject());
    assertTrue(h.caution().startsWith("A calculation, not a release to run"));
  }

  @ParameterizedTest
  @CsvSource({
    "gear-blank, 'gear blank, 3.33 kg, held by centric jaws'",
    "peaches, 'peach, 0.18 kg, held by soft fingers'",
    "steel-sheet, 'steel sheet, 7.07 kg, held by magnets'",
    "cover, 'pump cover, 2.4 kg, held by separate contacts'",
    "shaft, 'steel shaft, 4.62 kg, held by jaws'"
  })
  void tellsWhatHoldsInWords(String name, String subject) throws SceneException {
    assertEquals(subject, Headline.of(judged(name, Map.of())).subject());
  }

  @Test
  void verdictOfTheSwingAloneIsNotTakenForTheRigidOne() throws SceneException {
    // The required safety is put below the rigid factor 1.08 and above the swinging one.
    Scene scene = judged("cartons", Map.of()).scene();
    Headline h = Headline.of(HoldStudy.run(scene, 1));
    assertFalse(h.holds());
    assertTrue(
        h.verdict().startsWith("DOES NOT HOLD by its swing; rigid on its grip: least factor 1.08"),
        h.verdict());
    assertTrue(h.swing().orElseThrow().startsWith("Swinging on its grip: margin 0.5"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "peaches", "shaft", "glass-sheet", "arm-log"})
  void agreesWithTheResult(String name) throws SceneException {
    StudyResult result = judged(name, Map.of());
    Headline h = Headline.of(result);
    assertEquals(result.scene().title(), h.title());
    assertEquals(h.holds(), h.verdict().startsWith("HOLDS"));
    assertEquals(result.give().isPresent(), h.swing().isPresent());
    assertTrue(
        h.tightest().orElseThrow().contains(Text.fixed(result.worst().time(), 3) + " s"),
        h.tightest().orElseThrow());
  }

  @Test
  void lineOfAnInstantTellsTimeMoveMarginAndMode() throws SceneException {
    StudyResult result = judged("cartons", Map.of());
    Playback playback = new Playback(result.scene(), result.requiredSafety());
    assertEquals(
        "0.500 s, move 1 (lift): factor 2.74, margin 1.37, the lip of cup 2,1 peels first",
        InstantLine.of(result.scene(), result.requiredSafety(), playback.at(0.5)));
    assertEquals(
        "0.878 s, move 2 (across): factor 1.08, margin 0.54, cup 2,1 slips first",
        InstantLine.of(
            result.scene(), result.requiredSafety(), playback.at(result.worst().time())));
    double end = playback.duration();
    assertTrue(
        InstantLine.of(result.scene(), result.requiredSafety(), playback.at(end))
            .endsWith("not held"));
  }
}
