package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the least first-slip factor of each move while the part is held, rigid on its grip:
 * samples, then refines between the samples wherever it may lie (theory, section 3.5).
 *
 * <p>The use of the limits (1 over the factor) is what is searched: it is finite and smooth but for
 * kinks. A workspace, for one thread at a time.
 */
final class SlipSearch {
  /** A rise below this part of the use is not looked for; the worst case may miss 1e-4. */
  private static final double LEAST_GAIN = 1e-6;

  /** Uses that differ by less than this part are one: rounding must not choose the instant. */
  private static final double SAME = 1e-12;

  private final Motion motion;
  private final Held held;
  private final HoldModel hold;
  private final HoldModel.Workspace ws;
  private final LoadModel loads;
  private final double[] state = new double[MotionState.SIZE];
  private final double[] load = new double[LoadModel.SIZE];
  private final double[] whole = new double[6];
  private final double[] rotation = new double[9];

  SlipSearch(Scene scene, Motion motion) {
    this.motion = motion;
    this.held = new Held(motion);
    this.hold = HoldModel.of(scene.grip());
    this.ws = hold.workspace();
    this.loads = new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
  }

  Held held() {
    return held;
  }

  HoldModel hold() {
    return hold;
  }

  HoldModel.Workspace workspace() {
    return ws;
  }

  /** Motion state where {@link #useAt} or {@link #loadAt} looked last; lent. */
  double[] state() {
    return state;
  }

  /** Load there, gravity and motion apart; lent. */
  double[] load() {
    return load;
  }

  /** The whole load where {@link #useAt} looked last; lent. */
  double[] whole() {
    return whole;
  }

  /** Looks at the load at a time. */
  void loadAt(MotionPiece piece, double time) {
    piece.state(time, state);
    loads.required(state, load, rotation);
  }

  /** Use of the limits at a time. */
  double useAt(MotionPiece piece, double time) {
    loadAt(piece, time);
    return use();
  }

  /** Use of the limits by the load that was looked at last. */
  double use() {
    for (int k = 0; k < 6; k++) {
      whole[k] = load[k] + load[6 + k];
    }
    return hold.use(whole, 0, ws);
  }

  /** The tightest instant of each move, by its index; one before the first move at 0. */
  List<Least> all() {
    List<Least> all = new ArrayList<>();
    for (int i = 0; i <= motion.segments().size(); i++) {
      all.add(new Least(i));
    }
    for (MotionPiece piece : motion.pieces()) {
      if (held.in(piece)) {
        SampleGrid grid = grid(piece);
        Least least = all.get(owner(piece));
        refine(piece, grid, sample(piece, grid, least, (i, time, use) -> {}), least);
      }
    }
    return all;
  }

  /** The move that a piece counts to: waits before the first move count to it. */
  int owner(MotionPiece piece) {
    return motion.segments().isEmpty() ? 0 : Math.max(1, piece.segment());
  }

  /** Sample times of the held part of a piece. */
  SampleGrid grid(MotionPiece piece) {
    return new SampleGrid(held.from(piece), held.to(piece), HoldStudy.STEP);
  }

  /** Number of samples that are looked at. */
  static int count(MotionPiece piece, SampleGrid grid) {
    return piece.still() || grid.instant() ? 1 : grid.size();
  }

  /** What else is done at a sample. */
  @FunctionalInterface
  interface Also {
    /** At one sample; {@link #load} and {@link #whole} are those of it. */
    void at(int i, double time, double use);
  }

  /** Looks at the samples of a piece; their uses. */
  double[] sample(MotionPiece piece, SampleGrid grid, Least least, Also also) {
    double[] use = new double[count(piece, grid)];
    for (int i = 0; i < use.length; i++) {
      double time = grid.time(i);
      use[i] = useAt(piece, time);
      least.offer(piece, time, use[i]);
      also.at(i, time, use[i]);
    }
    return use;
  }

  /** Looks between the samples of a piece. */
  void refine(MotionPiece piece, SampleGrid grid, double[] use, Least least) {
    for (int i = 1; i < use.length - 1; i++) {
      double rise = Math.max(Math.abs(use[i] - use[i - 1]), Math.abs(use[i] - use[i + 1]));
      boolean peak = use[i] >= use[i - 1] && use[i] >= use[i + 1];
      // Between samples a smooth use rises by no more than it does from sample to sample; twice
      // that is the bound which spares the search where nothing can be found.
      if (peak && 2 * rise > LEAST_GAIN * use[i] && use[i] + 2 * rise >= least.use) {
        double time =
            Peak.of(x -> useAt(piece, x), grid.time(i - 1), grid.time(i), grid.time(i + 1));
        least.offer(piece, time, useAt(piece, time));
      }
    }
  }

  /** The tightest instant found so far in one move. */
  final class Least {
    private final int segment;
    private double use = -1;
    private double time;
    private Optional<MotionPiece> where = Optional.empty();

    Least(int segment) {
      this.segment = segment;
    }

    boolean found() {
      return where.isPresent();
    }

    Least worse(Least later) {
      return later.use > use * (1 + SAME) ? later : this;
    }

    /** Takes what is worse than before; of equals, but for rounding, the first stays. */
    void offer(MotionPiece piece, double at, double found) {
      if (found > use * (1 + SAME) || use < 0) {
        use = found;
        time = at;
        where = Optional.of(piece);
      }
    }

    Worst worst() {
      where.orElseThrow().state(time, state);
      MotionState there = MotionState.of(state);
      var required = loads.required(there);
      FirstSlip first = hold.firstSlip(required.total(), ws);
      return new Worst(time, segment, first, there, required);
    }
  }
}
