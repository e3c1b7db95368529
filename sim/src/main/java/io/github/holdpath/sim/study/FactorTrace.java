package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import java.util.Optional;

/**
 * Where the grip is and which first-slip factor it has there, sample by sample along a judged
 * motion: what a drawing of the path needs, and no more. The part counts as rigid on its grip.
 */
public final class FactorTrace {
  /** Numbers of one sample: time, position, factor. */
  private static final int SIZE = 5;

  private final double safety;
  private final double[] samples;
  private final int[] segments;
  private final boolean[] held;

  private FactorTrace(double safety, double[] samples, int[] segments, boolean[] held) {
    this.safety = safety;
    this.samples = samples;
    this.segments = segments;
    this.held = held;
  }

  /**
   * Samples a result. The least factor of each move, which lies between samples, stands at the
   * sample nearest to it.
   *
   * @param result of a study
   * @param step spacing, s, positive; both sides of every breakpoint come on top
   */
  public static FactorTrace of(StudyResult result, double step) {
    if (!(step > 0) || !Double.isFinite(step)) {
      throw new IllegalArgumentException("step must be positive, but was " + step);
    }
    int[] count = {0};
    Sampler.visit(result.motion(), step, (piece, time) -> count[0]++);
    FactorTrace trace =
        new FactorTrace(
            result.requiredSafety(),
            new double[SIZE * count[0]],
            new int[count[0]],
            new boolean[count[0]]);
    trace.fill(result, step);
    result.segments().forEach(s -> s.worst().ifPresent(trace::lower));
    trace.lower(result.worst());
    return trace;
  }

  private void fill(StudyResult result, double step) {
    Scene scene = result.scene();
    Held isHeld = new Held(result.motion());
    HoldModel hold = HoldModel.of(scene.grip());
    HoldModel.Workspace ws = hold.workspace();
    LoadModel loads =
        new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    double[] state = new double[MotionState.SIZE];
    double[] load = new double[LoadModel.SIZE];
    double[] sum = new double[6];
    double[] scratch = new double[9];
    int[] next = {0};
    Sampler.visit(
        result.motion(),
        step,
        (piece, time) -> {
          int i = next[0]++;
          piece.state(time, state);
          samples[SIZE * i] = time;
          System.arraycopy(state, MotionState.POSITION, samples, SIZE * i + 1, 3);
          segments[i] = piece.segment();
          held[i] = isHeld.at(piece, time);
          if (held[i]) {
            loads.required(state, load, scratch);
            for (int k = 0; k < 6; k++) {
              sum[k] = load[k] + load[6 + k];
            }
            samples[SIZE * i + 4] = 1 / Math.max(hold.use(sum, 0, ws), 1 / HoldModel.NO_LIMIT);
          }
        });
  }

  private void lower(Worst worst) {
    int nearest = -1;
    for (int i = 0; i < size(); i++) {
      if (held[i]
          && (nearest < 0
              || Math.abs(time(i) - worst.time()) < Math.abs(time(nearest) - worst.time()))) {
        nearest = i;
      }
    }
    if (nearest >= 0) {
      FirstSlip first = worst.first();
      samples[SIZE * nearest + 4] = Math.min(samples[SIZE * nearest + 4], first.factor());
    }
  }

  /** Number of samples. */
  public int size() {
    return segments.length;
  }

  /** Time of a sample, s; two samples share it where two pieces of the motion meet. */
  public double time(int i) {
    return samples[SIZE * i];
  }

  /** Origin of the grip frame at a sample, world axes, m. */
  public Vec3 position(int i) {
    return new Vec3(samples[SIZE * i + 1], samples[SIZE * i + 2], samples[SIZE * i + 3]);
  }

  /** The move a sample belongs to, from 1; 0 before the first. */
  public int segment(int i) {
    return segments[i];
  }

  /** First-slip factor at a sample, dimensionless; empty while the part is not held. */
  public Optional<Double> factor(int i) {
    return held[i] ? Optional.of(samples[SIZE * i + 4]) : Optional.empty();
  }

  /** Factor per required safety at a sample; empty while the part is not held. */
  public Optional<Double> margin(int i) {
    return factor(i).map(f -> f / safety);
  }
}
