package io.github.holdpath.sim.timelaw;

/**
 * The fastest move of an axis whose way is not less than that of its quickest change of speed
 * (theory, section 5.7): jerk up, flat, down, cruise, down, flat, up. {@link FastestMove} turns any
 * move into one of this form. A workspace: fill the fields, then {@link #climb}.
 */
final class UpMove {
  private static final int MOST_STEPS = 100;

  /** Newton's steps square the error; after one this small the next would be rounding. */
  private static final double LAST_STEP = 1e-9;

  double v0;
  double a0;
  double v1;
  double a1;
  double way;

  /** Highest speed, above 0. */
  double top;

  /** Highest acceleration upwards, above 0. */
  double up;

  /** Highest acceleration downwards, above 0. */
  double down;

  double j;

  /** Way by which rounding may miss. */
  double slack;

  /** Times of the seven phases in order, s. */
  final double[] time = new double[7];

  /** Speed of the last {@link #last} where acceleration is 0. */
  private double peakSpeed;

  private final DipSearch dips = new DipSearch();

  /** Eq. 5.19: the quickest change of speed, up and down again, into the times; gives its way. */
  double change() {
    double square = Math.max(0, j * (v1 - v0) + (a0 * a0 + a1 * a1) / 2);
    double peak = Math.sqrt(square);
    double flat = 0;
    if (peak > up) {
      peak = up;
      flat = (square - up * up) / (j * up);
    }
    double rise = Math.max(0, (peak - a0) / j);
    double fall = Math.max(0, (peak - a1) / j);
    double at = v0 + rise * (a0 + j * rise / 2);
    set(rise, flat, fall, 0, 0, 0, 0);
    return rise * (v0 + rise * (a0 / 2 + j * rise / 6))
        + flat * (at + flat * peak / 2)
        + fall * (v1 - fall * (a1 / 2 + j * fall / 6));
  }

  /**
   * Finds the fastest move, whose way is not less than that of {@link #change}; false where it
   * would have to last as long as no such move does.
   */
  boolean climb() {
    double k0 = v0 - a0 * a0 / (2 * j);
    double k1 = v1 - a1 * a1 / (2 * j);
    if (a1 > 0) {
      if (dips.find(this, a1)) {
        return true;
      }
      if (dips.gap()) {
        return false;
      }
    }
    over(k0, k1, Double.NEGATIVE_INFINITY);
    return true;
  }

  /** Eq. 5.26: a move over one speed without acceleration, not below {@code from}. */
  private void over(double k0, double k1, double from) {
    double own0 = Math.max(0, a0);
    double own1 = Math.max(0, -a1);
    double length = way + added(k0, k1);
    double left = length - ramp(k0, top, up) - ramp(k1, top, down);
    if (left >= 0) {
      double square0 = Math.max(own0 * own0, j * (top - k0));
      double square1 = Math.max(own1 * own1, j * (top - k1));
      ramps(square0, square1, left / top);
      return;
    }
    double d = j * (k0 - k1);
    if (d >= 0) {
      double low =
          Math.max(own0, Math.sqrt(Math.max(0, Math.max(own1 * own1 - d, j * (from - k0)))));
      double x = root(k0, up, k1, down, low, length);
      ramps(x * x, x * x + d, 0);
    } else {
      double low =
          Math.max(own1, Math.sqrt(Math.max(0, Math.max(own0 * own0 + d, j * (from - k1)))));
      double x = root(k1, down, k0, up, low, length);
      ramps(x * x - d, x * x, 0);
    }
  }

  /** Way that whole ramps have more than the move. */
  private double added(double k0, double k1) {
    return (k0 + a0 * a0 / (6 * j)) * (a0 / j) - (k1 + a1 * a1 / (6 * j)) * (a1 / j);
  }

  /**
   * Fills the times of the move that lasts {@code duration}, of those that are possible and no
   * shorter than {@link #change}; gives its way, the farthest in that time.
   */
  double last(double duration) {
    if (TimedMove.dips(this, duration)) {
      return dips.at(this, TimedMove.dip(this, duration));
    }
    double k0 = v0 - a0 * a0 / (2 * j);
    double k1 = v1 - a1 * a1 / (2 * j);
    double sum = duration + (a0 - a1) / j;
    double cruise =
        sum
            - Ramp.duration(Math.max(0, top - k0), up, j)
            - Ramp.duration(Math.max(0, top - k1), down, j);
    double d = j * (k0 - k1);
    double square0;
    if (cruise >= 0) {
      square0 = j * Math.max(0, top - k0);
    } else if (d >= 0) {
      double x = TimedMove.nearPeak(sum, d, up, down, j);
      square0 = x * x;
    } else {
      double x = TimedMove.nearPeak(sum, -d, down, up, j);
      square0 = x * x - d;
    }
    ramps(square0, Math.max(0, square0 + d), Math.max(0, cruise));
    peakSpeed = k0 + square0 / j;
    return ramp(k0, peakSpeed, up)
        + ramp(k1, peakSpeed, down)
        + time[3] * peakSpeed
        - added(k0, k1);
  }

