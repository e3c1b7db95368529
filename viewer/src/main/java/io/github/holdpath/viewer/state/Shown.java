package io.github.holdpath.viewer.state;

import io.github.holdpath.sim.study.StudyResult;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A job made ready to be shown.
 *
 * @param name short, to tell two apart
 * @param stage what is seen of it
 * @param curves what it does over time
 * @param result of the study; empty while that goes on
 */
public record Shown(String name, Stage stage, Curves curves, Optional<StudyResult> result) {
  /** What a scene is called: its file without the ending. */
  public static String nameOf(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
  }

  /** Makes a result ready. */
  public static Shown of(String name, StudyResult result) {
    return of(name, Stage.of(result), Optional.of(result));
  }

  /** Makes a stage ready. */
  public static Shown of(String name, Stage stage, Optional<StudyResult> result) {
    return new Shown(name, stage, Curves.of(stage), result);
  }

  /** The same by another name. */
  public Shown named(String other) {
    return new Shown(other, stage, curves, result);
  }
}
