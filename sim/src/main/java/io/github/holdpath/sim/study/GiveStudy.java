package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.compliance.FreeSwing;
import io.github.holdpath.dynamics.compliance.GripModes;
import io.github.holdpath.dynamics.compliance.GripResponse;
import io.github.holdpath.dynamics.compliance.GripStiffness;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.GripSprings;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Lets the part swing on its grip along a motion, from the instant at which it is taken to that at
 * which it is let go (theory, section 7): how much the swing adds to the load, what is then in
 * hand, and when the part has come to rest. Not for more than one thread at a time.
 */
public final class GiveStudy {
  /** Speeds below this, m/s and rad/s, count as standing still. */
  private static final double NO_SPEED = 1e-9;

  private final Scene scene;
  private final Motion motion;
  private final Scene.Give give;
  private final Held held;
  private final LoadModel loads;
  private final Vec3 centre;
  private final GripModes modes;
  private final GripResponse response;
  private final GiveScan scan;
  private final List<GiveResult.Stop> stops = new ArrayList<>();
  private final double[] state = new double[MotionState.SIZE];
  private final double[] load = new double[LoadModel.SIZE];
  private final double[] rotation = new double[9];

  private GiveStudy(Scene scene, Motion motion, HoldModel hold, Scene.Give give, Start start) {
    this.scene = scene;
    this.motion = motion;
    this.give = give;
    this.held = start.held;
    this.loads = start.loads;
    this.centre = scene.part().body().centreOfMass();
    this.modes = GripModes.of(start.stiffness, scene.part().body(), scene.part().air());
    this.response = new GripResponse(modes, give.damping());
    this.response.rest(start.load);
    this.scan = new GiveScan(hold, response, modes, centre, motion.segments().size(), start.ledges);
  }

  /** What is known when the part is taken. */
  private record Start(
      Held held, LoadModel loads, double[] load, int ledges, GripStiffness stiffness) {}

  /**
   * Lets the part swing.
   *
   * @param scene with the part, its grip and how the grip gives
   * @param motion of the grip
   * @param hold of the scene's grip
   * @return empty where {@link #obstacle} says why
   */
  public static Optional<GiveResult> run(Scene scene, Motion motion, HoldModel hold) {
    if (obstacle(scene, motion, hold).isPresent()) {
      return Optional.empty();
    }
    Scene.Give give = scene.give().orElseThrow();
    return start(scene, motion, hold)
        .map(start -> new GiveStudy(scene, motion, hold, give, start).swing());
  }

  /**
   * What the grip carries at one instant.
   *
   * @param time s
   * @return empty where {@link #obstacle} says why, or the part is not held there
   */
  public static Optional<SwingAt> at(Scene scene, Motion motion, HoldModel hold, double time) {
    if (obstacle(scene, motion, hold).isPresent()) {
      return Optional.empty();
    }
    Scene.Give give = scene.give().orElseThrow();
    GiveStudy study =
        new GiveStudy(scene, motion, hold, give, start(scene, motion, hold).orElseThrow());
    study.scan.probe(time);
    study.swing();
    return study.scan.probed();
  }

  /** Why the swing cannot be told, one sentence with what to do; empty where it can. */
  public static Optional<String> obstacle(Scene scene, Motion motion, HoldModel hold) {
    if (scene.give().isEmpty()) {
      return Optional.of(
          "The part counts as rigid on its grip: give the grip's stiffness to see it swing.");
    }
    Optional<Start> start = start(scene, motion, hold);
    if (start.isEmpty()) {
      return Optional.of("The part is never held, so it does not swing: check take and release.");
    }
    return start
        .get()
        .stiffness
        .freeDirection()
        .map(
            free ->
                "The swing is not computed, as the grip has no stiffness "
                    + free
                    + " of the grip frame: choose another mechanism or add a ledge.");
  }

  private static Optional<Start> start(Scene scene, Motion motion, HoldModel hold) {
    Held held = new Held(motion);
    LoadModel loads =
        new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    for (MotionPiece piece : motion.pieces()) {
      if (held.from(piece) < held.to(piece)) {
        double[] state = new double[MotionState.SIZE];
        piece.state(held.from(piece), state);
        RequiredWrench required = loads.required(MotionState.of(state));
        // A tool that stands has not begun its first ramp: the part hangs under gravity alone.
        double[] load = (stands(state) ? required.gravity() : required.total()).toArray();
        int ledges = hold.pushingLedges(load, 0, hold.workspace());
        return Optional.of(new Start(held, loads, load, ledges, stiffness(scene, hold, ledges)));
      }
    }
    return Optional.empty();
  }

