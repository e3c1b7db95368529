package io.github.holdpath.sim.timelaw;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The fastest move found by search, to judge {@link StateToState} by: another way to it, slow.
 *
 * <p>Every candidate for the fastest move is followed from start to end and checked against the
 * limits; the shortest that keeps them counts.
 */
final class SearchedMove {
  /** Part of the range of a limit by which rounding may exceed it. */
  private static final double LIMIT = 1e-11;

  /** Part of its scale by which the end may be missed; found moves miss by rounding alone. */
  private static final double END = 1e-11;

  /** Part of the range of acceleration below which a dip is judged by its end, not by its form. */
  private static final double FORM = 1e-7;

  private final AxisState start;
  private final AxisState end;
  private final AxisLimits limits;
  private final SearchedChain first = new SearchedChain();
  private final SearchedChain second = new SearchedChain();
  private final SearchedChain whole = new SearchedChain();
  private double bestTime = Double.POSITIVE_INFINITY;

  private SearchedMove(AxisState start, AxisState end, AxisLimits limits) {
    this.start = start;
    this.end = end;
    this.limits = limits;
  }

  /**
   * Duration of the fastest move, s.
   *
   * @param from where the axis is, inside the limits
   * @param to where it shall be, and how it shall move there
   * @param limits in the unit of the positions
   * @throws IllegalArgumentException if start or end cannot be within the limits
   */
  static double duration(AxisState from, AxisState to, AxisLimits limits) {
    if (!inside(to, limits, -1)) {
      throw new IllegalArgumentException(
          "the end " + to + " cannot be reached within " + limits + "; choose it nearer to rest");
    }
    if (!inside(from, limits, 1)) {
      throw new IllegalArgumentException("the start " + from + " is beyond " + limits);
    }
    SearchedMove plain = new SearchedMove(from, to, limits);
    plain.offer();
    plain.overSpeeds();
    plain.dips();
    SearchedMove mirrored = new SearchedMove(from.mirrored(), to.mirrored(), limits.mirrored());
    mirrored.dips();
    double fastest = Math.min(plain.bestTime, mirrored.bestTime);
    if (Double.isInfinite(fastest)) {
      throw new IllegalArgumentException(
          "no move found from " + from + " to " + to + " within " + limits);
    }
    return fastest;
  }

  /** Whether a state keeps the limits and can go on to do so, or has come so where backwards. */
  private static boolean inside(AxisState s, AxisLimits l, int direction) {
    double slack = LIMIT * (l.maxAcceleration() - l.minAcceleration());
    double slackSpeed = LIMIT * (l.maxSpeed() - l.minSpeed());
    double a = s.acceleration();
    double level = s.speed() + direction * a * Math.abs(a) / (2 * l.jerk());
    return Math.max(s.speed(), level) <= l.maxSpeed() + slackSpeed
        && Math.min(s.speed(), level) >= l.minSpeed() - slackSpeed
        && a <= l.maxAcceleration() + slack
        && a >= l.minAcceleration() - slack;
  }

  /** The fastest change to the speed {@code to} without acceleration. */
  private static void change(SearchedChain out, double v, double a, double to, AxisLimits l) {
    double j = l.jerk();
    int sign = to >= v + a * Math.abs(a) / (2 * j) ? 1 : -1;
    double most = sign > 0 ? l.maxAcceleration() : -l.minAcceleration();
    double own = sign * a;
    double gain = sign * (to - v);
    double peak = Math.sqrt(Math.max(0, j * gain + own * own / 2));
    double flat = 0;
    if (peak > most) {
      peak = most;
      flat = (gain - (2 * peak * peak - own * own) / (2 * j)) / peak;
    }
    out.clear();
    out.add(sign * j, (peak - own) / j);
    out.add(0, flat);
    out.add(-sign * j, peak / j);
  }

  /** Candidates of two changes of speed, with a cruise between where way is left. */
  private void overSpeeds() {
    List<Double> borders = new ArrayList<>(List.of(limits.minSpeed(), 0.0, limits.maxSpeed()));
    borders(borders, start.speed(), start.acceleration(), limits);
    borders(borders, end.speed(), -end.acceleration(), limits.reversed());
    new RootSearch(this::wayLeft, this::takeSpeed)
        .between(sorted(borders, limits.minSpeed(), limits.maxSpeed()));
  }

  /** Speeds at which the form of a change to them turns into another. */
  private static void borders(List<Double> out, double v, double a, AxisLimits l) {
    double up = l.maxAcceleration();
    double down = l.minAcceleration();
    out.add(v);
    out.add(v + a * Math.abs(a) / (2 * l.jerk()));
    out.add(v + (up * up - a * a / 2) / l.jerk());
    out.add(v - (down * down - a * a / 2) / l.jerk());
  }

