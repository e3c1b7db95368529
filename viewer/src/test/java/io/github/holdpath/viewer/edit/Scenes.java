package io.github.holdpath.viewer.edit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** Scenes for tests, and waiting for another thread. */
final class Scenes {
  /** Far beyond what any scene takes: reached only where something hangs, ms. */
  private static final long HANGS = 60_000;

  private Scenes() {}

  /** A cup that carries a plate along one line: small and quick. */
  static final String SMALL =
      """
      {
        "format": "holdpath-scene/1",
        "title": "A plate",
        "note": "kept as it is",
        "part": {
          "mass": "2 kg", "centreOfMass": "0 0 5 mm",
          "box": "100 100 10 mm", "inertia": "uniform box"
        },
        "grip": {
          "kind": "suction", "friction": 0.5, "requiredSafety": 2,
          "cups": { "grid": [2, 2], "spacing": "60 60 mm", "diameter": "30 mm" },
          "supply": { "vacuum": "60 kPa" }
        },
        "limits": { "speed": "1 m/s", "acceleration": "5 m/s^2" },
        "law": "trapezoid",
        "route": [
          { "start": { "at": "0 0 0.4 m", "rpy": "180 0 0 deg" } },
          { "grip": "take", "wait": "0.01 s" },
          { "name": "over", "line": { "at": "0.3 0 0.4 m" } },
          { "grip": "release", "wait": "0.01 s" }
        ],
        "origins": { "part/mass": "measured", "grip/supply/vacuum": "data sheet" }
      }
      """;

  static Path small(Path folder) throws IOException {
    return Files.writeString(folder.resolve("small.json"), SMALL);
  }

  /** Every demo scene. */
  static List<Path> demos() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("../scenes"))) {
      return all.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
  }

  static void await(BooleanSupplier what) throws InterruptedException {
    long end = System.currentTimeMillis() + HANGS;
    while (!what.getAsBoolean()) {
      if (System.currentTimeMillis() > end) {
        throw new AssertionError("nothing came of it in a minute");
      }
      Thread.sleep(2);
    }
  }
}
