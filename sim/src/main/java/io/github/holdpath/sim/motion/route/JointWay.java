package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.path.Flat;

/**
 * The way of the grip frame of a move along the joints, by the parameter u of its states: what
 * bounds its rates, and its length. Immutable.
 */
final class JointWay {
  /** Cells in which the way is summed and between which a rate has one crest at most. */
  static final int CELLS = 128;

  /** Ways and turns below these are rounding, m and rad. */
  private static final double NOWHERE = 1e-9;

  /** Outer nodes of Gauss and Legendre's rule of three points (Abramowitz and Stegun, 25.4). */
  private static final double GAUSS = Math.sqrt(3.0 / 5);

  private final JointStates states;
  private final double length;
  private final double turn;

  /** Way from u = 0 to each cell's start, and its rate there. */
  private final double[] way;

  private final double[] rate;

  /** Sums the way. */
  JointWay(JointStates states) {
    this.states = states;
    double[] moved = sums(MotionState.VELOCITY);
    double[] turned = sums(MotionState.ANGULAR_VELOCITY);
    length = moved[CELLS] > NOWHERE ? moved[CELLS] : 0;
    turn = turned[CELLS] > NOWHERE ? turned[CELLS] : 0;
    way = length > 0 ? moved : turned;
    int offset = length > 0 ? MotionState.VELOCITY : MotionState.ANGULAR_VELOCITY;
    rate = new double[CELLS + 1];
    double[] state = new double[MotionState.SIZE];
    for (int i = 0; i <= CELLS; i++) {
      rate[i] = rate(i / (double) CELLS, offset, state);
    }
  }

  private double[] sums(int offset) {
    double[] sums = new double[CELLS + 1];
    double[] state = new double[MotionState.SIZE];
    double h = 0.5 / CELLS;
    for (int i = 0; i < CELLS; i++) {
      double m = (2 * i + 1) * h;
      double outer = rate(m - h * GAUSS, offset, state) + rate(m + h * GAUSS, offset, state);
      sums[i + 1] = sums[i] + h * (8 * rate(m, offset, state) + 5 * outer) / 9;
    }
    return sums;
  }

  private double rate(double u, int offset, double[] state) {
    states.state(u, 1, 0, state);
    return Flat.norm(state, offset);
  }

  JointStates states() {
    return states;
  }

  /** Way of the grip's origin, m; 0 where it only turns. */
  double length() {
    return length;
  }

  /** The whole angle turned through, there and back both counted, rad. */
  double turn() {
    return turn;
  }

  /** Way since u = 0, m, or rad where it only turns; a cubic between cells. */
  double distance(double u) {
    double at = Math.max(0, Math.min(1, u)) * CELLS;
    int i = Math.min(CELLS - 1, (int) at);
    double t = at - i;
    double d = way[i + 1] - way[i];
    double v0 = rate[i] / CELLS;
    double v1 = rate[i + 1] / CELLS;
    return way[i] + t * (v0 + t * (3 * d - 2 * v0 - v1 + t * (v0 + v1 - 2 * d)));
  }
}
