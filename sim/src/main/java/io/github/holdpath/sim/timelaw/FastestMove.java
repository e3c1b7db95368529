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
    up.slack = MISS * scale;
    if (!attempt(down(v0, a0, v1, a1, l.jerk()), v0, a0, v1, a1, way, l)) {
      attempt(!mirrored, v0, a0, v1, a1, way, l);
    }
    append(out);
  }

  private boolean attempt(
      boolean mirror, double v0, double a0, double v1, double a1, double way, AxisLimits l) {
    mirrored = mirror;
    turned = false;
    load(up, mirror, false, v0, a0, v1, a1, way, l);
    double over = up.way - up.change();
    if (Math.abs(over) <= up.slack) {
      return true;
    }
    if (over < 0) {
      turned = true;
      load(up, mirror, true, v0, a0, v1, a1, way, l);
    }
    return up.climb();
  }

  /** Fills in a move as seen from the other side, or played from its end, or both. */
  static void load(
      UpMove m,
      boolean mirror,
      boolean turn,
      double v0,
      double a0,
      double v1,
      double a1,
      double way,
      AxisLimits l) {
    double sign = mirror ? -1 : 1;
    m.j = l.jerk();
    m.v0 = turn ? -sign * v1 : sign * v0;
    m.a0 = turn ? sign * a1 : sign * a0;
    m.v1 = turn ? -sign * v0 : sign * v1;
    m.a1 = turn ? sign * a0 : sign * a1;
    m.way = turn ? -sign * way : sign * way;
    m.top = mirror == turn ? l.maxSpeed() : -l.minSpeed();
    m.up = mirror ? -l.minAcceleration() : l.maxAcceleration();
    m.down = mirror ? l.maxAcceleration() : -l.minAcceleration();
  }

  /** Whether the quickest change of speed goes down first. */
  static boolean down(double v0, double a0, double v1, double a1, double j) {
    double straight = (a1 > a0 ? a1 * a1 - a0 * a0 : a0 * a0 - a1 * a1) / 2;
    return j * (v1 - v0) < straight;
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
