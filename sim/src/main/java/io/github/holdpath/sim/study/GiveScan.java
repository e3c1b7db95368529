package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.compliance.GripModes;
import io.github.holdpath.dynamics.compliance.GripResponse;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import io.github.holdpath.sim.motion.MotionPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Looks for the extremes of a swing: samples each stretch finely enough for what rings in it, then
 * searches between the samples (theory, 7.5).
 */
final class GiveScan {
  /** Samples in a period of the quickest mode that rings. */
  private static final int PER_PERIOD = 16;

  /** Part of the load below which a mode's ringing cannot decide. */
  private static final double SMALL_RING = 1e-3;

  /** Finest spacing, s. What rings more quickly than 3 kHz is met by chance, many times over. */
  private static final double FINEST = 2e-5;

  /** A rise below this part of a value is not looked for. */
  private static final double LEAST_GAIN = 1e-6;

  /** Values that differ by less than this part are one: rounding must not choose the instant. */
  private static final double SAME = 1e-12;

  /** Below this part of the largest force or moment a component's dynamic factor says nothing. */
  private static final double NEGLIGIBLE = 0.01;

  /** Places of the extra samples beside both ends, in steps: a crest may hide beside a kink. */
  private static final double[] BESIDE = {1.0 / 16, 1.0 / 4};

  private static final int USE = 6;
  private static final int SWING = 7;
  private static final int TRACKS = 8;

  private final HoldModel hold;
  private final HoldModel.Workspace ws;
  private final GripResponse response;
  private final GripModes modes;
  private final Vec3 centre;
  private final int ledges;
  private final boolean hasLedges;
  private final Tight[] tight;
  private final double[] rigid = new double[6];
  private final double[] peak = new double[TRACKS];
  private double swingTime;
  private OptionalDouble ledgesChange = OptionalDouble.empty();
  private double probeTime = Double.POSITIVE_INFINITY;
  private Optional<SwingAt> probed = Optional.empty();
  private double[] places = new double[0];
  private double[][] values = new double[TRACKS][0];

  /** Polynomials of where the centre of mass would come to rest under gravity. */
  private final double[] restX = new double[GripResponse.COEFFICIENTS];

  private final double[] restY = new double[GripResponse.COEFFICIENTS];
  private final double[] restZ = new double[GripResponse.COEFFICIENTS];
  private final double[] now = new double[6];

  /** The tightest instant of one segment. */
  private static final class Tight {
    double use = -1;
    double time;
    double[] wrench = new double[6];
    Optional<MotionPiece> piece = Optional.empty();
  }

  GiveScan(
      HoldModel hold,
      GripResponse response,
      GripModes modes,
      Vec3 centre,
      int segments,
      int ledges) {
    this.hold = hold;
    this.ws = hold.workspace();
    this.response = response;
    this.modes = modes;
    this.centre = centre;
    this.ledges = ledges;
    this.hasLedges = hold.patches().stream().anyMatch(p -> p.ledge());
    this.tight = new Tight[segments + 1];
    for (int i = 0; i < tight.length; i++) {
      tight[i] = new Tight();
    }
  }

  /** Looks at one instant as the swing passes it. */
  void probe(double time) {
    probeTime = time;
  }

  /** What was found there; empty if the swing did not pass it. */
  Optional<SwingAt> probed() {
    return probed;
  }

  private void lookAtProbe(double from, double length) {
    if (probed.isEmpty() && probeTime >= from && probeTime <= from + length) {
      double s = (probeTime - from) / length;
      response.at(s);
      Wrench carried = Wrench.of(response.wrench(), 0);
      probed = Optional.of(new SwingAt(carried, hold.firstSlip(carried, ws), swing(s)));
    }
  }

  /** Carries the swing on over one stretch and keeps its extremes. */
  void stretch(
      int segment,
      MotionPiece piece,
      double from,
      double length,
      double[] whole,
      double[] gravity) {
    response.enter(length, whole);
    for (int k = 0; k < GripResponse.COEFFICIENTS; k++) {
      Vec3 rest = modes.restAt(gravity, k, GripResponse.COEFFICIENTS, centre);
      restX[k] = rest.x();
      restY[k] = rest.y();
      restZ[k] = rest.z();
    }
    lookAtProbe(from, length);
    int count = grid(piece, length, whole);
    for (int i = 0; i < count; i++) {
      sample(i, whole, from + length * places[i]);
    }
    for (int track = 0; track < TRACKS; track++) {
      offer(track, 0, segment, piece, from, length);
      for (int i = 1; i < count; i++) {
        offer(track, i, segment, piece, from, length);
        if (i + 1 < count) {
          search(track, i, segment, piece, from, length);
        }
      }
    }
    response.leave();
  }

  private int grid(MotionPiece piece, double length, double[] whole) {
    for (int k = 0; k < 6; k++) {
      now[k] = LoadFit.value(whole, k, 0);
    }
    double ringing = response.shortestRinging(SMALL_RING, now) / PER_PERIOD;
    double step = Math.max(FINEST, Math.min(HoldStudy.STEP, ringing));
    boolean quiet = piece.still() && Double.isInfinite(ringing);
    int steps = quiet ? 1 : (int) Math.ceil(length / step);
    int count = steps + 1 + 2 * BESIDE.length;
    if (places.length < count) {
      places = new double[2 * count];
      values = new double[TRACKS][2 * count];
    }
    int at = 0;
    places[at++] = 0;
    for (double beside : BESIDE) {
      places[at++] = beside / steps;
    }
    for (int i = 1; i < steps; i++) {
      places[at++] = (double) i / steps;
    }
    for (int i = BESIDE.length - 1; i >= 0; i--) {
      places[at++] = 1 - BESIDE[i] / steps;
    }
    places[at++] = 1;
    return at;
  }

