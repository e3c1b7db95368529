package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Kernels;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;

/** Motion of one frame of a rigid body from that of another. A workspace; allocates nothing. */
public final class FlangeToGrip {
  private final double[] offset;
  private final double[] turn = new double[4];
  private final double[] r = new double[9];
  private final double[] rotation = new double[4];
  private final double[] turned = new double[4];
  private final double[] d = new double[3];
  private final double[] w = new double[3];
  private final double[] alpha = new double[3];
  private final double[] sum = new double[3];
  private final double[] jerk = new double[3];
  private final ThirdOrder thirdOrder = new ThirdOrder();

  /**
   * From frame F to frame T.
   *
   * @param pose {@code X_FT}
   */
  public FlangeToGrip(Pose pose) {
    offset = FrameMotion.array(pose.position());
    turn[0] = pose.rotation().w();
    turn[1] = pose.rotation().x();
    turn[2] = pose.rotation().y();
    turn[3] = pose.rotation().z();
  }

  /**
   * Turns the motion of F into that of T (theory, eq. 8.1 and 8.2).
   *
   * @param state flat motion state, overwritten
   */
  public void apply(double[] state) {
    System.arraycopy(state, MotionState.ROTATION, rotation, 0, 4);
    Kernels.rotationMatrix(rotation[0], rotation[1], rotation[2], rotation[3], r);
    Flat.times(r, offset, d);
    Flat.quaternionTimes(rotation, turn, turned);
    System.arraycopy(turned, 0, state, MotionState.ROTATION, 4);
    System.arraycopy(state, MotionState.ANGULAR_VELOCITY, w, 0, 3);
    System.arraycopy(state, MotionState.ANGULAR_ACCELERATION, alpha, 0, 3);
    add(d, state, MotionState.POSITION);
    Flat.cross(w, d, sum);
    add(sum, state, MotionState.VELOCITY);
    Flat.cross(alpha, d, sum);
    Flat.addDoubleCross(w, w, d, sum);
    add(sum, state, MotionState.ACCELERATION);
  }

  /**
   * Turns third derivatives of F into those of T (theory, eq. 5.71); after {@link #apply} of the
   * same instant.
   *
   * @param third jerk of the origin and second derivative of the angular velocity, overwritten
   */
  public void applyThird(double[] third) {
    System.arraycopy(third, 3, sum, 0, 3);
    System.arraycopy(third, 0, jerk, 0, 3);
    thirdOrder.carry(w, alpha, sum, d, jerk);
    System.arraycopy(jerk, 0, third, 0, 3);
  }

  private static void add(double[] x, double[] state, int at) {
    for (int i = 0; i < 3; i++) {
      state[at + i] += x[i];
    }
  }
}
