package io.github.holdpath.sim.motion;

/** A piece that knows the joints of the robot that makes it. */
public interface JointedPiece extends MotionPiece {
  /**
   * Joint values at a time inside this piece, ends included.
   *
   * @param time s
   * @param q joint values, rad or m, overwritten
   * @param qd their rates, overwritten
   * @param qdd their second rates, overwritten
   */
  void joints(double time, double[] q, double[] qd, double[] qdd);

  /**
   * Whether its law runs by the way of the grip frame, as in a chain of blended moves, not by a
   * parameter of the joints.
   */
  default boolean alongPath() {
    return false;
  }
}
