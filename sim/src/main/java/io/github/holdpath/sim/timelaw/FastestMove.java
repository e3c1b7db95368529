package io.github.holdpath.sim.timelaw;

/**
 * Turns any move between two states within the limits into an {@link UpMove} by looking at the axis
 * from its other side or playing it from its end (theory, section 5.7), and its answer back.
 */
final class FastestMove {
  /** Part of the scale of positions by which the way may be missed. */
  private static final double MISS = 1e-13;

  private final UpMove up = new UpMove();
  private boolean mirrored;
  private boolean turned;

  /** Adds the phases of the fastest move to {@code out}; speeds, accelerations, way, scale. */
  void plan(
      JerkChain out,
      double v0,
      double a0,
      double v1,
      double a1,
      double way,
      double scale,
      AxisLimits l) {
    double j = l.jerk();
    double straight = (a1 > a0 ? a1 * a1 - a0 * a0 : a0 * a0 - a1 * a1) / 2;
    up.j = j;
    up.slack = MISS * scale;
    if (!attempt(j * (v1 - v0) < straight, v0, a0, v1, a1, way, l)) {
      attempt(!mirrored, v0, a0, v1, a1, way, l);
    }
    append(out);
  }

  private boolean attempt(
      boolean mirror, double v0, double a0, double v1, double a1, double way, AxisLimits l) {
    mirrored = mirror;
    turned = false;
    double sign = mirror ? -1 : 1;
    up.v0 = sign * v0;
    up.a0 = sign * a0;
    up.v1 = sign * v1;
    up.a1 = sign * a1;
    up.way = sign * way;
    up.top = mirror ? -l.minSpeed() : l.maxSpeed();
    up.up = mirror ? -l.minAcceleration() : l.maxAcceleration();
    up.down = mirror ? l.maxAcceleration() : -l.minAcceleration();
    double over = up.way - up.change();
    if (Math.abs(over) <= up.slack) {
      return true;
    }
    if (over < 0) {
      turned = true;
      up.v0 = -sign * v1;
      up.a0 = sign * a1;
      up.v1 = -sign * v0;
      up.a1 = sign * a0;
      up.way = -sign * way;
      up.top = mirror ? l.maxSpeed() : -l.minSpeed();
    }
    return up.climb();
  }

  /** Adds the phases as they are for the axis itself. */
  private void append(JerkChain out) {
    double j = mirrored == turned ? up.j : -up.j;
    double[] t = up.time;
    double first = t[2];
    double last = t[4];
    if (t[3] <= 0) {
      first += last;
      last = 0;
    }
    if (turned) {
      out.add(j, t[6]);
      out.add(0, t[5]);
      out.add(-j, last);
      out.add(0, t[3]);
      out.add(-j, first);
      out.add(0, t[1]);
      out.add(j, t[0]);
    } else {
      out.add(j, t[0]);
      out.add(0, t[1]);
      out.add(-j, first);
      out.add(0, t[3]);
      out.add(-j, last);
      out.add(0, t[5]);
      out.add(j, t[6]);
    }
  }
}
