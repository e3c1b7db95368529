package io.github.holdpath.sim.robot;

/**
 * Third derivatives along a chain of frames whose joints have third rates of 0 (theory, eq. 5.71 to
 * 5.73). A workspace; allocates nothing.
 */
final class ThirdOrder {
  private final double[] first = new double[3];
  private final double[] second = new double[3];

  /**
   * Adds what an arm that turns with a frame does: {@code w'' x d + 2 w' x (w x d) + w x (w' x d) +
   * w x (w x (w x d))}.
   *
   * @param w angular velocity of the frame
   * @param alpha its derivative
   * @param third its second derivative
   * @param d the arm
   * @param jerk added to
   */
  void carry(double[] w, double[] alpha, double[] third, double[] d, double[] jerk) {
    Flat.cross(w, d, first);
    Flat.addCross(1, third, d, jerk);
    Flat.addCross(2, alpha, first, jerk);
    seconds(w, alpha, d);
    Flat.addCross(1, w, second, jerk);
  }

  /** Derivatives of a direction or arm d that turns with a frame. */
  private void seconds(double[] w, double[] alpha, double[] d) {
    Flat.cross(w, d, first);
    Flat.cross(alpha, d, second);
    Flat.addCross(1, w, first, second);
  }

  /**
   * Adds the turning about an axis: {@code 2 q'' s' + q' s''}.
   *
   * @param axis s, which turns with the frame before
   * @param third second derivative of the angular velocity, added to
   */
  void turn(double[] w, double[] alpha, double[] axis, double qd, double qdd, double[] third) {
    seconds(w, alpha, axis);
    Flat.add(2 * qdd, first, third);
    Flat.add(qd, second, third);
  }

  /** Adds the sliding along an axis besides the arm: {@code 3 q'' s' + 3 q' s''}. */
  void slide(double[] w, double[] alpha, double[] axis, double qd, double qdd, double[] jerk) {
    seconds(w, alpha, axis);
    Flat.add(3 * qdd, first, jerk);
    Flat.add(3 * qd, second, jerk);
  }
}
