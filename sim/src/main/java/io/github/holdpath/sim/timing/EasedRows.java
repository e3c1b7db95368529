package io.github.holdpath.sim.timing;

import java.util.Arrays;

/**
 * The rows of joints with limits lowered where the mean of the last timing broke one (theory,
 * section 5.17). The path is cut at places that a first timing passes in even steps of time.
 */
final class EasedRows implements PathRows {
  /** The exponent with which limits are lowered; with 1 rounds overshoot. */
  private static final double DAMPING = 0.7;

  /** Least factor of a round. */
  private static final double LOWER = 0.5;

  private final JointRows rows;
  private final JointCurve curve;
  private final double[] jerk;
  private final ThirdDerivative third;
  private final double[] dddq;
  private final int bins;
  private final double[] places;
  private final double[] share;
  private final double[] speedShare;
  private final double[] level;
  private final double[] broken;
  private final double[] tooFast;
  private int asked;
  private int told;

  EasedRows(JointRows rows, JointCurve curve, double[] jerk, int bins) {
    this.rows = rows;
    this.curve = curve;
    this.jerk = jerk;
    this.bins = bins;
    third = new ThirdDerivative(curve);
    dddq = new double[curve.joints()];
    places = new double[bins + 1];
    share = new double[bins + 1];
    speedShare = new double[bins + 1];
    level = new double[bins + 1];
    broken = new double[bins + 1];
    tooFast = new double[bins + 1];
    for (int i = 0; i <= bins; i++) {
      places[i] = curve.length() * i / bins;
    }
    begin(1);
  }

  /** Cuts the path by a timing. */
  void cut(Timing timing) {
    double[] state = new double[3];
    for (int i = 1; i < bins; i++) {
      timing.at(timing.duration() * i / bins, state);
      places[i] = state[Timing.PLACE];
    }
  }

  /** Takes all remedies back and gives accelerations a share of their limits everywhere. */
  void begin(double accelerations) {
    Arrays.fill(share, accelerations);
    Arrays.fill(speedShare, 1);
    Arrays.fill(level, Double.POSITIVE_INFINITY);
    forget();
  }

  /** Forgets what it was told. */
  void forget() {
    Arrays.fill(broken, 0);
    Arrays.fill(tooFast, 0);
    told = 0;
  }

  /**
   * Told, in the order of time, which parts of limits the mean takes at an instant. They are held
   * against all places within its window.
   *
   * @param from place at the begin of the window
   * @param to place at its end
   * @param speed largest part of a limit of speed
   * @param acceleration largest part of a limit of acceleration
   * @param jerks largest part of a limit of jerk
   * @param fromPath whether that jerk is mostly that of the path passed at an even rate
   */
  void tell(
      double from, double to, double speed, double acceleration, double jerks, boolean fromPath) {
    while (told < bins - 1 && places[told + 1] <= from) {
      told++;
    }
    double slow = Math.max(acceleration, jerks);
    double fast = Math.max(speed * speed, fromPath ? jerks : 0);
    for (int i = told; i <= bins && (places[i] < to || i <= told + 1); i++) {
      broken[i] = Math.max(broken[i], slow);
      tooFast[i] = Math.max(tooFast[i], fast);
    }
  }

  /**
   * Lowers limits where they were broken and raises them again where they left room.
   *
   * @param raise largest factor by which they are raised
   */
  void remedy(double raise) {
    for (int i = 0; i <= bins; i++) {
      share[i] = next(share[i], broken[i], raise);
      speedShare[i] = next(speedShare[i], tooFast[i], raise);
    }
    forget();
  }

  private static double next(double share, double part, double raise) {
    return Math.min(1, share * Math.max(LOWER, Math.min(raise, Math.pow(part, -DAMPING))));
  }

  /**
   * Makes room for a window where the rate turns and the jump of acceleration is too large for one
   * window: two half jumps, a window apart.
   */
  void flatten(Timing timing, double window) {
    for (int i = 1; i < timing.cells(); i++) {
      double before = timing.rate(i) - timing.rate(i - 1);
      double after = timing.rate(i + 1) - timing.rate(i);
      boolean crest = before > 0 && after <= 0;
      if ((crest || (before < 0 && after >= 0)) && jumps(timing, i, window)) {
        flatten(timing, i, crest, window);
      }
    }
  }

  private boolean jumps(Timing timing, int node, double window) {
    double s = timing.place(node);
    int piece = 0;
    while (piece + 1 < curve.pieces() && curve.start(piece + 1) <= s) {
      piece++;
    }
    double jump = Math.abs(timing.begin(node) - timing.begin(node - 1)) / window;
    return rows.along(piece, s, jump, jerk) > 1;
  }

  private void flatten(Timing timing, int node, boolean crest, double window) {
    int from = node;
    int to = node;
    double rate = timing.rate(node);
    while (from > 1
        && to < timing.cells() - 1
        && timing.place(to) - timing.place(from) < rate * window) {
      boolean back =
          crest
              ? timing.rate(from - 1) > timing.rate(to + 1)
              : timing.place(node) - timing.place(from) < timing.place(to) - timing.place(node);
      from -= back ? 1 : 0;
      to += back ? 0 : 1;
      if (crest) {
        rate = Math.min(rate, Math.min(timing.rate(from), timing.rate(to)));
      }
    }
    int i = Math.max(0, binOf(timing.place(from)));
    for (; i <= bins && places[i] < timing.place(to); i++) {
      level[i] = Math.min(level[i], rate * rate);
    }
  }

  private int binOf(double s) {
    int i = Arrays.binarySearch(places, s);
    return i < 0 ? -i - 2 : i;
  }

  @Override
  public double at(int piece, double s, double[] a, double[] b, double[] c, int offset) {
    double cap = rows.at(piece, s, a, b, c, offset);
    third.at(piece, s, dddq);
    double least = Double.POSITIVE_INFINITY;
    for (int j = 0; j < dddq.length; j++) {
      least = Math.min(least, jerk[j] / Math.abs(dddq[j]));
    }
    double root = Math.cbrt(least);
    cap = Math.min(cap, root * root);
    if (s < places[asked]) {
      asked = 0;
    }
    while (asked < bins - 1 && places[asked + 1] <= s) {
      asked++;
    }
    double part = (s - places[asked]) / (places[asked + 1] - places[asked]);
    double here = share[asked] + part * (share[asked + 1] - share[asked]);
    for (int k = 0; k < rows.rows(); k++) {
      c[offset + k] *= here;
    }
    cap *= speedShare[asked] + part * (speedShare[asked + 1] - speedShare[asked]);
    return Math.min(cap, level[asked]);
  }

  @Override
  public double length() {
    return rows.length();
  }

  @Override
  public int rows() {
    return rows.rows();
  }

  @Override
  public int pieces() {
    return rows.pieces();
  }

  @Override
  public double start(int piece) {
    return rows.start(piece);
  }

  @Override
  public String name(int row) {
    return rows.name(row);
  }

  @Override
  public String capName(int piece, double s) {
    return rows.capName(piece, s);
  }
}
