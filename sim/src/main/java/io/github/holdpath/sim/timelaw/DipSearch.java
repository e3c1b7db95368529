package io.github.holdpath.sim.timelaw;

/**
 * The fastest move of an {@link UpMove} whose acceleration dips, but not below 0, before it rises
 * to that of the end (theory, eq. 5.20 and 5.25). The lower the dip, the longer the move; so the
 * first dip from above that has the way is the fastest.
 */
final class DipSearch {
  private static final int MOST_STEPS = 100;
  private static final double LAST_STEP = 1e-9;

  private final double[] places = new double[8];
  private int count;
  private double v0;
  private double a0;
  private double v1;
  private double a1;
  private double j;
  private double up;

  /** Excess of the peak's square over the dip's. */
  private double c;

  private double lowest;

  /** Whether the lowest dip is above 0: no move lasts as long as one that dips a little more. */
  boolean gap() {
    return lowest > 0;
  }

  /** Looks for it below a dip; fills the times and gives true if there is one. */
  boolean find(UpMove m, double highest) {
    begin(m);
    double peak = peak(lowest);
    if (speed(peak, lowest) >= 0) {
      // The speed at the peak falls with the dip, so the way only grows.
      return way(lowest) >= m.way - m.slack && take(m, root(m, lowest, highest));
    }
    places(v0 - a0 * a0 / (2 * j), v1 - a1 * a1 / (2 * j));
    double last = highest;
    for (int i = 0; i < count; i++) {
      if (places[i] <= last && way(places[i]) >= m.way - m.slack) {
        return take(m, root(m, places[i], last));
      }
      last = Math.min(last, places[i]);
    }
    return false;
  }

  private void begin(UpMove m) {
    v0 = m.v0;
    a0 = m.a0;
    v1 = m.v1;
    a1 = m.a1;
    j = m.j;
    up = m.up;
    c = Math.max(0, j * (v1 - v0) + (a0 * a0 - a1 * a1) / 2);
    lowest = a0 > 0 ? Math.min(a1, Math.sqrt(Math.max(0, a0 * a0 - c))) : 0;
  }

  /** Fills the times for a dip; gives its way. */
  double at(UpMove m, double dip) {
    begin(m);
    take(m, dip);
    return way(dip);
  }

  /** Dips from above between which the way only grows or only falls. */
  private void places(double k0, double k1) {
    count = 0;
    add(Math.sqrt(Math.max(0, up * up - c)));
    double flat = Math.sqrt(Math.max(0, up * up - 16 * j * k1));
    add((up + flat) / 4);
    add((up - flat) / 4);
    double b = 8 * j * k0 + c;
    double pointed = Math.sqrt(Math.max(0, b * b - 48 * j * j * k0 * k0));
    add(Math.sqrt(Math.max(0, (-b + pointed) / 6 - c)));
    add(Math.sqrt(Math.max(0, (-b - pointed) / 6 - c)));
    add(lowest);
  }

  /** Sorts a place in, the highest first. */
  private void add(double dip) {
    double place = Math.max(lowest, Math.min(a1, dip));
    int i = count++;
    while (i > 0 && places[i - 1] < place) {
      places[i] = places[i - 1];
      i--;
    }
    places[i] = place;
  }

  private double peak(double dip) {
    return Math.min(up, Math.sqrt(c + dip * dip));
  }

  /** Speed where the fall to the dip begins. */
  private double speed(double peak, double dip) {
    return v1 - (peak * peak + a1 * a1 - 2 * dip * dip) / (2 * j);
  }

  /** Time at the highest acceleration. */
  private double flat(double dip) {
    return Math.max(0, c + dip * dip - up * up) / (j * up);
  }

  private double way(double dip) {
    double peak = peak(dip);
    double flat = flat(dip);
    double at = speed(peak, dip);
    double rise = (peak - a0) / j;
    double fall = (peak - dip) / j;
    double last = (a1 - dip) / j;
    return rise * (v0 + rise * (a0 / 2 + j * rise / 6))
        + flat * (at - flat * peak / 2)
        + fall * (at + fall * (peak / 2 - j * fall / 6))
        + last * (v1 - last * (a1 / 2 - j * last / 6));
  }

  /** The dip between two that has the way; that of the lower one is enough, or misses by slack. */
  private double root(UpMove m, double from, double to) {
    double low = from;
    double high = to;
    double dip = from;
    for (int i = 0; i < MOST_STEPS; i++) {
      double over = way(dip) - m.way;
      if (over > 0) {
        low = dip;
      } else {
        high = dip;
      }
      double peak = peak(dip);
      double fall = peak - dip;
      double slope = -2 / j * fall * (speed(peak, dip) / peak + fall / (2 * j));
      double next = dip - over / slope;
      if (Math.abs(next - dip) <= LAST_STEP * (a1 - from)) {
        return Math.max(low, Math.min(high, next));
      }
      dip = next > low && next < high ? next : (low + high) / 2;
    }
    return dip;
  }

  private boolean take(UpMove m, double dip) {
    double peak = peak(dip);
    m.set((peak - a0) / j, flat(dip), (peak - dip) / j, 0, 0, 0, (a1 - dip) / j);
    return true;
  }
}
