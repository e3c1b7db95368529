package io.github.holdpath.sim;

import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;

/** The demo scenes beside this module. */
public final class DemoScenes {
  private static final Path FOLDER = Path.of("../scenes");

  private DemoScenes() {}

  /** Names of those that plan their motion. */
  public static Stream<String> planned() {
    return Stream.of(
        "cartons",
        "glass-sheet",
        "shaft",
        "shaft-arm",
        "chocolates",
        "gear-blank",
        "steel-sheet",
        "peaches",
        "paint-tin-plain",
        "paint-tin",
        "cover",
        "circuit-board");
  }

  /** File of a demo scene. */
  public static Path file(String name) {
    return FOLDER.resolve(name + ".json");
  }

  /** A planned demo scene with values set. */
  public static LoadedScene read(String name, Map<String, String> set) {
    return readFile(file(name), set);
  }

  /** A planned scene from any file. */
  public static LoadedScene readFile(Path file, Map<String, String> set) {
    try {
      LoadedScene loaded = SceneReader.read(file, set);
      if (!(loaded.scene().motion() instanceof Route)) {
        throw new AssertionError(file + " must plan its motion");
      }
      return loaded;
    } catch (SceneException e) {
      throw new AssertionError("must be read, but: " + e.getMessage(), e);
    }
  }
}
