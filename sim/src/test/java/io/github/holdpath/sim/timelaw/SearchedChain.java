package io.github.holdpath.sim.timelaw;

/**
 * Stretches of constant jerk one after the other; filled in place, so that a search can reuse it.
 */
final class SearchedChain {
  private static final int MOST = 16;

  private final double[] jerk = new double[MOST];
  private final double[] time = new double[MOST];
  private int count;

  /** Takes all out. */
  void clear() {
    count = 0;
  }

  /** Adds a stretch; one without time, or pushed below 0 by rounding, is left out. */
  void add(double jerkThere, double duration) {
    if (duration > 0) {
      jerk[count] = jerkThere;
      time[count++] = duration;
    }
  }

  /** Adds the stretches of another chain. */
  void add(SearchedChain other) {
    for (int i = 0; i < other.count; i++) {
      add(other.jerk[i], other.time[i]);
    }
  }

  /** Adds another chain played backwards: the jerk keeps its sign, the order turns. */
  void addReversed(SearchedChain other) {
    for (int i = other.count - 1; i >= 0; i--) {
      add(other.jerk[i], other.time[i]);
    }
  }

  /** Sum of the times, s. */
  double duration() {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      sum += time[i];
    }
    return sum;
  }

  /** Way from a speed and an acceleration on. */
  double distance(double speed, double acceleration) {
    double v = speed;
    double a = acceleration;
    double way = 0;
    for (int i = 0; i < count; i++) {
      double t = time[i];
      way += t * (v + t * (a / 2 + t * jerk[i] / 6));
      v += t * (a + t * jerk[i] / 2);
      a += t * jerk[i];
    }
    return way;
  }

  /** The state to which it leads. */
  AxisState from(AxisState start) {
    AxisState s = start;
    for (int i = 0; i < count; i++) {
      s = s.after(time[i], jerk[i]);
    }
    return s;
  }

  /** Whether speed and acceleration stay within the limits but for a part {@code slack} of them. */
  boolean keeps(AxisState start, AxisLimits l, double slack) {
    double v = start.speed();
    double a = start.acceleration();
    double speedSlack = slack * (l.maxSpeed() - l.minSpeed());
    double slackA = slack * (l.maxAcceleration() - l.minAcceleration());
    for (int i = 0; i < count; i++) {
      double t = time[i];
      double j = jerk[i];
      double turn = j == 0 ? -1 : -a / j;
      if (turn > 0 && turn < t) {
        double extreme = v + turn * a / 2;
        if (extreme > l.maxSpeed() + speedSlack || extreme < l.minSpeed() - speedSlack) {
          return false;
        }
      }
      v += t * (a + t * j / 2);
      a += t * j;
      if (v > l.maxSpeed() + speedSlack
          || v < l.minSpeed() - speedSlack
          || a > l.maxAcceleration() + slackA
          || a < l.minAcceleration() - slackA) {
        return false;
      }
    }
    return true;
  }
}
