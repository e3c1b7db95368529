package io.github.holdpath.sim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NextWordsTest {
  private static StudyResult judged(String name) throws SceneException {
    Scene scene = SceneReader.read(Path.of("../scenes/" + name + ".json"), Map.of()).scene();
    return HoldStudy.run(scene, scene.requiredSafety());
  }

  private static String onOneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "circuit-board", "paint-tin", "glass-sheet"})
  void theCheckSaysTheSame(String name) throws SceneException {
    StudyResult result = judged(name);
    String check = onOneLine(CheckReport.text(result, Ink.PLAIN));
    List<String> sentences = NextWords.sentences(result);
    assertEquals(name.equals("paint-tin") ? 1 : 2, sentences.size(), sentences.toString());
    sentences.forEach(s -> assertTrue(check.contains(onOneLine(s)), s));
  }

  @Test
  void aJobThatDoesNotHoldIsToldItsSpeedAndItsPull() throws SceneException {
    List<String> sentences = NextWords.sentences(judged("cartons"));
    assertTrue(sentences.get(0).startsWith("The whole job just holds at 63.1 %"), sentences.get(0));
    assertEquals(
        "At this speed the grip needs 3.54 times its pull in the same places.", sentences.get(1));
  }
}
