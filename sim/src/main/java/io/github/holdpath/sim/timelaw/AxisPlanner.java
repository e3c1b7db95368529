package io.github.holdpath.sim.timelaw;

/**
 * Plans and samples fastest moves of one axis (theory, section 5.7) without making objects: one
 * planner holds one move at a time. Not for several threads at once. Units are those of the limits.
 */
public final class AxisPlanner {
  /** Part of the range of a limit by which rounding may exceed it. */
  private static final double LIMIT = 1e-11;

  private final JerkChain chain = new JerkChain();
  private final FastestMove fastest = new FastestMove();
  private double recovery;

  /**
   * Plans the fastest move; all numbers finite.
   *
   * @param p0 position at the start
   * @param v0 speed at the start, 1/s; may be beyond the limits
   * @param a0 acceleration at the start, 1/s^2; may be beyond the limits
   * @param p1 position at the end
   * @param v1 speed at the end, 1/s
   * @param a1 acceleration at the end, 1/s^2
   * @param limits of the axis
   * @throws IllegalArgumentException if the end cannot be reached within the limits, or the fastest
   *     recovery runs past the opposite limit of speed
   */
  public void plan(
      double p0, double v0, double a0, double p1, double v1, double a1, AxisLimits limits) {
    chain.begin(p0, v0, a0);
    recovery = 0;
    prepare(chain, p1, v1, a1, limits);
    recovery = chain.duration();
    double from = chain.position();
    fastest.plan(
        chain,
        chain.speed(),
        chain.acceleration(),
        v1,
        a1,
        p1 - from,
        scale(from, p1, limits),
        limits);
  }

  /** Size of positions that rounding is measured by. */
  static double scale(double from, double to, AxisLimits l) {
    double speeds = l.maxSpeed() - l.minSpeed();
    double accelerations = l.maxAcceleration() - l.minAcceleration();
    return speeds * (speeds / accelerations + accelerations / l.jerk())
        + Math.abs(from)
        + Math.abs(to);
  }

  /** Checks the end, and recovers from a start beyond the limits. */
  static void prepare(JerkChain chain, double p1, double v1, double a1, AxisLimits limits) {
    if (!inside(v1, a1, limits, -1)) {
      throw new IllegalArgumentException(
          "the end "
              + new AxisState(p1, v1, a1)
              + " cannot be reached within "
              + limits
              + "; choose it nearer to rest");
    }
    if (!inside(chain.speed(), chain.acceleration(), limits, 1)) {
      Recovery.add(chain, limits);
      if (!inside(chain.speed(), chain.acceleration(), limits, 1)) {
        throw new IllegalArgumentException(
            "the start recovers past the opposite limit of speed in "
                + limits
                + "; brake more gently first");
      }
    }
  }

  /** Whether a state keeps the limits and can go on to do so, or has come so where backwards. */
  private static boolean inside(double v, double a, AxisLimits l, int direction) {
    double slack = LIMIT * (l.maxAcceleration() - l.minAcceleration());
    double slackSpeed = LIMIT * (l.maxSpeed() - l.minSpeed());
    double level = v + direction * a * Math.abs(a) / (2 * l.jerk());
    return Math.max(v, level) <= l.maxSpeed() + slackSpeed
        && Math.min(v, level) >= l.minSpeed() - slackSpeed
        && a <= l.maxAcceleration() + slack
        && a >= l.minAcceleration() - slack;
  }

  /** Time from state to state, s. */
  public double duration() {
    return chain.duration();
  }

  /** Time until a start beyond the limits is back inside, s; 0 for a start inside. */
  public double recovery() {
    return recovery;
  }

  /**
   * Samples the move.
   *
   * @param time s; clamped to the move
   * @param out gets position, speed, acceleration and jerk
   */
  public void at(double time, double[] out) {
    chain.at(time, out);
  }

  /** The move as a value of its own. */
  public AxisMove move() {
    return new AxisMove(chain.phases(), recovery);
  }
}
