package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An illustration: the part leaves the grip at one instant, with the grip's velocity and turning,
 * and flies on without air until the lowest point of its shape touches the floor (theory, section
 * 9). A part that lets go slips or peels first, and touches grip, robot and fence on its way: none
 * of that is modelled, so the place of landing is no safety distance.
 *
 * <p><b>Caution.</b> Keep people out of the whole reach of the robot and of what it may throw.
 */
public final class Drop {
  /** Spacing of the poses that are kept, s. */
  private static final double STEP = 1e-3;

  /** To what the instants of leaving and landing are narrowed, s. */
  private static final double INSTANT = 1e-9;

  /** A flight that takes longer is none over a floor, s. */
  private static final double LONGEST = 60;

  private final Cause cause;
  private final double leaves;
  private final double floor;
  private final List<Pose> poses;
  private final FreeFlight flight;
  private final double leavingEnergy;

  /** Why the part leaves the grip. */
  public enum Cause {
    /** The first-slip factor, of the part rigid on its grip, falls below 1. */
    FACTOR_BELOW_ONE,
    /** The user chose the instant, as for a loss of supply. */
    CHOSEN
  }

  private Drop(
      Cause cause,
      double leaves,
      double floor,
      List<Pose> poses,
      FreeFlight flight,
      double leavingEnergy) {
    this.cause = cause;
    this.leaves = leaves;
    this.floor = floor;
    this.poses = List.copyOf(poses);
    this.flight = flight;
    this.leavingEnergy = leavingEnergy;
  }

  /**
   * The drop where the first-slip factor falls below 1 for the first time; empty if it never does.
   *
   * @param scene whose motion is played
   * @param floor height at which the part lands, world z, m
   */
  public static Optional<Drop> first(Scene scene, double floor) {
    OptionalDouble time = firstBelowOne(scene);
    return time.isEmpty()
        ? Optional.empty()
        : of(Cause.FACTOR_BELOW_ONE, scene, time.getAsDouble(), floor);
  }

  /**
   * The drop at a chosen instant, as if the supply were lost all at once; empty if the part is not
   * held then, or if gravity does not bring it to the floor within a minute.
   *
   * @param scene whose motion is played
   * @param time s
   * @param floor height at which the part lands, world z, m
   */
  public static Optional<Drop> at(Scene scene, double time, double floor) {
    return of(Cause.CHOSEN, scene, time, floor);
  }

  /** First instant at which the factor is below 1 while the part is held, s. */
  static OptionalDouble firstBelowOne(Scene scene) {
    Motion motion = scene.moved();
    Held held = new Held(motion);
    HoldModel hold = HoldModel.of(scene.grip());
    HoldModel.Workspace ws = hold.workspace();
    LoadModel loads =
        new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    UseAt use = new UseAt(loads, hold, ws);
    for (MotionPiece piece : motion.pieces()) {
      if (!held.in(piece)) {
        continue;
      }
      SampleGrid grid = new SampleGrid(held.from(piece), held.to(piece), STEP);
      for (int i = 0; i < grid.size(); i++) {
        if (use.of(piece, grid.time(i)) > 1) {
          return OptionalDouble.of(
              i == 0 ? grid.time(0) : crossing(use, piece, grid.time(i - 1), grid.time(i)));
        }
      }
    }
    return OptionalDouble.empty();
  }

