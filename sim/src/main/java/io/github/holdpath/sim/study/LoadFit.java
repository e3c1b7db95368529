package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.compliance.GripResponse;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.MotionPiece;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * The required wrench along a motion as a chain of polynomials of degree 5 (theory, 7.4). Straight
 * moves without turning are such polynomials; all else is parted until the polynomials are as good.
 */
final class LoadFit {
  /** Largest miss between the nodes, as a part of the stretch's load. */
  static final double TOLERANCE = 1e-7;

  /** Longest stretch, s: no recorded motion hides between the nodes of one so short. */
  private static final double LONGEST = 0.1;

  /** Shortest stretch, s; a load that is not smooth is taken as it is from here on. */
  private static final double SHORTEST = 2e-4;

  private static final int NODES = GripResponse.COEFFICIENTS;
  private static final double[] NODE = nodes();
  private static final double[] CHECK = between();
  private static final double[] INVERSE = inverse();

  private final LoadModel loads;
  private final double reach;
  private final double[] state = new double[MotionState.SIZE];
  private final double[] load = new double[LoadModel.SIZE];
  private final double[] rotation = new double[9];
  private final double[] samples = new double[2 * NODES * 6];
  private double worst;

  /** What is done with a stretch. */
  @FunctionalInterface
  interface Use {
    /**
     * One stretch.
     *
     * @param from s
     * @param length s
     * @param whole the required wrench as {@link GripResponse#enter} takes it; lent
     * @param gravity its gravity part, the same way; lent
     */
    void take(double from, double length, double[] whole, double[] gravity);
  }

  /**
   * For one part.
   *
   * @param loads of the part
   * @param reach a length that makes moments and forces of one size, m
   */
  LoadFit(LoadModel loads, double reach) {
    this.loads = loads;
    this.reach = reach;
  }

  /** Nodes crowd at both ends, where a polynomial through them would go astray otherwise. */
  private static double[] nodes() {
    double[] s = new double[NODES];
    for (int j = 0; j < NODES; j++) {
      s[j] = (1 - Math.cos(Math.PI * j / (NODES - 1))) / 2;
    }
    return s;
  }

  private static double[] between() {
    double[] s = new double[NODES - 1];
    for (int j = 0; j < s.length; j++) {
      s[j] = (NODE[j] + NODE[j + 1]) / 2;
    }
    return s;
  }

  /** Numbers of a polynomial from its values at the nodes. */
  private static double[] inverse() {
    DMatrixRMaj powers = new DMatrixRMaj(NODES, NODES);
    for (int j = 0; j < NODES; j++) {
      for (int k = 0; k < NODES; k++) {
        powers.set(j, k, Math.pow(NODE[j], k));
      }
    }
    CommonOps_DDRM.invert(powers);
    return powers.data;
  }

  /** Value of one component of a load at a place of its stretch. */
  static double value(double[] polynomials, int component, double s) {
    int at = NODES * component;
    double sum = 0;
    for (int k = NODES - 1; k >= 0; k--) {
      sum = sum * s + polynomials[at + k];
    }
    return sum;
  }

  /** The largest miss so far, as a part of the load; above {@link #TOLERANCE} if not smooth. */
  double worst() {
    return worst;
  }

  /** Parts a stretch of a piece; the stretches come in order. */
  void over(MotionPiece piece, double from, double to, Use use) {
    int count = (int) Math.ceil((to - from) / LONGEST);
    double[] whole = new double[6 * NODES];
    double[] gravity = new double[6 * NODES];
    for (int i = 0; i < count; i++) {
      double a = from + (to - from) * i / count;
      double b = i + 1 == count ? to : from + (to - from) * (i + 1) / count;
      part(piece, a, b, whole, gravity, use);
    }
  }

  private void part(
      MotionPiece piece, double from, double to, double[] whole, double[] gravity, Use use) {
    if (!(to > from)) {
      return;
    }
    double miss = fit(piece, from, to, whole, gravity);
    double middle = from + (to - from) / 2;
    if (miss > TOLERANCE && to - from > 2 * SHORTEST) {
      part(piece, from, middle, whole, gravity, use);
      part(piece, middle, to, whole, gravity, use);
      return;
    }
    worst = Math.max(worst, miss);
    use.take(from, to - from, whole, gravity);
  }

  /** Fits both; returns the largest miss at the places between the nodes. */
  private double fit(MotionPiece piece, double from, double to, double[] whole, double[] gravity) {
    double force = 0;
    double moment = 0;
    for (int j = 0; j < NODES; j++) {
      sample(piece, j + 1 == NODES ? to : from + (to - from) * NODE[j]);
      for (int i = 0; i < 6; i++) {
        samples[NODES * i + j] = load[i] + load[6 + i];
        samples[NODES * (6 + i) + j] = load[i];
      }
      force = Math.max(force, norm(load, 0));
      moment = Math.max(moment, norm(load, 3));
    }
    for (int i = 0; i < 6; i++) {
      for (int k = 0; k < NODES; k++) {
        double a = 0;
        double b = 0;
        for (int j = 0; j < NODES; j++) {
          a += INVERSE[NODES * k + j] * samples[NODES * i + j];
          b += INVERSE[NODES * k + j] * samples[NODES * (6 + i) + j];
        }
        whole[NODES * i + k] = a;
        gravity[NODES * i + k] = b;
      }
    }
    double miss = 0;
    for (double s : CHECK) {
      sample(piece, from + (to - from) * s);
      for (int i = 0; i < 6; i++) {
        double size = i < 3 ? force : moment + reach * force;
        double off =
            Math.max(
                Math.abs(value(whole, i, s) - load[i] - load[6 + i]),
                Math.abs(value(gravity, i, s) - load[i]));
        miss = off > 0 ? Math.max(miss, off / size) : miss;
      }
    }
    return miss;
  }

  private void sample(MotionPiece piece, double time) {
    piece.state(time, state);
    loads.required(state, load, rotation);
  }

  /** Size of the whole force or moment, and of its gravity part, whichever is more. */
  private static double norm(double[] w, int at) {
    double sum = 0;
    double own = 0;
    for (int k = at; k < at + 3; k++) {
      sum += (w[k] + w[6 + k]) * (w[k] + w[6 + k]);
      own += w[k] * w[k];
    }
    return Math.sqrt(Math.max(sum, own));
  }
}