  /**
   * After {@link #last} went less far: the next move that has the way; false where a gap comes
   * first.
   */
  boolean next(double duration) {
    double k0 = v0 - a0 * a0 / (2 * j);
    double k1 = v1 - a1 * a1 / (2 * j);
    if (!TimedMove.dips(this, duration)) {
      over(k0, k1, peakSpeed);
      return true;
    }
    if (dips.find(this, TimedMove.dip(this, duration))) {
      return true;
    }
    if (dips.gap()) {
      return false;
    }
    over(k0, k1, Double.NEGATIVE_INFINITY);
    return true;
  }

  /** Sum of the times, s. */
  double duration() {
    double sum = 0;
    for (double t : time) {
      sum += Math.max(0, t);
    }
    return sum;
  }

  /** Way of the ramp from a speed to another without acceleration at both. */
  private double ramp(double from, double to, double most) {
    double gain = Math.max(0, to - from);
    return (from + to) / 2 * Ramp.duration(gain, most, j);
  }

  /** Times from the squares of the peaks that both ramps would have without limit. */
  private void ramps(double square0, double square1, double cruise) {
    double peak0 = Math.sqrt(square0);
    double peak1 = Math.sqrt(square1);
    double flat0 = 0;
    double flat1 = 0;
    if (peak0 > up) {
      flat0 = (square0 - up * up) / (j * up);
      peak0 = up;
    }
    if (peak1 > down) {
      flat1 = (square1 - down * down) / (j * down);
      peak1 = down;
    }
    set((peak0 - a0) / j, flat0, peak0 / j, cruise, peak1 / j, flat1, (a1 + peak1) / j);
  }

  /**
   * Square root x of j times the gain of the lesser ramp, from k to the peak speed, at which both
   * ramps fill the length; {@code far} starts at a speed not above k.
   */
  private double root(double k, double most, double far, double mostFar, double least, double l) {
    double d = j * (k - far);
    double flatFrom = Math.max(most, Math.sqrt(Math.max(0, mostFar * mostFar - d)));
    double high = Math.sqrt(Math.max(0, j * (top - k)));
    double low = least;
    if (flatFrom < high && (flatFrom <= low || fill(flatFrom, k, most, far, mostFar) <= l)) {
      return Math.max(least, bothFlat(k, most, far, mostFar, l));
    }
    high = Math.min(high, flatFrom);
    double x = Math.min(high, Math.cbrt(Math.max(0, l) * j * j / 2));
    if (!(x > low)) {
      x = high;
    }
    for (int i = 0; i < MOST_STEPS; i++) {
      double over = fill(x, k, most, far, mostFar) - l;
      if (over > 0) {
        high = x;
      } else {
        low = x;
      }
      double next = x - over / slope(x, k, most, d, mostFar);
      if (Math.abs(next - x) <= LAST_STEP * x) {
        return Math.max(low, Math.min(high, next));
      }
      x = next > low && next < high ? next : (low + high) / 2;
    }
    return x;
  }

  /** Way of both ramps. */
  private double fill(double x, double k, double most, double far, double mostFar) {
    double gain = x * x / j;
    double gainFar = gain + (k - far);
    double t = x <= most ? 2 * x / j : gain / most + most / j;
    double y = Math.sqrt(gainFar * j);
    double tFar = y <= mostFar ? 2 * y / j : gainFar / mostFar + mostFar / j;
    return (k + gain / 2) * t + (far + gainFar / 2) * tFar;
  }

  /** Derivative of {@link #fill} by x, from that of eq. 5.26. */
  private double slope(double x, double k, double most, double d, double mostFar) {
    double v = k + x * x / j;
    double peak = Math.min(x, most);
    double peakFar = Math.min(Math.sqrt(x * x + d), mostFar);
    return 2
        / j
        * ((v + peak * peak / (2 * j)) * (x / peak)
            + (v + peakFar * peakFar / (2 * j)) * (x / peakFar));
  }

  /** The root where both ramps reach their limits, from a square in the speed. */
  private double bothFlat(double k, double most, double far, double mostFar, double l) {
    double a = (1 / most + 1 / mostFar) / 2;
    double b = (most + mostFar) / (2 * j);
    double c = (k * (most / j - k / most) + far * (mostFar / j - far / mostFar)) / 2 - l;
    double root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
    double v = c < 0 ? -2 * c / (b + root) : (root - b) / (2 * a);
    return Math.sqrt(Math.max(0, j * (v - k)));
  }

  /** Fills the times. */
  void set(double t1, double t2, double t3, double t4, double t5, double t6, double t7) {
    time[0] = t1;
    time[1] = t2;
    time[2] = t3;
    time[3] = t4;
    time[4] = t5;
    time[5] = t6;
    time[6] = t7;
  }
}
