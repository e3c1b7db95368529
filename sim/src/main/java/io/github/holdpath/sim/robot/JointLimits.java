package io.github.holdpath.sim.robot;

/**
 * What a joint may do. A bound that does not exist is infinite.
 *
 * @param lower least joint value, rad or m
 * @param upper greatest joint value, rad or m, not below {@code lower}
 * @param speed greatest speed either way, rad/s or m/s, positive
 * @param acceleration greatest acceleration either way, rad/s^2 or m/s^2, positive
 * @param effort greatest torque or force either way, N m or N, positive
 */
public record JointLimits(
    double lower, double upper, double speed, double acceleration, double effort) {
  /** No bound at all. */
  public static final JointLimits NONE =
      new JointLimits(
          Double.NEGATIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY);

  /** Refuses bounds that leave no room. */
  public JointLimits {
    if (!(lower <= upper)) {
      throw new IllegalArgumentException(
          "lower must not be above upper, but they are " + lower + " and " + upper);
    }
    if (!(speed > 0)) {
      throw new IllegalArgumentException("speed must be positive, but was " + speed);
    }
    if (!(acceleration > 0)) {
      throw new IllegalArgumentException("acceleration must be positive, but was " + acceleration);
    }
    if (!(effort > 0)) {
      throw new IllegalArgumentException("effort must be positive, but was " + effort);
    }
  }

  /**
   * Without a bound on the acceleration.
   *
   * @param lower least joint value, rad or m
   * @param upper greatest joint value, rad or m
   * @param speed greatest speed, rad/s or m/s
   * @param effort greatest torque or force, N m or N
   */
  public JointLimits(double lower, double upper, double speed, double effort) {
    this(lower, upper, speed, Double.POSITIVE_INFINITY, effort);
  }

  /**
   * The same with another bound on the acceleration, which URDF files do not carry.
   *
   * @param bound rad/s^2 or m/s^2, positive
   */
  public JointLimits withAcceleration(double bound) {
    return new JointLimits(lower, upper, speed, bound, effort);
  }

  /** Whether a joint value is within lower and upper. */
  public boolean allow(double value) {
    return value >= lower && value <= upper;
  }

  /**
   * How far a joint value is from the nearer stop, as a share of half the range: 1 in the middle
   * and where a stop is missing, 0 at a stop, negative beyond it.
   */
  public double room(double value) {
    if (Double.isInfinite(upper - lower)) {
      return allow(value) ? 1 : -1;
    }
    double half = (upper - lower) / 2;
    return half > 0 ? Math.min(value - lower, upper - value) / half : allow(value) ? 0 : -1;
  }

  /** How far a joint value is beyond a stop, rad or m; negative or 0 inside. */
  double beyond(double value) {
    return Math.max(lower - value, value - upper);
  }

  /** The angle, of all that are whole turns from this one, that is nearest the range's middle. */
  double turnedIn(double angle) {
    double middle = Double.isInfinite(upper - lower) ? 0 : (lower + upper) / 2;
    return angle + 2 * Math.PI * Math.rint((middle - angle) / (2 * Math.PI));
  }
}
