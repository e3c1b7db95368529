package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.dynamics.margin.WholeGrip;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.scene.Scene;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Judges whether a grip keeps hold of the part all along a motion: the least factor by {@link
 * SlipSearch}, and with its samples how fast the motion may run and where nothing holds any more
 * (theory, sections 3.5 to 3.9). Not for more than one thread at a time.
 */
public final class HoldStudy {
  /** Spacing of the samples that are searched, s. */
  public static final double STEP = 1e-3;

  private final Scene scene;
  private final double safety;
  private final Motion motion;
  private final SlipSearch slip;
  private final HoldModel hold;
  private final SpeedHeadroom headroom;
  private final SpeedHeadroom headroomLimit;
  private final DropSearch drop;
  private final CarefulLook care;
  private final double[] load = new double[LoadModel.SIZE];

  private HoldStudy(Scene scene, double safety) {
    this.scene = scene;
    this.safety = safety;
    this.motion = scene.moved();
    this.slip = new SlipSearch(scene, motion);
    this.hold = slip.hold();
    HoldModel.Workspace ws = slip.workspace();
    this.headroom = new SpeedHeadroom(hold, safety, ws);
    this.headroomLimit = new SpeedHeadroom(hold, 1, ws);
    this.drop = new DropSearch(hold, ws, WholeGrip.of(scene.grip()));
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
      if (slip.held().in(piece)) {
        search(piece, slip.grid(piece), tight.get(slip.owner(piece)));
      }
    }
    tight.forEach(this::refineDrop);
    List<SegmentResult> segments = new ArrayList<>();
    for (int i = 1; i <= moves; i++) {
      Tightest t = tight.get(i);
      segments.add(
          new SegmentResult(
              motion.segments().get(i - 1),
              t.found() ? Optional.of(t.slip.worst()) : Optional.empty(),
              t.found() ? Optional.of(t.dropBound()) : Optional.empty(),
              t.speed.k()));
    }
    Tightest over = tight.stream().filter(Tightest::found).reduce(Tightest::worse).orElseThrow();
    Worst worst = over.slip.worst();
    Optional<GiveResult> give = GiveStudy.run(scene, motion, hold);
    Optional<GuideUse> guide = GuideLook.most(scene, motion, hold, STEP);
    PeakLoads peaks = PeakLoads.of(scene, motion, STEP);
    Optional<JointUse> joints = JointLook.of(scene, motion);
    double least =
        Math.min(
            worst.first().factor(), give.map(GiveResult::factor).orElse(Double.POSITIVE_INFINITY));
    return new StudyResult(
        scene,
        motion,
        safety,
        least >= safety ? Verdict.HOLDS : Verdict.DOES_NOT_HOLD,
        worst,
        tight.stream()
            .filter(Tightest::found)
            .map(Tightest::dropBound)
            .min(Comparator.comparingDouble(DropBound::factor))
            .orElseThrow(),
        tight.stream().mapToDouble(t -> t.speed.k()).min().orElseThrow(),
        tight.stream().mapToDouble(t -> t.speedLimit.k()).min().orElseThrow(),
        segments,
        give,
        Helps.of(scene.grip(), worst),
        peaks.peaks(),
        peaks.payload(),
        preloadUse(),
        guide,
        joints,
        Assumptions.of(scene, motion, GiveStudy.obstacle(scene, motion, hold)),
        warnings(give, guide, joints, peaks.payload()));
  }

  private List<String> warnings(
      Optional<GiveResult> give,
      Optional<GuideUse> guide,
      Optional<JointUse> joints,
      Optional<Payload> payload) {
    List<String> list = new ArrayList<>(Plausibility.warnings(scene, motion));
    care.warning().ifPresent(list::add);
    guide.flatMap(GuideLook::warning).ifPresent(list::add);
    give.ifPresent(g -> list.addAll(g.notes()));
    payload.flatMap(Payload::warning).ifPresent(list::add);
    scene.robot().ifPresent(r -> list.addAll(JointLook.warnings(joints.orElseThrow(), r.track())));
    return list;
  }

  private double headroomAt(SpeedHeadroom of, MotionPiece piece, double time, double bound) {
    slip.loadAt(piece, time);
    return of.squared(slip.load(), bound);
  }

  private void search(MotionPiece piece, SampleGrid grid, Tightest t) {
    int samples = SlipSearch.count(piece, grid);
    double[] split = new double[LoadModel.SIZE * samples];
    drop.begin(samples);
    double[] use =
        slip.sample(
            piece,
            grid,
            t.slip,
            (i, time, found) -> {
              System.arraycopy(slip.load(), 0, split, LoadModel.SIZE * i, LoadModel.SIZE);
              care.look(time, slip.whole(), found);
              drop.add(time, slip.whole(), found);
            });
    int tight = 0;
    for (int i = 1; i < use.length; i++) {
      tight = use[i] > use[tight] ? i : tight;
    }
    // The tightest sample first: most others then cannot be slower, and cost little.
    slowest(piece, grid, split, tight, t);
    for (int i = 0; i < use.length; i++) {
      slowest(piece, grid, split, i, t);
    }
    double known = t.dropUse;
    t.dropUse = drop.search(known);
    if (t.dropUse > known) {
      t.dropTime = drop.time();
      t.dropPiece = piece;
    }
    slip.refine(piece, grid, use, t.slip);
    if (samples > 1) {
      refine(headroom, piece, grid, t.speed);
      refine(headroomLimit, piece, grid, t.speedLimit);
    }
  }

  private void slowest(MotionPiece piece, SampleGrid grid, double[] split, int i, Tightest t) {
    System.arraycopy(split, LoadModel.SIZE * i, load, 0, LoadModel.SIZE);
    t.speed.offer(piece, grid.time(i), headroom.squared(load, t.speed.squared));
    t.speedLimit.offer(piece, grid.time(i), headroomLimit.squared(load, t.speedLimit.squared));
  }

  private void refine(SpeedHeadroom of, MotionPiece piece, SampleGrid grid, Slowest slowest) {
    int at = grid.near(slowest.time);
    if (slowest.piece != piece || slowest.squared == 0 || at == 0 || at == grid.size() - 1) {
      return;
    }
    double most = SpeedHeadroom.LARGEST * SpeedHeadroom.LARGEST;
    double time =
        Peak.of(
            x -> -headroomAt(of, piece, x, most),
            grid.time(at - 1),
            grid.time(at),
            grid.time(at + 1));
    slowest.offer(piece, time, headroomAt(of, piece, time, slowest.squared));
  }

  /** Looks between the samples beside the one with the least whole-grip factor of a move. */
  private void refineDrop(Tightest t) {
    MotionPiece piece = t.dropPiece;
    if (piece == null || Double.isInfinite(t.dropUse)) {
      return;
    }
    double early = Math.max(slip.held().from(piece), t.dropTime - STEP);
    double late = Math.min(slip.held().to(piece), t.dropTime + STEP);
    if (!(early < t.dropTime && t.dropTime < late)) {
      return;
    }
    double fall = t.dropUse - Math.min(dropUseAt(piece, early), dropUseAt(piece, late));
    if (fall > DropSearch.TOLERANCE * t.dropUse) {
      double time = Peak.of(x -> dropUseAt(piece, x), early, t.dropTime, late);
      double use = dropUseAt(piece, time);
      if (use > t.dropUse) {
        t.dropUse = use;
        t.dropTime = time;
      }
    }
  }

  private double dropUseAt(MotionPiece piece, double time) {
    double first = slip.useAt(piece, time);
    return drop.use(slip.whole(), 0, first);
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

  /** The least speed headroom found so far. */
  private static final class Slowest {
    private double squared = SpeedHeadroom.LARGEST * SpeedHeadroom.LARGEST;
    private double time;
    private @Nullable MotionPiece piece;

    void offer(MotionPiece where, double at, double found) {
      if (found < squared) {
        squared = found;
        time = at;
        piece = where;
      }
    }

    double k() {
      return Math.sqrt(squared);
    }
  }

  /** The tightest instants found so far in one segment. */
  private final class Tightest {
    private final SlipSearch.Least slip;
    private final Slowest speed = new Slowest();
    private final Slowest speedLimit = new Slowest();
    private double dropUse;
    private double dropTime;
    private @Nullable MotionPiece dropPiece;

    Tightest(int segment) {
      this.slip = HoldStudy.this.slip.new Least(segment);
    }

    boolean found() {
      return slip.found();
    }

    Tightest worse(Tightest later) {
      return slip.worse(later.slip) == slip ? this : later;
    }

    DropBound dropBound() {
      double fine = dropUse;
      if (dropPiece != null) {
        double first = HoldStudy.this.slip.useAt(dropPiece, dropTime);
        fine = drop.fineUse(HoldStudy.this.slip.whole(), first);
      }
      return new DropBound(Math.min(HoldModel.NO_LIMIT, 1 / fine), dropTime);
    }
  }
}
