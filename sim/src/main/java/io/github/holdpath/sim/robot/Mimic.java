package io.github.holdpath.sim.robot;

/**
 * A joint without a drive of its own: its value is {@code multiplier * leader + offset}.
 *
 * @param leader name of the joint that it follows
 * @param multiplier own value by the leader's, dimensionless between joints of one kind, not zero
 * @param offset own value where the leader is at zero, rad or m
 */
public record Mimic(String leader, double multiplier, double offset) {
  /** Refuses a joint that would not move, and numbers that are not finite. */
  public Mimic {
    if (!Double.isFinite(multiplier) || multiplier == 0) {
      throw new IllegalArgumentException(
          "multiplier must be finite and not zero, but was " + multiplier);
    }
    if (!Double.isFinite(offset)) {
      throw new IllegalArgumentException("offset must be finite, but was " + offset);
    }
  }
}
