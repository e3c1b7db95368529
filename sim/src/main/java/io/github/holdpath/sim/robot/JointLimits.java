package io.github.holdpath.sim.robot;

/**
 * What a joint may do. A bound that does not exist is infinite.
 *
 * @param lower least joint value, rad or m
 * @param upper greatest joint value, rad or m, not below {@code lower}
 * @param speed greatest speed either way, rad/s or m/s, positive
 * @param effort greatest torque or force either way, N m or N, positive
 */
public record JointLimits(double lower, double upper, double speed, double effort) {
  /** No bound at all. */
  public static final JointLimits NONE =
      new JointLimits(
          Double.NEGATIVE_INFINITY,
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
    if (!(effort > 0)) {
      throw new IllegalArgumentException("effort must be positive, but was " + effort);
    }
  }

  /** Whether a joint value is within lower and upper. */
  public boolean allow(double value) {
    return value >= lower && value <= upper;
  }
}
