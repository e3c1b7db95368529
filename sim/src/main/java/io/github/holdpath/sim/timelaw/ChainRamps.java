package io.github.holdpath.sim.timelaw;

import java.util.List;

/** Trapezoid and S-curve over a chain of zones (theory, eq. 5.21 to 5.23). */
final class ChainRamps {
  private final LawKind law;
  private final List<LawZone> zones;
  private final double[] borders;

  private ChainRamps(LawKind law, List<LawZone> zones) {
    this.law = law;
    this.zones = zones;
    this.borders = new double[zones.size() + 1];
  }

  static void fill(ChainLaw.PhaseList list, LawKind law, List<LawZone> zones) {
    requireEndsThatMayStop(zones.get(0), "first");
    requireEndsThatMayStop(zones.get(zones.size() - 1), "last");
    ChainRamps ramps = new ChainRamps(law, zones);
    ramps.requireBounds();
    ramps.forward();
    ramps.backward();
    ramps.phases(list);
  }

  private static void requireEndsThatMayStop(LawZone zone, String which) {
    if (zone.steady()) {
      throw new IllegalArgumentException(
          "the " + which + " zone must not be steady, as the chain rests at its ends");
    }
  }

  private void requireBounds() {
    for (LawZone zone : zones) {
      LawLimits l = zone.limits();
      boolean accelerations =
          Double.isFinite(l.acceleration()) && Double.isFinite(l.deceleration());
      if (!zone.steady() && !accelerations && Double.isInfinite(jerk(zone))) {
        throw new IllegalArgumentException(
            "a zone needs finite limits of acceleration and deceleration, or of jerk: " + l);
      }
    }
  }

  private double jerk(LawZone zone) {
    return law.boundsJerk() ? zone.limits().jerk() : Double.POSITIVE_INFINITY;
  }

  /** The highest speeds at the borders that speeding up allows, one after the other. */
  private void forward() {
    for (int i = 0; i < zones.size(); i++) {
      LawZone zone = zones.get(i);
      double cap = zone.limits().speed();
      if (i + 1 < zones.size()) {
        cap = Math.min(cap, zones.get(i + 1).limits().speed());
        borders[i + 1] =
            zone.steady()
                ? Math.min(cap, borders[i])
                : reach(borders[i], zone, zone.limits().acceleration(), cap);
      }
    }
  }

  /** Lowers them to what slowing down allows. */
  private void backward() {
    for (int i = zones.size() - 1; i > 0; i--) {
      LawZone zone = zones.get(i);
      borders[i] =
          zone.steady()
              ? Math.min(borders[i], borders[i + 1])
              : reach(borders[i + 1], zone, zone.limits().deceleration(), borders[i]);
    }
  }

  /** Eq. 5.22: the highest speed up to {@code cap} to which a ramp from {@code speed} has way. */
  private double reach(double speed, LawZone zone, double acceleration, double cap) {
    double jerk = jerk(zone);
    if (cap <= speed || way(speed, cap, acceleration, jerk) <= zone.length()) {
      return cap;
    }
    double low = speed;
    double high = cap < Double.MAX_VALUE ? cap : Double.MAX_VALUE;
    while (true) {
      double middle = between(low, high);
      if (middle <= low || middle >= high) {
        return low;
      }
      if (way(speed, middle, acceleration, jerk) <= zone.length()) {
        low = middle;
      } else {
        high = middle;
      }
    }
  }

  /** The middle of their exponents where two speeds are far apart, their mean where near. */
  private static double between(double low, double high) {
    if (high > 4 * low && low > 0) {
      return Math.sqrt(low) * Math.sqrt(high);
    }
    return high > 4 && low == 0 ? Math.sqrt(high) : low / 2 + high / 2;
  }

  /** Way of the ramp between two speeds, eq. 5.21. */
  private static double way(double slow, double fast, double acceleration, double jerk) {
    return fast > slow ? (slow + fast) / 2 * Ramp.duration(fast - slow, acceleration, jerk) : 0;
  }

