package io.github.holdpath.dynamics.margin;

import org.jspecify.annotations.Nullable;

/**
 * How many times as fast a motion may be played: gravity stays, everything of the motion grows with
 * k^2 (theory, eqs. 3.6 and 3.7). Works on k^2, in which every limit is convex.
 */
public final class SpeedHeadroom {
  /** Largest k that is looked for. */
  public static final double LARGEST = 100;

  private static final double TOLERANCE = 1e-13;
  private static final int MOST_STEPS = 200;

  private final HoldModel hold;
  private final double safety;
  private final HoldModel.Workspace ws;
  private final double[] w = new double[6];

  /**
   * For one grip and one thread.
   *
   * @param hold the grip
   * @param safety S, on the load, positive
   * @param ws workspace of that grip
   */
  public SpeedHeadroom(HoldModel hold, double safety, HoldModel.Workspace ws) {
    this.hold = hold;
    this.safety = safety;
    this.ws = ws;
  }

  /**
   * Largest k such that the load {@code S (gravity + k'^2 motion)} is held for all k' up to k.
   *
   * @param load gravity wrench (6), then motion wrench (6)
   * @return k, 0 where gravity alone is too much, {@link #LARGEST} at most
   */
  public double of(double[] load) {
    return Math.sqrt(squared(load, LARGEST * LARGEST));
  }

  /**
   * Smallest of {@code bound} and the headroom's square; cheap where the bound is not undercut.
   *
   * @param load gravity wrench (6), then motion wrench (6)
   * @param bound k^2 above which the answer does not matter
   */
  public double squared(double[] load, double bound) {
    if (hold.hasLedges()) {
      return traced(load, bound);
    }
    if (useAt(load, 0) > 1) {
      return 0;
    }
    if (useAt(load, bound) <= 1) {
      return bound;
    }
    return root(load, null, 0, bound);
  }

  private double useAt(double[] load, double k2) {
    set(load, k2);
    return hold.use(w, 0, ws);
  }

  private void set(double[] load, double k2) {
    for (int i = 0; i < 6; i++) {
      w[i] = safety * (load[i] + k2 * load[6 + i]);
    }
  }

  private double useAt(double[] load, @Nullable ShareMatrix m, double k2) {
    set(load, k2);
    return m == null ? hold.use(w, 0, ws) : hold.use(m, w, 0, ws);
  }

  /** Root of a convex use that is at most 1 at {@code low} and above 1 at {@code high}. */
  private double root(double[] load, @Nullable ShareMatrix m, double low, double high) {
    double fLow = useAt(load, m, low) - 1;
    double fHigh = useAt(load, m, high) - 1;
    // False position with the weight of a stuck end halved (Illinois), else halving.
    for (int step = 0; step < MOST_STEPS && high - low > TOLERANCE * high; step++) {
      double mid = (low * fHigh - high * fLow) / (fHigh - fLow);
      if (!(mid > low && mid < high) || step % 8 == 7) {
        mid = low + (high - low) / 2;
      }
      double f = useAt(load, m, mid) - 1;
      if (f <= 0) {
        low = mid;
        fLow = f;
        fHigh /= 2;
      } else {
        high = mid;
        fHigh = f;
        fLow /= 2;
      }
    }
    return low;
  }

  /** With ledges: from one set of pushing ledges to the next, the first crossing. */
  private double traced(double[] load, double bound) {
    double k2 = 0;
    int most = 4 << hold.ledgeCount();
    for (int step = 0; step < most && k2 < bound; step++) {
      set(load, k2);
      int pushing = hold.pushingLedges(w, 0, ws);
      ShareMatrix m = ws.matrixFor(pushing);
      if (useAt(load, m, k2) > 1) {
        return k2;
      }
      double end = Math.min(bound, nextChange(load, m, pushing, k2));
      if (useAt(load, m, end) > 1) {
        return root(load, m, k2, end);
      }
      k2 = end;
    }
    return k2;
  }

  /** First k^2 beyond {@code from} at which a ledge is clearly on the wrong side. */
  private double nextChange(double[] load, ShareMatrix m, int pushing, double from) {
    double next = Double.POSITIVE_INFINITY;
    for (int j = 0; j < hold.ledgeCount(); j++) {
      double at0 = HoldModel.push(m, j, load, 0);
      double slope = HoldModel.push(m, j, load, 6);
      boolean stands = (pushing & 1 << j) != 0;
      if (stands ? slope < 0 : slope > 0) {
        double change = Math.max(from, -at0 / slope);
        // Twice the tolerance by which a ledge counts as pushing or not.
        double beyond = 2 * HoldModel.PUSH_TOLERANCE * size(load, change) / Math.abs(slope);
        next = Math.min(next, change + beyond);
      }
    }
    return next;
  }

  private static double size(double[] load, double k2) {
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      double w = load[i] + k2 * load[6 + i];
      sum += w * w;
    }
    return Math.sqrt(sum);
  }
}
