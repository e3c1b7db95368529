package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.grip.GuideLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.LimitUse;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.dynamics.margin.WholeGrip;
import io.github.holdpath.dynamics.margin.WholeGripFactor;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.scene.Scene;
import java.util.List;
import java.util.Optional;

/**
 * Every step from the motion at one instant to the factor, for a person to follow.
 *
 * @param scene what is explained
 * @param requiredSafety S
 * @param time s
 * @param segment the move it belongs to, from 1; 0 before the first
 * @param held whether the part counts as held there
 * @param law by which the tool moves there
 * @param state motion of the grip frame, world axes
 * @param arm from the grip frame's origin to the centre of mass, world axes, m
 * @param centreAcceleration of the centre of mass, world axes, m/s^2
 * @param load required wrench, grip frame
 * @param give shift (m) and turn (rad) of the part on its grip, then travel of each drive (m)
 * @param shares what each patch puts on the part because of the load, patch axes
 * @param limits every limit of every patch
 * @param first factor, mode, patch
 * @param opening factor at which the first pad begins to lift, or the first lip to peel
 * @param careful factor with the pressure off the middle of tilted contacts
 * @param whole factor at which nothing holds the part, with both bounds
 * @param speedHeadroom k at this instant
 * @param speedHeadroomLimit the same for a safety of 1
 * @param swing what the grip carries as the part swings on it; empty where that is not known
 * @param guides load on the guide of each jaw; empty where none is told
 * @param uncarried the part of the load that the grip cannot carry
 */
public record Explanation(
    Scene scene,
    double requiredSafety,
    double time,
    int segment,
    boolean held,
    LawAt law,
    MotionState state,
    Vec3 arm,
    Vec3 centreAcceleration,
    RequiredWrench load,
    double[] give,
    List<Wrench> shares,
    List<List<LimitUse>> limits,
    FirstSlip first,
    double opening,
    FirstSlip careful,
    WholeGripFactor whole,
    double speedHeadroom,
    double speedHeadroomLimit,
    Optional<SwingAt> swing,
    List<GuideLoad> guides,
    Wrench uncarried) {
  /** Copies what could change. */
  public Explanation {
    give = give.clone();
    shares = List.copyOf(shares);
    limits = List.copyOf(limits);
    guides = List.copyOf(guides);
  }

  /** Copy of the give. */
  @Override
  public double[] give() {
    return give.clone();
  }

  /**
   * Explains one instant; where acceleration jumps, the side with the lesser factor, and where the
   * part is taken or released the side on which it is held.
   *
   * @param scene what to explain
   * @param safety required safety S
   * @param time s, within the motion
   * @throws IllegalArgumentException if the time lies outside the motion
   */
  public static Explanation at(Scene scene, double safety, double time) {
    Motion motion = scene.moved();
    HoldModel hold = HoldModel.of(scene.grip());
    LoadModel loads =
        new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    Optional<MotionPiece> side = Optional.empty();
    Held held = new Held(motion);
    boolean anyHeld = motion.pieces().stream().anyMatch(p -> inside(p, time) && held.at(p, time));
    double least = Double.POSITIVE_INFINITY;
    double[] state = new double[MotionState.SIZE];
    for (MotionPiece piece : motion.pieces()) {
      if (!inside(piece, time) || (anyHeld && !held.at(piece, time))) {
        continue;
      }
      piece.state(time, state);
      double factor = hold.firstSlip(loads.required(MotionState.of(state)).total()).factor();
      if (factor < least) {
        least = factor;
        side = Optional.of(piece);
      }
    }
    MotionPiece piece =
        side.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "time must lie in 0 to " + motion.duration() + " s, but was " + time));
    piece.state(time, state);
    return of(
        scene,
        safety,
        time,
        piece.segment(),
        anyHeld,
        LawAt.of(motion, piece),
        hold,
        loads,
        MotionState.of(state));
  }

  private static boolean inside(MotionPiece piece, double time) {
    return time >= piece.from() && time <= piece.to();
  }

  private static Explanation of(
      Scene scene,
      double safety,
      double time,
      int segment,
      boolean held,
      LawAt law,
      HoldModel hold,
      LoadModel loads,
      MotionState state) {
    RequiredWrench load = loads.required(state);
    Wrench total = load.total();
    Vec3 arm = state.pose().rotation().rotate(scene.part().body().centreOfMass());
    Vec3 turning = state.angularVelocity();
    Vec3 acceleration =
        state
            .acceleration()
            .plus(state.angularAcceleration().cross(arm))
            .plus(turning.cross(turning.cross(arm)));
    double[] both = new double[12];
    System.arraycopy(load.gravity().toArray(), 0, both, 0, 6);
    System.arraycopy(load.motion().toArray(), 0, both, 6, 6);
    FirstSlip first = hold.firstSlip(total);
    List<Wrench> shares = hold.shares(total);
    return new Explanation(
        scene,
        safety,
        time,
        segment,
        held,
        law,
        state,
        arm,
        acceleration,
        load,
        hold.give(total),
        shares,
        hold.limits(total),
        first,
        hold.opening(total),
        hold.careful(total),
        WholeGrip.of(scene.grip()).factor(total, first.factor() > 0 ? first.factor() : 1),
        new SpeedHeadroom(hold, safety, hold.workspace()).of(both),
        new SpeedHeadroom(hold, 1, hold.workspace()).of(both),
        held ? GiveStudy.at(scene, scene.moved(), hold, time) : Optional.empty(),
        scene.grip().guides().stream().map(g -> GuideLoad.of(g, hold.patches(), shares)).toList(),
        hold.uncarried(total));
  }
}
