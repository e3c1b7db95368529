package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.scene.Scene;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Judges whether a grip keeps hold of the part all along a motion: samples, then refines between
 * the samples wherever the least factor may lie (theory, section 3.5).
 *
 * <p>The use of the limits (1 over the factor) is what is searched: it is finite and smooth but for
 * kinks. Not for more than one thread at a time.
 */
public final class HoldStudy {
  /** Spacing of the samples that are searched, s. */
  public static final double STEP = 1e-3;

  /** A rise below this part of the use is not looked for; the worst case may miss 1e-4. */
  private static final double LEAST_GAIN = 1e-6;

  /** Uses that differ by less than this part are one: rounding must not choose the instant. */
  private static final double SAME = 1e-12;

  private final Scene scene;
  private final double safety;
  private final Motion motion;
  private final Held held;
  private final HoldModel hold;
  private final LoadModel loads;
  private final HoldModel.Workspace ws;
  private final SpeedHeadroom headroom;
  private final CarefulLook care;
  private final double[] state = new double[MotionState.SIZE];
  private final double[] load = new double[LoadModel.SIZE];
  private final double[] whole = new double[6];
  private final double[] rotation = new double[9];

  private HoldStudy(Scene scene, double safety) {
    this.scene = scene;
    this.safety = safety;
    this.motion = scene.motion().motion();
    this.held = new Held(motion);
    this.hold = HoldModel.of(scene.grip());
    this.loads = new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    this.ws = hold.workspace();
    this.headroom = new SpeedHeadroom(hold, safety, ws);
    this.care = new CarefulLook(hold, safety);
  }

  /**
   * Judges a scene.
   *
   * @param scene what to judge
   * @param safety required safety S, at least 1
   */
  public static StudyResult run(Scene scene, double safety) {
    return new HoldStudy(scene, safety).judge();
  }

  private StudyResult judge() {
    int moves = motion.segments().size();
    List<Tightest> tight = new ArrayList<>();
    for (int i = 0; i <= moves; i++) {
      tight.add(new Tightest(i));
    }
    for (MotionPiece piece : motion.pieces()) {
      // Waits before the first move count to it.
      Tightest t = tight.get(moves == 0 ? 0 : Math.max(1, piece.segment()));
      if (held.in(piece)) {
        search(piece, held.from(piece), held.to(piece), t);
      }
    }
    List<SegmentResult> segments = new ArrayList<>();
    for (int i = 1; i <= moves; i++) {
      Tightest t = tight.get(i);
      segments.add(
          new SegmentResult(
              motion.segments().get(i - 1),
              t.found() ? Optional.of(t.worst()) : Optional.empty(),
              t.headroom()));
    }
    Tightest over = tight.stream().filter(Tightest::found).reduce(Tightest::worse).orElseThrow();
    Worst worst = over.worst();
    double speed = tight.stream().mapToDouble(Tightest::headroom).min().orElseThrow();
    return new StudyResult(
        scene,
        motion,
        safety,
        worst.first().factor() >= safety ? Verdict.HOLDS : Verdict.DOES_NOT_HOLD,
        worst,
        speed,
        segments,
        PeakLoads.of(scene, motion, STEP),
        preloadUse(),
        Assumptions.of(scene, motion),
        warnings());
  }

  private List<String> warnings() {
    List<String> list = new ArrayList<>(Plausibility.warnings(scene, motion));
    care.warning().ifPresent(list::add);
    return list;
  }

  /** Use of the limits at a time; leaves the load in {@link #load}. */
  private double useAt(MotionPiece piece, double time) {
    piece.state(time, state);
    loads.required(state, load, rotation);
    for (int k = 0; k < 6; k++) {
      whole[k] = load[k] + load[6 + k];
    }
    return hold.use(whole, 0, ws);
  }

  private double headroomAt(MotionPiece piece, double time, double bound) {
    piece.state(time, state);
    loads.required(state, load, rotation);
    return headroom.squared(load, bound);
  }

