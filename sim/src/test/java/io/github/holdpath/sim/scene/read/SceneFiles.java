package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Scene files for tests. */
final class SceneFiles {
  static final Path GOOD = Path.of("src/test/resources/scenes");

  private SceneFiles() {}

  static Scene good(String name) {
    return read(GOOD.resolve(name), Map.of()).scene();
  }

  static LoadedScene read(Path file, Map<String, String> set) {
    try {
      return SceneReader.read(file, set);
    } catch (SceneException e) {
      throw new AssertionError("must be read, but: " + e.getMessage(), e);
    }
  }

  static List<Fault> faults(Path file, Map<String, String> set) {
    try {
      SceneReader.read(file, set);
    } catch (SceneException e) {
      return e.faults();
    }
    throw new AssertionError(file + " must be refused, but was read");
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path write(Path file, String text) {
    try {
      return Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
