package io.github.holdpath.viewer.state;

import io.github.holdpath.sim.study.StudyResult;

/**
 * A judged job made ready to be shown.
 *
 * @param name short, to tell two apart
 * @param result of the study
 * @param stage what is seen of it
 * @param curves what it does over time
 */
public record Shown(String name, StudyResult result, Stage stage, Curves curves) {
  /** Makes a result ready. */
  public static Shown of(String name, StudyResult result) {
    return new Shown(name, result, Stage.of(result), Curves.of(result));
  }
}