  private void search(MotionPiece piece, double from, double to, Tightest t) {
    if (piece.still() || to == from) {
      t.offer(piece, from, useAt(piece, from));
      t.offerSpeed(piece, from, headroom.squared(load, t.speedSquared));
      care.look(from, whole, t.use);
      return;
    }
    Grid grid = new Grid(from, to);
    double[] use = new double[grid.size()];
    for (int i = 0; i < use.length; i++) {
      double time = grid.time(i);
      use[i] = useAt(piece, time);
      t.offer(piece, time, use[i]);
      t.offerSpeed(piece, time, headroom.squared(load, t.speedSquared));
      care.look(time, whole, use[i]);
    }
    for (int i = 1; i < use.length - 1; i++) {
      double rise = Math.max(Math.abs(use[i] - use[i - 1]), Math.abs(use[i] - use[i + 1]));
      boolean peak = use[i] >= use[i - 1] && use[i] >= use[i + 1];
      // Between samples a smooth use rises by no more than it does from sample to sample; twice
      // that is the bound which spares the search where nothing can be found.
      if (peak && 2 * rise > LEAST_GAIN * use[i] && use[i] + 2 * rise >= t.use) {
        double time =
            Peak.of(x -> useAt(piece, x), grid.time(i - 1), grid.time(i), grid.time(i + 1));
        t.offer(piece, time, useAt(piece, time));
      }
    }
    if (t.speedPiece == piece && t.speedSquared > 0) {
      refineSpeed(piece, grid, t);
    }
  }

  private void refineSpeed(MotionPiece piece, Grid grid, Tightest t) {
    int at = grid.near(t.speedTime);
    if (at == 0 || at == grid.size() - 1) {
      return;
    }
    double most = SpeedHeadroom.LARGEST * SpeedHeadroom.LARGEST;
    double time =
        Peak.of(
            x -> -headroomAt(piece, x, most), grid.time(at - 1), grid.time(at), grid.time(at + 1));
    t.offerSpeed(piece, time, headroomAt(piece, time, t.speedSquared));
  }

  private Optional<PreloadUse> preloadUse() {
    return hold.patches().stream()
        .filter(p -> !p.ledge())
        .map(HoldStudy::preloadUse)
        .filter(u -> u.permitted() < Double.POSITIVE_INFINITY)
        .max(Comparator.comparing(PreloadUse::ratio));
  }

  private static PreloadUse preloadUse(ContactPatch p) {
    double area = p.shape().area();
    double permitted =
        area > 0 ? Math.min(p.maxPressure(), p.maxPeakPressure()) * area : Double.POSITIVE_INFINITY;
    return new PreloadUse(p.name(), p.preload(), permitted);
  }

  /** Sample times of a stretch: its ends, and the whole steps between. */
  private static final class Grid {
    private final double from;
    private final double to;
    private final long first;
    private final int inside;

    Grid(double from, double to) {
      this.from = from;
      this.to = to;
      // A quotient may round to either side of a whole step that is one of the ends.
      long start = (long) Math.floor(from / STEP);
      while (start * STEP <= from) {
        start++;
      }
      long last = (long) Math.ceil(to / STEP);
      while (last * STEP >= to) {
        last--;
      }
      this.first = start;
      this.inside = (int) Math.max(1, last - first + 1);
    }

    int size() {
      return inside + 2;
    }

    double time(int i) {
      if (i == 0) {
        return from;
      }
      if (i == inside + 1) {
        return to;
      }
      double t = (first + i - 1) * STEP;
      // A stretch shorter than a step gets its middle.
      return t > from && t < to ? t : from + (to - from) / 2;
    }

    int near(double time) {
      return (int) Math.max(0, Math.min(size() - 1, Math.round(time / STEP) - first + 1));
    }
  }

  /** The tightest instants found so far in one segment. */
  private final class Tightest {
    private final int segment;
    private double use = -1;
    private double time;
    private double speedSquared = SpeedHeadroom.LARGEST * SpeedHeadroom.LARGEST;
    private double speedTime;
    private Optional<MotionPiece> where = Optional.empty();
    private @Nullable MotionPiece speedPiece;

    Tightest(int segment) {
      this.segment = segment;
    }

    boolean found() {
      return where.isPresent();
    }

    Tightest worse(Tightest later) {
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

    void offerSpeed(MotionPiece piece, double at, double squared) {
      if (squared < speedSquared) {
        speedSquared = squared;
        speedTime = at;
        speedPiece = piece;
      }
    }

    double headroom() {
      return Math.sqrt(speedSquared);
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
