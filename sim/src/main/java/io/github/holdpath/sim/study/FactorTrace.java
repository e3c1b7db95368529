package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.scene.Scene;
import java.util.Optional;

/**
 * Where the grip is, how it moves and which first-slip factor it has there, sample by sample along
 * a motion: what a drawing of the path or a time line needs, and no more. The part counts as rigid
 * on its grip.
 */
public final class FactorTrace {
  /** Numbers of one sample: time, position, factor, speed, acceleration. */
  private static final int SIZE = 7;

  private static final int FACTOR = 4;
  private static final int SPEED = 5;
  private static final int ACCELERATION = 6;

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
    SlipSearch slip = new SlipSearch(result.scene(), result.motion());
    FactorTrace trace = sampled(slip, result.motion(), result.requiredSafety(), step);
    result.segments().forEach(s -> s.worst().ifPresent(trace::lower));
    trace.lower(result.worst());
    return trace;
  }

  /**
   * Samples a scene that nobody has judged yet: the same as {@link #of(StudyResult, double)} of its
   * study, sooner. How fast the motion may run, drop bound, swing and joints are not looked at, and
   * a verdict may need them: that is for {@link HoldStudy}.
   *
   * @param scene what moves
   * @param safety required safety S, at least 1
   * @param step spacing, s, positive; both sides of every breakpoint come on top
   */
  public static FactorTrace of(Scene scene, double safety, double step) {
    // Looked at twice: for the samples, and for what lies between them.
    Motion motion = new RememberedMotion(scene.moved());
    SlipSearch slip = new SlipSearch(scene, motion);
    FactorTrace trace = sampled(slip, motion, safety, step);
    slip.all().stream()
        .filter(SlipSearch.Least::found)
        .map(SlipSearch.Least::worst)
        .forEach(trace::lower);
    return trace;
  }

  private static FactorTrace sampled(SlipSearch slip, Motion motion, double safety, double step) {
    if (!(step > 0) || !Double.isFinite(step)) {
      throw new IllegalArgumentException("step must be positive, but was " + step);
    }
    int[] count = {0};
    Sampler.visit(motion, step, (piece, time) -> count[0]++);
    FactorTrace trace =
        new FactorTrace(
            safety, new double[SIZE * count[0]], new int[count[0]], new boolean[count[0]]);
    trace.fill(slip, motion, step);
    return trace;
  }

  private void fill(SlipSearch slip, Motion motion, double step) {
    double[] state = slip.state();
    int[] next = {0};
    Sampler.visit(
        motion,
        step,
        (piece, time) -> {
          int i = next[0]++;
          int at = SIZE * i;
          slip.loadAt(piece, time);
          samples[at] = time;
          System.arraycopy(state, MotionState.POSITION, samples, at + 1, 3);
          samples[at + SPEED] = Flat.norm(state, MotionState.VELOCITY);
          samples[at + ACCELERATION] = Flat.norm(state, MotionState.ACCELERATION);
          segments[i] = piece.segment();
          held[i] = slip.held().at(piece, time);
          if (held[i]) {
            samples[at + FACTOR] = 1 / Math.max(slip.use(), 1 / HoldModel.NO_LIMIT);
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
      int at = SIZE * nearest + FACTOR;
      samples[at] = Math.min(samples[at], worst.first().factor());
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

  /** Speed of the origin of the grip frame at a sample, m/s. */
  public double speed(int i) {
    return samples[SIZE * i + SPEED];
  }

  /** Size of its acceleration, along the path and across, m/s^2. */
  public double acceleration(int i) {
    return samples[SIZE * i + ACCELERATION];
  }

  /** First-slip factor at a sample, dimensionless; empty while the part is not held. */
  public Optional<Double> factor(int i) {
    return held[i] ? Optional.of(samples[SIZE * i + FACTOR]) : Optional.empty();
  }

  /** Factor per required safety at a sample; empty while the part is not held. */
  public Optional<Double> margin(int i) {
    return factor(i).map(f -> f / safety);
  }
}
