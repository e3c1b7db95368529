package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.state.Shown;
import io.github.holdpath.viewer.state.Stage;
import java.util.Optional;

/**
 * A draft that can be shown.
 *
 * @param draft what was judged
 * @param shown its coloured path, what moves along it, and its curves; with the result of the whole
 *     study, or none while only the samples are known
 */
public record Judged(Draft draft, Shown shown) {
  /** Makes ready what was judged. */
  static Judged of(Draft draft, Stage stage, Optional<StudyResult> result) {
    return new Judged(draft, Shown.of(draft.name(), stage, result));
  }

  /** As read from the draft. */
  public Scene scene() {
    return stage().scene();
  }

  /** The coloured path and what moves along it. */
  public Stage stage() {
    return shown.stage();
  }

  /** The result of the study; empty while that goes on. */
  public Optional<StudyResult> result() {
    return shown.result();
  }

  /** The same with the path of another draft thin beside its own. */
  Judged beside(Judged first) {
    Stage both = stage().beside(first.stage());
    return new Judged(draft, new Shown(shown.name(), both, shown.curves(), shown.result()));
  }
}
