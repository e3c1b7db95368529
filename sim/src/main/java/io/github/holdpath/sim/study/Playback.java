package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.LimitUse;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.robot.RobotFigure;
import io.github.holdpath.sim.scene.Scene;
import java.util.List;
import java.util.Optional;

/**
 * A judged motion instant by instant, for showing it: where the grip is, what the part asks of it
 * and how far each contact is used. The part counts as rigid on its grip. Not for more than one
 * thread at a time.
 */
public final class Playback {
  private final Motion motion;
  private final double safety;
  private final Held held;
  private final HoldModel hold;
  private final LoadModel loads;
  private final Pose taken;
  private final Pose left;
  private final double[] state = new double[MotionState.SIZE];
  private final Scene scene;

  /**
   * Of a scene.
   *
   * @param scene whose motion is played
   * @param safety required safety S
   */
  public Playback(Scene scene, double safety) {
    this.scene = scene;
    this.motion = scene.moved();
    this.safety = safety;
    this.held = new Held(motion);
    this.hold = HoldModel.of(scene.grip());
    this.loads = new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    this.taken = gripAt(motion.heldFrom());
    this.left = gripAt(motion.heldTo());
  }

  /**
   * What there is to see at one instant.
   *
   * @param time s
   * @param segment move, from 1; 0 before the first
   * @param held whether the part is held
   * @param state motion of the grip frame, world axes
   * @param load required wrench, grip frame
   * @param first factor, mode and patch; empty while the part is not held
   * @param margins of each patch: its least factor per required safety; empty while not held
   * @param forces on the part, as far as it is held
   * @param robot figure of the robot; empty where there is none
   * @param part where the grip frame is that the part was or will be held in, {@code X_WT}: while
   *     it is not held it lies where it is taken or was left
   */
  public record Instant(
      double time,
      int segment,
      boolean held,
      MotionState state,
      RequiredWrench load,
      Optional<FirstSlip> first,
      List<Double> margins,
      PartForces forces,
      Optional<RobotFigure> robot,
      Pose part) {
    /** Copies the list. */
    public Instant {
      margins = List.copyOf(margins);
    }
  }

  /** Length of the motion, s. */
  public double duration() {
    return motion.duration();
  }

  /** Where one piece of the motion ends and the next begins, s, ascending; its start too. */
  public List<Double> pieceStarts() {
    return motion.pieces().stream().map(MotionPiece::from).toList();
  }

  /**
   * The motion at a time. Where two pieces meet, the later one, or the earlier one if its factor is
   * less or the part is held in it alone.
   *
   * @param time s; what lies outside the motion is taken as its nearer end
   */
  public Instant at(double time) {
    double t = Math.max(0, Math.min(motion.duration(), time));
    int i = pieceAt(t);
    Instant later = in(i, t);
    if (i == 0 || motion.pieces().get(i).from() < t) {
      return later;
    }
    Instant earlier = in(i - 1, t);
    return tightness(earlier) < tightness(later) ? earlier : later;
  }

  private static double tightness(Instant side) {
    return side.first().map(FirstSlip::factor).orElse(Double.POSITIVE_INFINITY);
  }

  private Instant in(int index, double t) {
    MotionPiece piece = motion.pieces().get(index);
    piece.state(t, state);
    MotionState there = MotionState.of(state);
    RequiredWrench load = loads.required(there);
    boolean isHeld = held.at(piece, t);
    return new Instant(
        t,
        piece.segment(),
        isHeld,
        there,
        load,
        isHeld ? Optional.of(hold.firstSlip(load.total())) : Optional.empty(),
        isHeld ? hold.limits(load.total()).stream().map(this::margin).toList() : List.of(),
        PartForces.of(scene.part().body(), there, load),
        robot(index, t),
        isHeld ? there.pose() : t < motion.heldTo() ? taken : left);
  }

  /** Pose of the grip frame at a time; of a part that is never held, at the start. */
  private Pose gripAt(double time) {
    double t = motion.heldFrom() < motion.heldTo() ? time : 0;
    motion.pieces().get(pieceAt(t)).state(t, state);
    return MotionState.of(state).pose();
  }

  private Optional<RobotFigure> robot(int index, double t) {
    return scene.robot().flatMap(cell -> cell.robot().figure(cell.track().values(index, t)));
  }

  private int pieceAt(double time) {
    List<MotionPiece> pieces = motion.pieces();
    int low = 0;
    int high = pieces.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (pieces.get(middle).from() <= time) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  private double margin(List<LimitUse> limits) {
    return limits.stream()
            .filter(LimitUse::failing)
            .mapToDouble(LimitUse::factor)
            .min()
            .orElse(HoldModel.NO_LIMIT)
        / safety;
  }
}
