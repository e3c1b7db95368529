package io.github.holdpath.sim.timing;

import io.github.holdpath.sim.timelaw.AxisLimits;
import java.util.Arrays;
import java.util.List;

/**
 * Finds how fast the mean of a timing over a window may be played within the limits of the joints
 * (theory, section 5.17). Between the instants where the timing, the window's far end or the curve
 * changes piece all is smooth; each such interval is looked at in three places, and at the crest of
 * the parabola through them.
 */
final class JointPeaks {
  private static final int QUANTITIES = 3;
  private static final int SPEED = 0;
  private static final int ACCELERATION = 1;
  private static final int JERK = 2;
  private static final String[] NAMES = {" speed", " acceleration", " jerk"};

  private final JointCurve curve;
  private final ThirdDerivative third;
  private final int joints;
  private final double[] minSpeed;
  private final double[] maxSpeed;
  private final double[] minAcceleration;
  private final double[] maxAcceleration;
  private final double[] jerk;
  private final double[] q;
  private final double[] dq;
  private final double[] ddq;
  private final double[] dddq;
  private final double[] state = new double[3];
  private final double[] far = new double[3];
  private final double[] most = new double[QUANTITIES];
  private final int[] mostOf = new int[QUANTITIES];
  private final double[][] ratios = new double[3][];

  private double window;
  private boolean crests;
  private int near;
  private int back;
  private int piece;

  /** Whether the jerk at the middle of the interval is mostly from the path, not from s'''. */
  private boolean fromPath;

  /** Largest pace within all limits; infinite where nothing moves. */
  double pace;

  private int joint;
  private int quantity;

  JointPeaks(JointCurve curve, List<AxisLimits> limits, double[] jerk) {
    this.curve = curve;
    this.jerk = jerk;
    third = new ThirdDerivative(curve);
    joints = curve.joints();
    minSpeed = limits.stream().mapToDouble(AxisLimits::minSpeed).toArray();
    maxSpeed = limits.stream().mapToDouble(AxisLimits::maxSpeed).toArray();
    minAcceleration = limits.stream().mapToDouble(AxisLimits::minAcceleration).toArray();
    maxAcceleration = limits.stream().mapToDouble(AxisLimits::maxAcceleration).toArray();
    q = new double[joints];
    dq = new double[joints];
    ddq = new double[joints];
    dddq = new double[joints];
    for (int i = 0; i < ratios.length; i++) {
      ratios[i] = new double[QUANTITIES * joints];
    }
  }

  /** Name of the limit that sets the pace. */
  String governs() {
    return "joint " + (joint + 1) + NAMES[quantity];
  }

  /**
   * Looks at the whole mean.
   *
   * @param window length of the window, s
   * @param longest intervals are cut to this length at most, s
   * @param crests whether to look at ends and crests of intervals too, not only at their middles
   * @param ease is told of every interval
   */
  void look(Timing base, double window, double longest, boolean crests, EasedRows ease) {
    this.window = window;
    this.crests = crests;
    pace = Double.POSITIVE_INFINITY;
    joint = 0;
    quantity = SPEED;
    near = 0;
    back = -1;
    piece = 0;
    int cells = base.cells();
    double t = 0;
    while (back < cells) {
      double nextNear = near < cells ? base.time(near + 1) : Double.POSITIVE_INFINITY;
      double nextBack = window + (back < 0 ? 0 : base.time(back + 1));
      double end = Math.min(nextNear, nextBack);
      int parts = (int) Math.ceil((end - t) / longest);
      double from = t;
      for (int i = 1; i <= parts; i++) {
        double to = i == parts ? end : t + (end - t) * i / parts;
        interval(base, from, to, ease);
        from = to;
      }
      t = Math.max(t, end);
      near += nextNear <= end ? 1 : 0;
      back += nextBack <= end ? 1 : 0;
    }
  }

  private void interval(Timing base, double begin, double end, EasedRows ease) {
    double from = begin;
    while (piece + 1 < curve.pieces() && mean(base, end) > curve.start(piece + 1)) {
      double border = cross(base, from, end, curve.start(piece + 1));
      if (border > from) {
        smooth(base, from, border, ease);
        from = border;
      }
      piece++;
    }
    if (end > from) {
      smooth(base, from, end, ease);
    }
  }

