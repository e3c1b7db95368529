package io.github.holdpath.sim.robot;

import java.util.Arrays;

/** One set of joint values that puts the flange in a pose. */
public final class Posture {
  private final String branch;
  private final double[] values;

  /**
   * Takes a copy of the values.
   *
   * @param branch words for which of several postures it is, as "elbow left"
   * @param values joint values, rad or m, in the order of {@link Robot#joints()}
   */
  public Posture(String branch, double... values) {
    this.branch = branch;
    this.values = values.clone();
  }

  /** Words for which of several postures it is; empty where a robot has one only. */
  public String branch() {
    return branch;
  }

  /** Joint values, rad or m, in the order of {@link Robot#joints()}; a copy. */
  public double[] values() {
    return values.clone();
  }

  @Override
  public String toString() {
    return branch + " " + Arrays.toString(values);
  }
}
