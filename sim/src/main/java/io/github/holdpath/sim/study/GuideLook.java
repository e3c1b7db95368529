package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.grip.Guide;
import io.github.holdpath.dynamics.grip.GuideLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Wrench;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.scene.Scene;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Load on the guides of the jaws along a motion (theory, eq. 2.9). */
final class GuideLook {
  private final Scene scene;
  private final HoldModel hold;
  private final LoadModel loads;
  private final double[] state = new double[MotionState.SIZE];
  private Optional<GuideUse> most = Optional.empty();

  private GuideLook(Scene scene, HoldModel hold) {
    this.scene = scene;
    this.hold = hold;
    this.loads = new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
  }

  /** The guide that bears most of its rating while the part is held; empty where none is told. */
  static Optional<GuideUse> most(Scene scene, Motion motion, HoldModel hold, double step) {
    GuideLook look = new GuideLook(scene, hold);
    if (scene.grip().guides().isEmpty()) {
      return Optional.empty();
    }
    Held held = new Held(motion);
    for (MotionPiece piece : motion.pieces()) {
      if (held.in(piece)) {
        Sampler.visitPiece(piece, held.from(piece), held.to(piece), step, look::at);
      }
    }
    return look.most;
  }

  private void at(MotionPiece piece, double time) {
    piece.state(time, state);
    List<Wrench> shares = hold.shares(loads.required(MotionState.of(state)).total());
    for (Guide guide : scene.grip().guides()) {
      double use = GuideLoad.of(guide, hold.patches(), shares).use();
      if (most.isEmpty() || use > most.get().use()) {
        most = Optional.of(new GuideUse(guide.name(), use, time));
      }
    }
  }

  /** A sentence where a guide bears more than its rating. */
  static Optional<String> warning(GuideUse guide) {
    return guide.use() <= 1
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "The guide of %s bears %.2f times its rating at %.3f s: shorten the overhang, slow"
                    + " the move, or take a gripper with stronger guides.",
                guide.jaw(),
                guide.use(),
                guide.time()));
  }
}