  private static double crossing(UseAt use, MotionPiece piece, double below, double above) {
    double low = below;
    double high = above;
    while (high - low > INSTANT) {
      double middle = (low + high) / 2;
      if (use.of(piece, middle) > 1) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** Use of the limits at a time. */
  private static final class UseAt {
    private final LoadModel loads;
    private final HoldModel hold;
    private final HoldModel.Workspace ws;
    private final double[] state = new double[MotionState.SIZE];
    private final double[] load = new double[LoadModel.SIZE];
    private final double[] sum = new double[6];
    private final double[] scratch = new double[9];

    UseAt(LoadModel loads, HoldModel hold, HoldModel.Workspace ws) {
      this.loads = loads;
      this.hold = hold;
      this.ws = ws;
    }

    double of(MotionPiece piece, double time) {
      piece.state(time, state);
      loads.required(state, load, scratch);
      for (int k = 0; k < 6; k++) {
        sum[k] = load[k] + load[6 + k];
      }
      return hold.use(sum, 0, ws);
    }
  }

  private static Optional<Drop> of(Cause cause, Scene scene, double time, double floor) {
    if (!Double.isFinite(time) || !Double.isFinite(floor)) {
      throw new IllegalArgumentException(
          "time and floor must be finite, but were " + time + " and " + floor);
    }
    Motion motion = scene.moved();
    Held held = new Held(motion);
    for (MotionPiece piece : motion.pieces()) {
      if (time >= piece.from() && time <= piece.to() && held.at(piece, time)) {
        double[] state = new double[MotionState.SIZE];
        piece.state(time, state);
        return from(cause, scene, MotionState.of(state), time, floor);
      }
    }
    return Optional.empty();
  }

  /** The same from a given motion of the grip frame. */
  static Optional<Drop> from(
      Cause cause, Scene scene, MotionState state, double time, double floor) {
    Vec3 gravity = scene.site().gravity();
    FreeFlight flight = new FreeFlight(scene.part().body(), state, gravity);
    double energy = flight.energy();
    List<Pose> poses = new ArrayList<>();
    poses.add(flight.pose());
    for (int i = 1; lowest(scene.part(), flight.pose()) > floor; i++) {
      if (i * STEP > LONGEST) {
        return Optional.empty();
      }
      flight.to(i * STEP);
      poses.add(flight.pose());
    }
    if (poses.size() == 1) {
      return Optional.of(new Drop(cause, time, floor, poses, flight, energy));
    }
    // The last step again, up to the touch.
    double low = (poses.size() - 2) * STEP;
    FreeFlight landing = new FreeFlight(scene.part().body(), state, gravity);
    landing.to(low);
    Pose before = landing.pose();
    double high = low + STEP;
    Pose after = flight.pose();
    double from = low;
    while (high - low > INSTANT) {
      double middle = (low + high) / 2;
      if (lowest(scene.part(), between(before, after, (middle - from) / STEP, landing, middle))
          > floor) {
        low = middle;
      } else {
        high = middle;
      }
    }
    landing.to(high);
    poses.set(poses.size() - 1, landing.pose());
    return Optional.of(new Drop(cause, time, floor, poses, landing, energy));
  }

  /** A turn within one step, the place on the parabola. */
  private static Pose between(Pose a, Pose b, double share, FreeFlight flight, double time) {
    Vec3 turn = b.rotation().times(a.rotation().inverse()).rotationVector();
    double angle = turn.norm() * share;
    var rotation =
        angle == 0 ? a.rotation() : Quaternion.ofAxisAngle(turn.unit(), angle).times(a.rotation());
    return flight.poseWith(rotation, time);
  }

  /** Height of the lowest point of the part's shape, or of its centre of mass, m. */
  private static double lowest(Scene.Part part, Pose pose) {
    if (part.shape().isEmpty()) {
      return pose.apply(part.body().centreOfMass()).z();
    }
    Vec3 down = pose.rotation().rotateBack(new Vec3(0, 0, -1));
    return pose.apply(part.shapeCentre()).z() - part.shape().get().reach(down);
  }

  /** Why it leaves. */
  public Cause cause() {
    return cause;
  }

  /** Instant at which the part leaves the grip, s. */
  public double leaves() {
    return leaves;
  }

  /** Instant at which its lowest point touches the floor, s. */
  public double lands() {
    return leaves + flight.time();
  }

  /** Height of the floor, world z, m. */
  public double floor() {
    return floor;
  }

  /**
   * The frame that carried the part, fixed to it ever since; before and after the flight its ends.
   *
   * @param time s
   */
  public Pose pose(double time) {
    double t = Math.max(0, Math.min(flight.time(), time - leaves));
    int i = (int) Math.min(poses.size() - 1, Math.floor(t / STEP));
    if (i + 1 >= poses.size()) {
      return poses.get(poses.size() - 1);
    }
    double span = Math.min(STEP, flight.time() - i * STEP);
    double share = span > 0 ? Math.min(1, (t - i * STEP) / span) : 0;
    return between(poses.get(i), poses.get(i + 1), share, flight, t);
  }

  /** Centre of mass at a time, world axes, m; before and after the flight its ends. */
  public Vec3 centre(double time) {
    return flight.centre(Math.max(0, Math.min(flight.time(), time - leaves)));
  }

  /** Where the centre of mass is as the part lands, world axes, m. */
  public Vec3 landing() {
    return flight.centre(flight.time());
  }

  /** Speed of the centre of mass on leaving, m/s. */
  public double leavingSpeed() {
    return flight.velocity(0).norm();
  }

  /** Speed of the centre of mass on landing, m/s. */
  public double landingSpeed() {
    return flight.velocity(flight.time()).norm();
  }

  /** Energy of motion on leaving, with that of the turning, J. */
  public double leavingEnergy() {
    return leavingEnergy;
  }

  /** Energy of motion on landing, with that of the turning, J. */
  public double landingEnergy() {
    return flight.energy();
  }

  /** How far the centre of mass flies over the ground, m. */
  public double reach() {
    Vec3 way = landing().minus(flight.centre(0));
    return Math.hypot(way.x(), way.y());
  }
}