  private void sample(int i, double[] whole, double time) {
    response.at(places[i]);
    double[] wrench = response.wrench();
    for (int k = 0; k < 6; k++) {
      values[k][i] = Math.abs(wrench[k]);
      rigid[k] = Math.max(rigid[k], Math.abs(LoadFit.value(whole, k, places[i])));
    }
    values[USE][i] = hold.use(wrench, 0, ws);
    values[SWING][i] = swing(places[i]);
    if (hasLedges && ledgesChange.isEmpty() && hold.pushingLedges(wrench, 0, ws) != ledges) {
      ledgesChange = OptionalDouble.of(time);
    }
  }

  /** Distance of the centre of mass from where gravity alone would hold it, m. */
  private double swing(double s) {
    double[] x = response.shift();
    double dx = x[0] + x[4] * centre.z() - x[5] * centre.y() - LoadFit.value(restX, 0, s);
    double dy = x[1] + x[5] * centre.x() - x[3] * centre.z() - LoadFit.value(restY, 0, s);
    double dz = x[2] + x[3] * centre.y() - x[4] * centre.x() - LoadFit.value(restZ, 0, s);
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  private double value(int track, double s) {
    response.at(s);
    if (track == USE) {
      return hold.use(response.wrench(), 0, ws);
    }
    return track == SWING ? swing(s) : Math.abs(response.wrench()[track]);
  }

  private double best(int track, int segment) {
    return track == USE ? tight[segment].use : peak[track];
  }

  private void search(
      int track, int i, int segment, MotionPiece piece, double from, double length) {
    double[] v = values[track];
    double rise = Math.max(v[i] - v[i - 1], v[i] - v[i + 1]);
    boolean crest = v[i] >= v[i - 1] && v[i] >= v[i + 1];
    // Between samples a smooth value rises by no more than it does from sample to sample; twice
    // that spares the search where nothing can be found.
    if (crest && 2 * rise > LEAST_GAIN * v[i] && v[i] + 2 * rise >= best(track, segment)) {
      double s = Peak.of(x -> value(track, x), places[i - 1], places[i], places[i + 1]);
      keep(track, value(track, s), s, segment, piece, from, length);
    }
  }

  private void offer(int track, int i, int segment, MotionPiece piece, double from, double length) {
    double v = values[track][i];
    if (v > best(track, segment) * (1 + SAME) || best(track, segment) < 0) {
      if (track == USE) {
        response.at(places[i]);
      }
      keep(track, v, places[i], segment, piece, from, length);
    }
  }

  /** Keeps what is more than before; the response stands at that place where it is a use. */
  private void keep(
      int track,
      double found,
      double s,
      int segment,
      MotionPiece piece,
      double from,
      double length) {
    if (!(found > best(track, segment) * (1 + SAME) || best(track, segment) < 0)) {
      return;
    }
    if (track == USE) {
      Tight t = tight[segment];
      t.use = found;
      t.time = time(piece, from, length, s);
      t.piece = Optional.of(piece);
      System.arraycopy(response.wrench(), 0, t.wrench, 0, 6);
      return;
    }
    peak[track] = found;
    if (track == SWING) {
      swingTime = time(piece, from, length, s);
    }
  }

  private static double time(MotionPiece piece, double from, double length, double s) {
    return Math.min(piece.to(), from + length * s);
  }

  /** First instant at which another set of ledges would push. */
  OptionalDouble ledgesChange() {
    return ledgesChange;
  }

  double largestSwing() {
    return peak[SWING];
  }

  double largestSwingTime() {
    return swingTime;
  }

  List<OptionalDouble> dynamicFactors() {
    double force = Math.max(rigid[0], Math.max(rigid[1], rigid[2]));
    double moment = Math.max(rigid[3], Math.max(rigid[4], rigid[5]));
    List<OptionalDouble> factors = new ArrayList<>();
    for (int k = 0; k < 6; k++) {
      boolean counts = rigid[k] > NEGLIGIBLE * (k < 3 ? force : moment);
      factors.add(counts ? OptionalDouble.of(peak[k] / rigid[k]) : OptionalDouble.empty());
    }
    return factors;
  }

  /** The worst of all segments. */
  Worst worst(LoadModel loads) {
    int worst = 0;
    for (int i = 1; i < tight.length; i++) {
      worst = tight[i].use > tight[worst].use * (1 + SAME) ? i : worst;
    }
    return worst(worst, loads);
  }

  /** The worst of each move in order. */
  List<Optional<Worst>> segments(LoadModel loads) {
    List<Optional<Worst>> list = new ArrayList<>();
    for (int i = 1; i < tight.length; i++) {
      list.add(tight[i].piece.isPresent() ? Optional.of(worst(i, loads)) : Optional.empty());
    }
    return list;
  }

  private Worst worst(int segment, LoadModel loads) {
    Tight t = tight[segment];
    double[] state = new double[MotionState.SIZE];
    t.piece.orElseThrow().state(t.time, state);
    MotionState there = MotionState.of(state);
    Wrench carried = Wrench.of(t.wrench, 0);
    Wrench gravity = loads.required(there).gravity();
    RequiredWrench load = new RequiredWrench(gravity, carried.minus(gravity));
    return new Worst(t.time, segment, hold.firstSlip(carried, ws), there, load);
  }
}
