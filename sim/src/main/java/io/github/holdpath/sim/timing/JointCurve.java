package io.github.holdpath.sim.timing;

/**
 * A path in the space of joints, by a parameter s from 0 to {@link #length}. Joint positions are
 * rad or m, each joint in its own unit.
 */
public interface JointCurve {
  /** How many joints there are. */
  int joints();

  /** Where the parameter ends, at least 0. */
  double length();

  /** How many pieces there are within which the second derivative is smooth, at least 1. */
  int pieces();

  /**
   * Where a piece begins.
   *
   * @param piece 0 to {@code pieces() - 1}; piece 0 begins at 0
   */
  double start(int piece);

  /**
   * Writes position and derivatives at a place. Allocates nothing.
   *
   * @param piece the piece to which the place belongs
   * @param s the place, within the piece
   * @param q receives the positions
   * @param dq receives dq/ds
   * @param ddq receives d2q/ds2
   */
  void at(int piece, double s, double[] q, double[] dq, double[] ddq);

  /**
   * Writes the third derivative at a place, if the curve knows it; where pieces meet it may jump.
   * Allocates nothing.
   *
   * @param piece the piece to which the place belongs
   * @param s the place, within the piece
   * @param dddq receives d3q/ds3
   * @return whether it was written; where not, who needs it takes differences of the second
   */
  default boolean third(int piece, double s, double[] dddq) {
    return false;
  }
}
