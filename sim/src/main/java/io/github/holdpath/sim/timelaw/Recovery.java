package io.github.holdpath.sim.timelaw;

/**
 * The fastest way back inside the limits (theory, section 5.7): full jerk towards the limit, then
 * the full opposite acceleration, until speed and acceleration are inside and stay there.
 */
final class Recovery {
  /** Part of a limit's range that rounding may exceed it by. */
  private static final double ROUNDING = 1e-14;

  private Recovery() {}

  /** Adds it to a chain, from where that ends; nothing for an end inside. */
  static void add(JerkChain chain, AxisLimits limits) {
    if (step(chain, limits)) {
      // Back from the acceleration; the speed is beyond the other limit, if any.
      step(chain, limits);
    }
  }

  /** Recovers from a speed, or else from an acceleration; true where a speed may be left. */
  private static boolean step(JerkChain chain, AxisLimits l) {
    double v = chain.speed();
    double a = chain.acceleration();
    double j = l.jerk();
    double slackSpeed = ROUNDING * (l.maxSpeed() - l.minSpeed());
    double slack = ROUNDING * (l.maxAcceleration() - l.minAcceleration());
    boolean below = a < l.minAcceleration() - slack;
    boolean above = a > l.maxAcceleration() + slack;
    double highest = a > 0 ? v + a * a / (2 * j) : v;
    double lowest = a < 0 ? v - a * a / (2 * j) : v;
    if (highest > l.maxSpeed() + slackSpeed && !below) {
      brake(chain, v - l.maxSpeed(), a, -l.minAcceleration(), j, 1);
      return false;
    }
    if (lowest < l.minSpeed() - slackSpeed && !above) {
      brake(chain, l.minSpeed() - v, -a, l.maxAcceleration(), j, -1);
      return false;
    }
    if (above) {
      chain.add(-j, (a - l.maxAcceleration()) / j);
    } else if (below) {
      chain.add(j, (l.minAcceleration() - a) / j);
    }
    return above || below;
  }

  /**
   * Brakes until the speed is back at its limit.
   *
   * @param excess of speed over the limit; below 0 where it is still to come
   * @param a acceleration away from the limit
   * @param most largest acceleration back
   */
  private static void brake(
      JerkChain chain, double excess, double a, double most, double j, int sign) {
    double back = (a + Math.sqrt(a * a + 2 * j * excess)) / j;
    double full = (a + most) / j;
    if (back <= full) {
      chain.add(-sign * j, back);
      return;
    }
    chain.add(-sign * j, full);
    chain.add(0, (excess + full * (a - most) / 2) / most);
  }
}