  /** When the mean reaches a place between two instants. */
  private double cross(Timing base, double from, double to, double at) {
    double low = from;
    double high = to;
    for (double middle = 0.5 * (low + high); middle > low && middle < high; ) {
      if (mean(base, middle) > at) {
        high = middle;
      } else {
        low = middle;
      }
      middle = 0.5 * (low + high);
    }
    return low;
  }

  private double mean(Timing base, double t) {
    int last = base.cells();
    double area =
        near < last
            ? base.areaTo(near, t - base.time(near))
            : base.area(base.duration()) + base.place(last) * (t - base.duration());
    double before = back < 0 ? 0 : base.areaTo(back, t - window - base.time(back));
    return (area - before) / window;
  }

  private void smooth(Timing base, double from, double to, EasedRows ease) {
    if (crests) {
      measure(base, from, ratios[0]);
      measure(base, to, ratios[2]);
    }
    measure(base, 0.5 * (from + to), ratios[1]);
    Arrays.fill(most, 0);
    for (int i = 0; i < QUANTITIES * joints; i++) {
      double peak = ratios[1][i];
      if (crests) {
        peak = peak(ratios[0][i], peak, ratios[2][i]);
      }
      int kind = i % QUANTITIES;
      if (peak > most[kind]) {
        most[kind] = peak;
        mostOf[kind] = i / QUANTITIES;
      }
    }
    fits(SPEED, 1 / most[SPEED]);
    fits(ACCELERATION, 1 / Math.sqrt(most[ACCELERATION]));
    fits(JERK, 1 / Math.cbrt(most[JERK]));
    ease.tell(
        far[Timing.PLACE],
        state[Timing.PLACE],
        most[SPEED],
        most[ACCELERATION],
        most[JERK],
        fromPath);
  }

  private void fits(int kind, double largest) {
    if (largest < pace) {
      pace = largest;
      joint = mostOf[kind];
      quantity = kind;
    }
  }

  /** Largest of three and of the crest of the parabola through them. */
  private static double peak(double before, double here, double after) {
    double most = Math.max(here, Math.max(before, after));
    double bend = before - 2 * here + after;
    double tilt = 0.5 * (after - before);
    if (bend < 0 && Math.abs(tilt) < -bend) {
      most = Math.max(most, here - 0.5 * tilt * tilt / bend);
    }
    return most;
  }

  /** Part of its limit that each quantity of each joint has at an instant. */
  private void measure(Timing base, double t, double[] out) {
    int last = base.cells();
    if (near < last) {
      base.inCell(near, t - base.time(near), state);
    } else {
      rest(state, base.place(last));
    }
    if (back >= 0) {
      base.inCell(back, t - window - base.time(back), far);
    } else {
      rest(far, 0);
    }
    double rate = (state[Timing.PLACE] - far[Timing.PLACE]) / window;
    double u = (state[Timing.RATE] - far[Timing.RATE]) / window;
    double w = (state[Timing.ACCELERATION] - far[Timing.ACCELERATION]) / window;
    double end = ThirdDerivative.end(curve, piece);
    double place = Math.max(curve.start(piece), Math.min(end, mean(base, t)));
    curve.at(piece, place, q, dq, ddq);
    third.at(piece, place, dddq);
    double worst = 0;
    for (int j = 0; j < joints; j++) {
      double v = dq[j] * rate;
      double a = dq[j] * u + ddq[j] * rate * rate;
      double along = dq[j] * w;
      double path = 3 * ddq[j] * rate * u + dddq[j] * rate * rate * rate;
      int at = QUANTITIES * j;
      out[at + SPEED] = Math.abs(v > 0 ? v / maxSpeed[j] : v / minSpeed[j]);
      out[at + ACCELERATION] = Math.abs(a > 0 ? a / maxAcceleration[j] : a / minAcceleration[j]);
      out[at + JERK] = Math.abs(along + path) / jerk[j];
      if (out[at + JERK] > worst) {
        worst = out[at + JERK];
        fromPath = Math.abs(path) > Math.abs(along);
      }
    }
  }

  private static void rest(double[] state, double place) {
    state[Timing.PLACE] = place;
    state[Timing.RATE] = 0;
    state[Timing.ACCELERATION] = 0;
  }
}
