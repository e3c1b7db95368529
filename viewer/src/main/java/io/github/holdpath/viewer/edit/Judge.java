package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.study.FactorTrace;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.state.Stage;
import java.util.Optional;

/** Judges drafts in two stages: the path's colours at once, the verdict after it. */
public interface Judge {
  /**
   * Reads and colours.
   *
   * @param draft to judge
   * @param before what is shown; its view is kept where it fits
   * @throws SceneException with every fault of the draft
   */
  Judged quick(Draft draft, Optional<Judged> before) throws SceneException;

  /**
   * Judges in full what {@link #quick} gave.
   *
   * @throws SceneException with faults that a first look does not find
   */
  Judged full(Judged quick) throws SceneException;

  /** By the study. */
  static Judge byStudy() {
    return new Judge() {
      @Override
      public Judged quick(Draft draft, Optional<Judged> before) throws SceneException {
        Scene scene = draft.preview();
        double safety = scene.requiredSafety();
        double step = Stage.step(scene.moved().duration());
        FactorTrace trace = FactorTrace.of(scene, safety, step);
        Stage stage = Stage.of(scene, safety, trace, before.map(Judged::stage));
        return Judged.of(draft, stage, Optional.empty());
      }

      @Override
      public Judged full(Judged quick) throws SceneException {
        Scene scene = quick.draft().scene();
        StudyResult result = HoldStudy.run(scene, scene.requiredSafety());
        Stage stage = Stage.of(result, Optional.of(quick.stage()));
        return Judged.of(quick.draft(), stage, Optional.of(result));
      }
    };
  }
}