  private static GripStiffness stiffness(Scene scene, HoldModel hold, int ledges) {
    List<ContactPatch> patches = hold.patches();
    boolean[] standing = new boolean[patches.size()];
    int ledge = 0;
    for (int i = 0; i < standing.length; i++) {
      standing[i] = patches.get(i).ledge() && (ledges & 1 << ledge++) != 0;
    }
    return GripStiffness.of(patches, scene.grip().drives(), standing);
  }

  private GiveResult swing() {
    LoadFit fit = new LoadFit(loads, GripSprings.length(scene.grip().patches()));
    boolean moved = false;
    Optional<MotionPiece> last = Optional.empty();
    for (MotionPiece piece : motion.pieces()) {
      double from = held.from(piece);
      double to = held.to(piece);
      if (!(from < to)) {
        continue;
      }
      if (piece.still() && moved) {
        stops.add(stop(piece, from, rest(piece)));
      }
      moved = !piece.still();
      // Waits before the first move count to it.
      int segment = motion.segments().isEmpty() ? 0 : Math.max(1, piece.segment());
      fit.over(
          piece,
          from,
          to,
          (start, length, whole, gravity) ->
              scan.stretch(segment, piece, start, length, whole, gravity));
      last = Optional.of(piece);
    }
    MotionPiece end = last.orElseThrow();
    double until = held.to(end);
    if (moved && standsAt(end, until)) {
      stops.add(stop(end, until, 0));
    }
    double left = freeSwing(end, until).largest();
    return result(fit, left);
  }

  /** How long the tool rests from the start of a piece on, s. */
  private double rest(MotionPiece from) {
    double until = held.to(from);
    for (MotionPiece piece : motion.pieces()) {
      if (piece.from() >= until && piece.still() && held.from(piece) <= until) {
        until = Math.max(until, held.to(piece));
      } else if (piece.from() >= until && !piece.still()) {
        break;
      }
    }
    return until - held.from(from);
  }

  private boolean standsAt(MotionPiece piece, double time) {
    piece.state(time, state);
    return stands(state);
  }

  private static boolean stands(double[] state) {
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      sum += Math.abs(state[MotionState.VELOCITY + k]);
      sum += Math.abs(state[MotionState.ANGULAR_VELOCITY + k]);
    }
    return sum < NO_SPEED;
  }

  private GiveResult.Stop stop(MotionPiece piece, double time, double rest) {
    FreeSwing swing = freeSwing(piece, time);
    OptionalDouble settling = OptionalDouble.empty();
    if (give.settle().isPresent()) {
      double within = give.settle().getAsDouble();
      settling = OptionalDouble.of(swing.settled(within).orElse(Double.POSITIVE_INFINITY));
    }
    return new GiveResult.Stop(time, piece.segment(), rest, swing.largest(), settling);
  }

  /** The swing that follows if the tool stands still from now on: gravity alone is the load. */
  private FreeSwing freeSwing(MotionPiece piece, double time) {
    piece.state(time, state);
    loads.required(state, load, rotation);
    return response.freeSwing(load, centre);
  }

  /** Least reach of a contact from its middle, m. */
  private double smallestContact() {
    return scene.grip().patches().stream()
        .filter(p -> !p.ledge())
        .mapToDouble(p -> Math.min(p.shape().edgeX(), p.shape().edgeY()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private GiveResult result(LoadFit fit, double left) {
    List<String> notes = new ArrayList<>();
    scan.ledgesChange()
        .ifPresent(
            time ->
                notes.add(
                    String.format(
                        Locale.ROOT,
                        "At %.3f s a ledge begins or ceases to push, but the swing goes on as if"
                            + " none did: keep more in hand, or clamp the part against its ledges.",
                        time)));
    if (fit.worst() > LoadFit.TOLERANCE) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The load is not smooth: the swing may be off by %.1g of it; filter the recording"
                  + " more.",
              fit.worst()));
    }
    double contact = smallestContact();
    if (scan.largestSwing() > contact / 2) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The part swings by up to %.1f mm on contacts that reach %.1f mm from their middle:"
                  + " springs are not straight so far out; read it as too much, not as a figure.",
              1e3 * scan.largestSwing(),
              1e3 * contact));
    }
    return new GiveResult(
        give.damping(),
        modes.modes().stream().filter(m -> Double.isFinite(m.frequency())).toList(),
        scan.dynamicFactors(),
        scan.worst(loads),
        scan.segments(loads),
        scan.largestSwing(),
        scan.largestSwingTime(),
        stops,
        left,
        notes);
  }
}