  /** Eq. 5.23: the highest speed in a zone, whose two ramps have way. */
  private double peak(LawZone zone, double in, double out) {
    LawLimits l = zone.limits();
    double jerk = jerk(zone);
    double low = Math.max(in, out);
    double high = Math.min(l.speed(), Double.MAX_VALUE);
    if (bothWays(l, jerk, in, high, out) <= zone.length()) {
      return high;
    }
    while (true) {
      double middle = between(low, high);
      if (middle <= low || middle >= high) {
        return low;
      }
      if (bothWays(l, jerk, in, middle, out) <= zone.length()) {
        low = middle;
      } else {
        high = middle;
      }
    }
  }

  private static double bothWays(LawLimits l, double jerk, double in, double peak, double out) {
    return way(in, peak, l.acceleration(), jerk) + way(out, peak, l.deceleration(), jerk);
  }

  private void phases(ChainLaw.PhaseList list) {
    double start = 0;
    for (int i = 0; i < zones.size(); i++) {
      LawZone zone = zones.get(i);
      list.begin(i);
      double end = i + 1 < zones.size() ? start + zone.length() : list.distance();
      if (zone.steady()) {
        put(list, zone.length() / borders[i], false, start, borders[i], 0, 0);
      } else {
        cross(list, zone, start, end, borders[i], borders[i + 1]);
      }
      start = end;
    }
  }

  /** The phases of one zone: up to the peak, along it, down; each hangs on its known end. */
  private void cross(
      ChainLaw.PhaseList list, LawZone zone, double start, double end, double in, double out) {
    LawLimits l = zone.limits();
    double jerk = jerk(zone);
    double peak = peak(zone, in, out);
    double wayUp = way(in, peak, l.acceleration(), jerk);
    double wayDown = way(out, peak, l.deceleration(), jerk);
    double top = start + wayUp;
    double left = Math.max(0, zone.length() - wayUp - wayDown);
    if (peak > in) {
      Ramp up = Ramp.to(peak - in, l.acceleration(), jerk);
      double t = up.jerkTime();
      double gain = up.acceleration() * t / 2;
      putIfLong(list, t, false, start, in, 0, jerk);
      double at = start + t * (in + gain / 3);
      putIfLong(list, up.flatTime(), false, at, in + gain, up.acceleration(), 0);
      putIfLong(list, t, true, top, peak, 0, -jerk);
    }
    if (peak > out) {
      putIfLong(list, left / peak, false, top, peak, 0, 0);
      Ramp down = Ramp.to(peak - out, l.deceleration(), jerk);
      double t = down.jerkTime();
      double gain = down.acceleration() * t / 2;
      putIfLong(list, t, false, end - wayDown, peak, 0, -jerk);
      double at = end - t * (out + gain / 3);
      if (t > 0) {
        putIfLong(list, down.flatTime(), true, at, out + gain, -down.acceleration(), 0);
        put(list, t, true, end, out, 0, jerk);
      } else {
        put(list, down.flatTime(), true, at, out, -down.acceleration(), 0);
      }
    } else if (peak > in) {
      putIfLong(list, left / peak, true, end, peak, 0, 0);
    } else {
      put(list, left / peak, true, end, peak, 0, 0);
    }
  }

  /** Leaves the phase out where rounding has no time for it. */
  private static void putIfLong(
      ChainLaw.PhaseList list,
      double time,
      boolean hangsOnEnd,
      double position,
      double speed,
      double acceleration,
      double jerk) {
    if (list.end() + time > list.end()) {
      put(list, time, hangsOnEnd, position, speed, acceleration, jerk);
    }
  }

  private static void put(
      ChainLaw.PhaseList list,
      double time,
      boolean hangsOnEnd,
      double position,
      double speed,
      double acceleration,
      double jerk) {
    double from = list.end();
    double to = from + time;
    double pivot = hangsOnEnd ? to : from;
    list.put(new JerkPhase(from, to, pivot, position, speed, acceleration, jerk));
  }
}
