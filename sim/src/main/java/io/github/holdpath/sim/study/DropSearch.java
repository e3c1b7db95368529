package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.WholeGrip;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Finds the least whole-grip factor H2 of one smooth stretch of motion with few solves (theory, eq.
 * 3.14).
 *
 * <p>The loads that a grip can hold are a convex set with zero in it, so {@code u(w) = 1/H2(w)} is
 * convex and {@code u(v + w) <= u(v) + u(w)}. Between two samples a and b that are solved, with
 * {@code w = (1 - x) w_a + x w_b + r}, it is at most {@code (1 - x) u_a + x u_b + 1/H1(r)}; it is
 * at most {@code 1/H1(w)} anyway. Where neither bound beats the best that is known, nothing is
 * solved.
 */
final class DropSearch {
  /** What the least factor may be missed by, relative: that of the first-slip factor's search. */
  static final double TOLERANCE = 1e-4;

  private static final double LEAST_USE = 1 / HoldModel.NO_LIMIT;

  private final HoldModel hold;
  private final HoldModel.Workspace ws;
  private final WholeGrip whole;
  private final WholeGrip.Workspace wholeWs;
  private final double[] rest = new double[6];
  private double[] loads = new double[0];
  private double[] times = new double[0];
  private double[] uses = new double[0];
  private int count;
  private double found;
  private int foundAt;

  DropSearch(HoldModel hold, HoldModel.Workspace ws, WholeGrip whole) {
    this.hold = hold;
    this.ws = ws;
    this.whole = whole;
    this.wholeWs = whole.workspace();
  }

  /** Begins a stretch of so many samples. */
  void begin(int samples) {
    count = 0;
    if (times.length < samples) {
      loads = new double[6 * samples];
      times = new double[samples];
      uses = new double[samples];
    }
  }

  /**
   * Next sample.
   *
   * @param time s, later than the one before
   * @param load required wrench, copied
   * @param use 1/H1 of it
   */
  void add(double time, double[] load, double use) {
    System.arraycopy(load, 0, loads, 6 * count, 6);
    times[count] = time;
    uses[count++] = use;
  }

  /** Use 1/H2 of a load of which 1/H1 is known. */
  double use(double[] load, int at, double firstUse) {
    return firstUse <= LEAST_USE ? LEAST_USE : 1 / whole.factor(load, at, scale(firstUse), wholeWs);
  }

  /** The same for a number to show: to the last digits that rounding leaves. */
  double fineUse(double[] load, double firstUse) {
    return firstUse <= LEAST_USE
        ? LEAST_USE
        : 1 / whole.fineFactor(load, 0, scale(firstUse), wholeWs);
  }

  private static double scale(double firstUse) {
    return Double.isInfinite(firstUse) ? 1 : 1 / firstUse;
  }

  /**
   * Searches the stretch.
   *
   * @param best largest use that is known already
   * @return the largest use of the stretch, or {@code best} where none is larger
   */
  double search(double best) {
    found = best;
    foundAt = -1;
    int worst = 0;
    for (int i = 1; i < count; i++) {
      worst = uses[i] > uses[worst] ? i : worst;
    }
    if (beats(uses[worst])) {
      solve(worst);
      double first = solve(0);
      double last = solve(count - 1);
      Deque<double[]> open = new ArrayDeque<>();
      open.push(new double[] {0, first, count - 1, last});
      while (!open.isEmpty() && found < Double.POSITIVE_INFINITY) {
        split(open.pop(), open);
      }
    }
    return found;
  }

  /** Time of the sample that the last search found, if it found more than was known, s. */
  double time() {
    return times[foundAt];
  }

  private boolean beats(double bound) {
    return bound > Math.max(found, LEAST_USE) * (1 + TOLERANCE);
  }

  private double solve(int i) {
    double use = use(loads, 6 * i, uses[i]);
    if (use > found) {
      found = use;
      foundAt = i;
    }
    return use;
  }

  /** Solves the sample between two solved ones whose bound is highest, if that may be the worst. */
  private void split(double[] ends, Deque<double[]> open) {
    int a = (int) ends[0];
    int b = (int) ends[2];
    double highest = 0;
    int at = -1;
    for (int i = a + 1; i < b; i++) {
      if (!beats(uses[i])) {
        continue;
      }
      double x = (times[i] - times[a]) / (times[b] - times[a]);
      double line = (1 - x) * ends[1] + x * ends[3];
      double bound = Math.min(uses[i], line + restUse(a, b, i, x));
      if (bound > highest) {
        highest = bound;
        at = i;
      }
    }
    if (at > 0 && beats(highest)) {
      double use = solve(at);
      open.push(new double[] {a, ends[1], at, use});
      open.push(new double[] {at, use, b, ends[3]});
    }
  }

  private double restUse(int a, int b, int i, double x) {
    double size = 0;
    for (int k = 0; k < 6; k++) {
      rest[k] = loads[6 * i + k] - (1 - x) * loads[6 * a + k] - x * loads[6 * b + k];
    }
    for (double r : rest) {
      size += r * r;
    }
    return size == 0 ? 0 : hold.use(rest, 0, ws);
  }
}
