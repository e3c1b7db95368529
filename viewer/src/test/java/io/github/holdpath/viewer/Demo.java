package io.github.holdpath.viewer;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import java.nio.file.Path;
import java.util.Map;

/** Demo scenes as judged. */
public final class Demo {
  private Demo() {}

  /** A scene by its name. */
  public static StudyResult judged(String name) {
    try {
      Scene scene = SceneReader.read(file(name), Map.of()).scene();
      return HoldStudy.run(scene, scene.requiredSafety());
    } catch (SceneException e) {
      throw new IllegalStateException(name, e);
    }
  }

  /** Its file. */
  public static Path file(String name) {
    return Path.of("../scenes/" + name + ".json");
  }
}
