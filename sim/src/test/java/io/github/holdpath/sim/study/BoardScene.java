package io.github.holdpath.sim.study;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A circuit board on four soft cups: taken out of a rack, lifted, carried across and put down. */
final class BoardScene {
  private static final String TEXT =
      """
      {
        "format": "holdpath-scene/1",
        "title": "Circuit board from a rack",
        "part": {
          "name": "board", "mass": "85 g", "centreOfMass": "10 0 3 mm",
          "box": "160 100 1.6 mm", "inertia": "uniform box"
        },
        "grip": {
          "kind": "suction", "friction": 0.4, "requiredSafety": 2, "settle": "0.05 mm",
          "cups": {
            "grid": [2, 2], "spacing": "120 70 mm", "diameter": "8 mm",
            "stiffness": { "normal": "0.25 N/mm", "shear": "0.17 N/mm" }
          },
          "supply": { "vacuum": "50 kPa" }
        },
        "limits": { "speed": "1.5 m/s", "acceleration": "15 m/s^2", "jerk": "213 m/s^3" },
        "law": "LAW",
        "route": [
          { "start": { "at": "0.50 -0.25 0.12 m", "rpy": "180 0 0 deg" } },
          { "grip": "take", "wait": "0.2 s" },
          { "line": { "at": "0.32 -0.25 0.12 m" }, "speed": "0.3 m/s" },
          { "line": { "at": "0.32 -0.25 0.25 m" } },
          { "name": "across", "line": { "at": "0.32 0.25 0.25 m" } },
          { "line": { "at": "0.32 0.25 0.10 m" } },
          { "grip": "release", "wait": "0.1 s" }
        ]
      }
      """;

  private BoardScene() {}

  /** The scene with a motion law, and with what is put in place of its values. */
  static Scene of(Path folder, String law, Map<String, String> edits) {
    Path file = folder.resolve("board.json");
    try {
      Files.writeString(file, TEXT.replace("LAW", law));
      return SceneReader.read(file, edits).scene();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (SceneException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }
}
