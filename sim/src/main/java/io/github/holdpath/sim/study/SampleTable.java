package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.dynamics.margin.WholeGrip;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.Optional;

/** Every sample of a judged motion with its load, factor and headroom, for tables and curves. */
public final class SampleTable {
  private final StudyResult result;
  private final double step;

  /**
   * Samples of a result.
   *
   * @param result of a study
   * @param step spacing, s, positive; both sides of every breakpoint come on top
   */
  public SampleTable(StudyResult result, double step) {
    if (!(step > 0) || !Double.isFinite(step)) {
      throw new IllegalArgumentException("step must be positive, but was " + step);
    }
    this.result = result;
    this.step = step;
  }

  /**
   * One sample.
   *
   * @param time s
   * @param segment move, from 1; 0 before the first
   * @param distance path length since the start of the segment, m (rad where it only turns)
   * @param state motion of the grip frame, world axes, flat
   * @param wrench required wrench, grip frame, 6 numbers
   * @param hold factor, mode and patch; empty while the part is not held
   * @param wholeGripFactor H2; 0 while the part is not held
   * @param speedHeadroom k; 0 while the part is not held
   */
  public record Row(
      double time,
      int segment,
      double distance,
      double[] state,
      double[] wrench,
      Optional<FirstSlip> hold,
      double wholeGripFactor,
      double speedHeadroom) {}

  /** What is done with a row; its arrays are only lent. */
  @FunctionalInterface
  public interface RowVisit {
    /** One row. */
    void accept(Row row);
  }

  /** Visits every row in order of time. */
  public void forEach(RowVisit visit) {
    var scene = result.scene();
    var motion = result.motion();
    Held held = new Held(motion);
    HoldModel hold = HoldModel.of(scene.grip());
    HoldModel.Workspace ws = hold.workspace();
    DropSearch drop = new DropSearch(hold, ws, WholeGrip.of(scene.grip()));
    SpeedHeadroom headroom = new SpeedHeadroom(hold, result.requiredSafety(), ws);
    LoadModel loads =
        new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    double[] state = new double[MotionState.SIZE];
    double[] load = new double[LoadModel.SIZE];
    double[] sum = new double[6];
    double[] scratch = new double[9];
    Sampler.visit(
        motion,
        step,
        (piece, time) -> {
          piece.state(time, state);
          loads.required(state, load, scratch);
          for (int k = 0; k < 6; k++) {
            sum[k] = load[k] + load[6 + k];
          }
          boolean isHeld = held.at(piece, time);
          Optional<FirstSlip> first =
              isHeld ? Optional.of(hold.firstSlip(Wrench.of(sum, 0), ws)) : Optional.empty();
          visit.accept(
              new Row(
                  time,
                  piece.segment(),
                  piece.distance(time),
                  state,
                  sum,
                  first,
                  first.map(f -> 1 / drop.use(sum, 0, 1 / f.factor())).orElse(0.0),
                  isHeld ? headroom.of(load) : 0));
        });
  }
}
