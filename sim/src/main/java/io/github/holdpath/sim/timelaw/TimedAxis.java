package io.github.holdpath.sim.timelaw;

/** Moves of one axis that last a given time, where there are such (theory, section 5.15). */
final class TimedAxis {
  /** Part of the scale of positions by which the way may be missed. */
  private static final double MISS = 1e-12;

  private static final int PHASES = 7;

  private final UpMove ahead = new UpMove();
  private final UpMove behind = new UpMove();
  private boolean mirror;
  private double weight;
  private double v0;
  private double a0;
  private double v1;
  private double a1;
  private double way;
  private AxisLimits limits = new AxisLimits(-1, 1, -1, 1, 1);

  /** Takes a problem with states inside the limits. */
  void begin(
      double v0There,
      double a0There,
      double v1There,
      double a1There,
      double wayThere,
      double scale,
      AxisLimits limitsThere) {
    v0 = v0There;
    a0 = a0There;
    v1 = v1There;
    a1 = a1There;
    way = wayThere;
    limits = limitsThere;
    ahead.slack = MISS * scale;
    behind.slack = MISS * scale;
  }

  /** The least duration from {@code least} on that is possible; keeps its moves. */
  double possible(double least) {
    mirror = FastestMove.down(v0, a0, v1, a1, limits.jerk());
    double before = before(least);
    if (before >= 0) {
      return before;
    }
    mirror = !mirror;
    return before(least);
  }

  /** The same up to the gap, if any; below 0 if there is none up to there. */
  private double before(double least) {
    FastestMove.load(ahead, mirror, false, v0, a0, v1, a1, way, limits);
    FastestMove.load(behind, mirror, true, v0, a0, v1, a1, way, limits);
    ahead.change();
    double time = Math.max(least, ahead.duration());
    if (time > TimedMove.gapFrom(ahead)) {
      return -1;
    }
    double over = ahead.way - ahead.last(time);
    if (over > ahead.slack) {
      if (!ahead.next(time)) {
        return -1;
      }
      time = ahead.duration();
    } else if (behind.way - behind.last(time) > behind.slack) {
      if (!behind.next(time)) {
        return -1;
      }
      time = behind.duration();
    }
    double most = ahead.last(time);
    double spread = most + behind.last(time);
    weight = spread > ahead.slack ? Math.min(1, Math.max(0, 1 - (most - ahead.way) / spread)) : 1;
    return time;
  }

  /** Adds the mean of both moves that has the way, eq. 5.30; it lasts {@code duration}. */
  void append(JerkChain out, double duration) {
    double sign = mirror ? -limits.jerk() : limits.jerk();
    double done = 0;
    double endAhead = 0;
    double endBehind = 0;
    int i = -1;
    int k = -1;
    while (i < PHASES || k < PHASES) {
      if (i < PHASES && endAhead <= endBehind || k >= PHASES) {
        i++;
        endAhead = i < PHASES ? endAhead + Math.max(0, ahead.time[i]) : duration;
      } else {
        k++;
        endBehind = k < PHASES ? endBehind + Math.max(0, behind.time[PHASES - 1 - k]) : duration;
      }
      double end = Math.min(duration, Math.min(endAhead, endBehind));
      if (end > done) {
        double mean = weight * jerk(i) - (1 - weight) * jerk(PHASES - 1 - k);
        out.add(sign * mean, end - done);
        done = end;
      }
    }
  }

  /** Part of the jerk in a phase of an {@link UpMove}. */
  private static double jerk(int phase) {
    return switch (phase) {
      case 0, 6 -> 1;
      case 2, 4 -> -1;
      default -> 0;
    };
  }
}
