package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GuideLookTest {
  private static final double ALGEBRA = 1e-9;

  /** Jaws of 400 N at 60 mm overhang on a plate of 2 kg that is lifted with 5 m/s^2. */
  private static final String JOB =
      """
      { "format": "holdpath-scene/1", "title": "Guides",
        "part": { "name": "plate", "mass": "2 kg", "centreOfMass": "0 0 0 mm",
          "box": "80 40 60 mm", "inertia": "uniform box" },
        "grip": { "kind": "jaws", "friction": 0.3, "requiredSafety": 2,
          "mechanism": "synchronised", "force": "400 N", "opening": "40 mm",
          "pads": { "size": "30 20 mm", "overhang": "60 mm" },
          "guide": { "moments": "%s 40 40 N*m", "force": "2000 N" } },
        "robot": { "kind": "free" },
        "limits": { "speed": "1 m/s", "acceleration": "5 m/s^2" }, "law": "trapezoid",
        "route": [
          { "start": { "at": "0 0 0.2 m", "rpy": "180 0 0 deg" } },
          { "grip": "take", "wait": "0.1 s" },
          { "line": { "at": "0 0 0.6 m" } },
          { "grip": "release", "wait": "0.1 s" } ] }
      """;

  @TempDir Path folder;

  private StudyResult check(String rating) throws SceneException, IOException {
    Path file = Files.writeString(folder.resolve("guides.json"), JOB.formatted(rating));
    Scene scene = SceneReader.read(file, Map.of()).scene();
    return HoldStudy.run(scene, 2);
  }

  /** By hand: 400 N at 60 mm is 24 N m; each jaw bears half of 2 (9.80665 + 5) N across. */
  @Test
  void theMostLoadedGuideIsThatOfTheHandSum() throws SceneException, IOException {
    StudyResult result = check("40");
    double expected = 400 * 0.06 / 40 + (9.80665 + 5) / 2000;
    assertEquals(expected, result.guide().orElseThrow().use(), ALGEBRA);
    assertTrue(result.warnings().stream().noneMatch(w -> w.contains("guide")));
  }

  @Test
  void aGuideBeyondItsRatingIsAWarningWithWhatToDo() throws SceneException, IOException {
    StudyResult result = check("20");
    assertTrue(result.guide().orElseThrow().use() > 1.2);
    assertTrue(
        result.warnings().stream().anyMatch(w -> w.contains("shorten the overhang")),
        result.warnings().toString());
  }
}
