package io.github.holdpath.sim.timing;

import java.util.Arrays;
import java.util.List;

/**
 * When a path is where: cells within which the acceleration along the path is a linear function of
 * the place (theory, eq. 5.53). Immutable. Queries allocate nothing.
 */
public final class Timing implements TimingResult {
  /** Offset of s in the state that {@link #at} writes. */
  public static final int PLACE = 0;

  /** Offset of s', 1/s in the unit of s. */
  public static final int RATE = 1;

  /** Offset of s'', 1/s^2 in the unit of s. */
  public static final int ACCELERATION = 2;

  /** Angle below which the functions of eq. 5.56 are their first terms, to rounding. */
  private static final double STRAIGHT = 1e-8;

  /** Angle below which 1 - sin(x)/x is taken from its series: the next term is 1e-14 of it. */
  private static final double SERIES = 0.05;

  private final double[] s;
  private final double[] rate;
  private final double[] time;
  private final double[] bend;
  private final double[] area;
  private final List<String> governs;
  private final double estimatedError;

  /** Takes the arrays over: nodes with rising s and time, one name for each cell between. */
  Timing(
      double[] s,
      double[] rate,
      double[] time,
      double[] bend,
      List<String> governs,
      double estimatedError) {
    this.s = s;
    this.rate = rate;
    this.time = time;
    this.bend = bend;
    this.governs = List.copyOf(governs);
    this.estimatedError = estimatedError;
    area = new double[s.length];
    for (int i = 0; i + 1 < s.length; i++) {
      area[i + 1] = area[i] + areaInCell(i, time[i + 1] - time[i]);
    }
  }

  /** Time from start to end, s. */
  public double duration() {
    return time[time.length - 1];
  }

  /**
   * By how much the duration may be above the least one, by estimate, s; infinite where it was not
   * asked for.
   */
  public double estimatedError() {
    return estimatedError;
  }

  /** How many cells there are; 0 for a path of no length. */
  public int cells() {
    return s.length - 1;
  }

  /** Where a cell begins, or at {@code cells()} the path ends, in the unit of s. */
  public double place(int node) {
    return s[node];
  }

  /** Time at which a cell begins or the path ends, s. */
  public double time(int node) {
    return time[node];
  }

  /** Rate s' with which a cell begins or the path ends, 1/s in the unit of s. */
  public double rate(int node) {
    return rate[node];
  }

  /** Name of the limit that is nearest to being broken within a cell. */
  public String governs(int cell) {
    return governs.get(cell);
  }

  /**
   * Place, rate and acceleration at an instant. Where the acceleration jumps it is that after the
   * jump, and at the end that before.
   *
   * @param t time since the start, s; before it and after the end is the state at start and end
   * @param state receives them at {@link #PLACE}, {@link #RATE}, {@link #ACCELERATION}
   */
  public void at(double t, double[] state) {
    if (cells() == 0) {
      state[PLACE] = s[0];
      state[RATE] = rate[0];
      state[ACCELERATION] = 0;
      return;
    }
    int cell = cellAt(t);
    inCell(cell, t - time[cell], state);
  }

  /**
   * The integral of s over time from the start to an instant (theory, eq. 5.82), s times the unit
   * of s; before the start s is that of the start, after the end that of the end.
   *
   * @param t time since the start, s
   */
  public double area(double t) {
    int last = time.length - 1;
    if (cells() == 0 || t <= 0) {
      return s[0] * t;
    }
    if (t >= time[last]) {
      return area[last] + s[last] * (t - time[last]);
    }
    int cell = cellAt(t);
    return areaTo(cell, t - time[cell]);
  }

  /** The same to the instant dt after the begin of a cell, s. */
  double areaTo(int cell, double dt) {
    return area[cell] + areaInCell(cell, dt);
  }

  /** The cell of an instant; the first or last one outside the timing. */
  int cellAt(double t) {
    int cell = Arrays.binarySearch(time, t);
    return Math.max(0, Math.min(cells() - 1, cell < 0 ? -cell - 2 : cell));
  }

  /** State within a cell, from the instant dt after its begin, s. */
  void inCell(int cell, double since, double[] state) {
    double span = time[cell + 1] - time[cell];
    double dt = Math.max(0, Math.min(span, since));
    double h = s[cell + 1] - s[cell];
    double k = bend[cell];
    double v = rate[cell];
    double u = begin(cell);
    double w = Math.sqrt(Math.abs(k));
    double cos = 1;
    double sin = dt;
    double lag = 0.5 * dt * dt;
    if (w * span > STRAIGHT) {
      cos = k > 0 ? Math.cosh(w * dt) : Math.cos(w * dt);
      sin = (k > 0 ? Math.sinh(w * dt) : Math.sin(w * dt)) / w;
      lag = lag(k, w, dt);
    }
    double way = Math.min(h, v * sin + u * lag);
    state[PLACE] = s[cell] + way;
    state[RATE] = Math.max(0, v * cos + u * sin);
    state[ACCELERATION] = u + k * way;
  }

  /** Acceleration at the begin of a cell. */
  double begin(int cell) {
    double h = s[cell + 1] - s[cell];
    double v = rate[cell];
    return (rate[cell + 1] - v) * (rate[cell + 1] + v) / (2 * h) - 0.5 * bend[cell] * h;
  }

  /** (1 - cos(w t))/w^2, hyperbolically for k above 0. */
  private static double lag(double k, double w, double dt) {
    double half = k > 0 ? Math.sinh(0.5 * w * dt) : Math.sin(0.5 * w * dt);
    return 2 * half * half / (w * w);
  }

  /** Integral of s over the first dt of a cell. */
  private double areaInCell(int cell, double dt) {
    double k = bend[cell];
    double w = Math.sqrt(Math.abs(k));
    double angle = w * dt;
    double lag = 0.5 * dt * dt;
    double lagSum = dt * dt * dt / 6;
    if (angle > STRAIGHT) {
      lag = lag(k, w, dt);
      double square = k * dt * dt;
      lagSum *=
          angle < SERIES
              ? 1 + square / 20 * (1 + square / 42 * (1 + square / 72))
              : 6 * ((k > 0 ? Math.sinh(angle) : Math.sin(angle)) / angle - 1) / square;
    }
    return s[cell] * dt + rate[cell] * lag + begin(cell) * lagSum;
  }
}
