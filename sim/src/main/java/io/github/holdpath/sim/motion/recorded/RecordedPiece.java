package io.github.holdpath.sim.motion.recorded;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.path.Flat;

/** The whole of a recording as one smooth piece, with its path length by quadrature. */
final class RecordedPiece implements MotionPiece {
  /** Offsets and weights of the three-point Gauss rule on 0 to 1. */
  private static final double[] GAUSS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] GAUSS_WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  /** A shorter path than this counts as turning on the spot, m. */
  private static final double NO_LENGTH = 1e-6;

  /** Speeds below this, m/s and rad/s, count as standing still. */
  private static final double NO_SPEED = 1e-9;

  private final RecordedCurve curve;
  private final double duration;
  private final double[] lengths;
  private final double[] turns;
  private final boolean still;

  RecordedPiece(RecordedCurve curve, double duration, boolean still) {
    this.curve = curve;
    this.duration = duration;
    this.still = still;
    this.lengths = new double[curve.cells() + 1];
    this.turns = new double[curve.cells() + 1];
    fill();
  }

  /** Whether peaks of speed, m/s, and of turning, rad/s, are those of a part that stands. */
  static boolean still(double peakSpeed, double peakTurnSpeed) {
    return peakSpeed < NO_SPEED && peakTurnSpeed < NO_SPEED;
  }

  private void fill() {
    double[] state = new double[MotionState.SIZE];
    for (int k = 0; k < curve.cells(); k++) {
      double from = k * curve.step();
      double to = from + curve.step();
      double length = 0;
      double turn = 0;
      for (int i = 0; i < GAUSS.length; i++) {
        curve.state(from + (to - from) * GAUSS[i], state);
        length += GAUSS_WEIGHT[i] * Flat.norm(state, MotionState.VELOCITY);
        turn += GAUSS_WEIGHT[i] * Flat.norm(state, MotionState.ANGULAR_VELOCITY);
      }
      lengths[k + 1] = lengths[k] + length * (to - from);
      turns[k + 1] = turns[k] + turn * (to - from);
    }
  }

  private static double travelled(
      RecordedCurve curve, int offset, double from, double to, double[] state) {
    double sum = 0;
    for (int i = 0; i < GAUSS.length; i++) {
      curve.state(from + (to - from) * GAUSS[i], state);
      sum += GAUSS_WEIGHT[i] * Flat.norm(state, offset);
    }
    return sum * (to - from);
  }

  @Override
  public double from() {
    return 0;
  }

  @Override
  public double to() {
    return duration;
  }

  @Override
  public int segment() {
    return 1;
  }

  @Override
  public void state(double time, double[] out) {
    if (!(time >= 0 && time <= duration)) {
      throw new IllegalArgumentException(
          "time must lie in the recording, 0 to " + duration + " s, but was " + time);
    }
    curve.state(time, out);
  }

  @Override
  public double distance(double time) {
    boolean turnsOnly = length() < NO_LENGTH;
    int offset = turnsOnly ? MotionState.ANGULAR_VELOCITY : MotionState.VELOCITY;
    int k = curve.cell(time);
    double before = (turnsOnly ? turns : lengths)[k];
    double[] state = new double[MotionState.SIZE];
    return before + travelled(curve, offset, k * curve.step(), time, state);
  }

  @Override
  public boolean still() {
    return still;
  }

  /** Length of the whole path, m. */
  double length() {
    return lengths[lengths.length - 1];
  }

  /** Angle turned through in all, rad. */
  double turn() {
    return turns[turns.length - 1];
  }
}