  private static double[] sorted(List<Double> places, double from, double to) {
    DoubleStream all = places.stream().mapToDouble(x -> x);
    return all.filter(x -> x >= from && x <= to).sorted().toArray();
  }

  /** Way that two changes over {@code speed} leave; the second is planned backwards. */
  private double wayLeft(double speed) {
    change(first, start.speed(), start.acceleration(), speed, limits);
    change(second, end.speed(), -end.acceleration(), speed, limits.reversed());
    return end.position()
        - start.position()
        - first.distance(start.speed(), start.acceleration())
        - second.distance(end.speed(), -end.acceleration());
  }

  private void takeSpeed(double speed) {
    double left = wayLeft(speed);
    whole.clear();
    whole.add(first);
    if (speed != 0) {
      whole.add(0, left / speed);
    }
    whole.addReversed(second);
    offer();
  }

  /** Candidates whose acceleration need not pass 0. */
  private void dips() {
    double rise = rise();
    double hold = Math.max(0, limits.maxSpeed() - start.speed()) / limits.maxAcceleration();
    double[] borders = dipBorders(rise, rise + hold);
    for (int branch = -1; branch <= 1; branch += 2) {
      int sign = branch;
      new RootSearch(u -> dipLeft(u, sign), u -> takeDip(u, sign)).between(borders);
    }
  }

  private double rise() {
    return Math.max(0, (limits.maxAcceleration() - start.acceleration()) / limits.jerk());
  }

  /** Where the form of a dip changes or its existence ends. */
  private double[] dipBorders(double rise, double longest) {
    double j = limits.jerk();
    double a0 = start.acceleration();
    double a1 = end.acceleration();
    double most = limits.maxAcceleration();
    double least = limits.minAcceleration();
    double c = (a1 * a1 - a0 * a0) / 2 - j * (end.speed() - start.speed());
    List<Double> list = new ArrayList<>(List.of(0.0, rise, longest, -a0 / j));
    list.add(rise - c / (j * most));
    for (double square : new double[] {0, a1 * a1, least * least}) {
      double root = Math.sqrt(Math.max(0, square - c));
      list.add((root - a0) / j);
      list.add((-root - a0) / j);
      list.add(rise + (square - most * most - c) / (j * most));
    }
    return sorted(list, 0, longest);
  }

  /**
   * Fills {@link #whole} with the dip whose first two phases take {@code u} together; false if
   * there is none.
   */
  private boolean dip(double u, int branch) {
    double j = limits.jerk();
    double t1 = Math.min(u, rise());
    double t2 = u - t1;
    double a0 = start.acceleration();
    double a1 = end.acceleration();
    double top = a0 + j * t1;
    double v = start.speed() + t1 * (a0 + top) / 2 + t2 * top;
    double square = (top * top + a1 * a1) / 2 - j * (end.speed() - v);
    double form = FORM * (limits.maxAcceleration() - limits.minAcceleration());
    double low = branch * Math.sqrt(Math.max(0, square));
    if (square < -form * form || low > top + form || low > a1 + form) {
      return false;
    }
    double flat = 0;
    double least = limits.minAcceleration();
    if (low < least) {
      flat = (square - least * least) / (j * -least);
      low = least;
    }
    whole.clear();
    whole.add(j, t1);
    whole.add(0, t2);
    whole.add(-j, (top - low) / j);
    whole.add(0, flat);
    whole.add(j, (a1 - low) / j);
    return true;
  }

  private double dipLeft(double u, int branch) {
    if (!dip(u, branch)) {
      return Double.NaN;
    }
    return end.position() - start.position() - whole.distance(start.speed(), start.acceleration());
  }

  private void takeDip(double u, int branch) {
    if (dip(u, branch)) {
      offer();
    }
  }

  /** Keeps {@link #whole} if it is shorter than what is known, meets the end and keeps limits. */
  private void offer() {
    double time = whole.duration();
    if (time < bestTime && meetsEnd() && whole.keeps(start, limits, LIMIT)) {
      bestTime = time;
    }
  }

  private boolean meetsEnd() {
    double speeds = limits.maxSpeed() - limits.minSpeed();
    double accelerations = limits.maxAcceleration() - limits.minAcceleration();
    double way = speeds * (speeds / accelerations + accelerations / limits.jerk());
    double scale = way + Math.abs(start.position()) + Math.abs(end.position());
    AxisState reached = whole.from(start);
    return Math.abs(reached.position() - end.position()) <= END * scale
        && Math.abs(reached.speed() - end.speed()) <= END * speeds
        && Math.abs(reached.acceleration() - end.acceleration()) <= END * accelerations;
  }
}
