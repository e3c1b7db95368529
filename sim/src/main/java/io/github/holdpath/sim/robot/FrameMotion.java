package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Kernels;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Arrays;

/** Where a frame is and how it moves, seen from and in the axes of the base; overwritten in use. */
final class FrameMotion {
  /** Quaternion (w, x, y, z) of the frame in the base. */
  final double[] q = {1, 0, 0, 0};

  /** The same as a row-major matrix. */
  final double[] r = {1, 0, 0, 0, 1, 0, 0, 0, 1};

  /** Origin, m. */
  final double[] p = new double[3];

  /** Velocity of the origin, m/s. */
  final double[] v = new double[3];

  /** Acceleration of the origin, gravity not in it, m/s^2. */
  final double[] a = new double[3];

  /** Angular velocity, rad/s. */
  final double[] w = new double[3];

  /** Angular acceleration, rad/s^2. */
  final double[] alpha = new double[3];

  private final double[] d = new double[3];

  /** Takes the place of a frame fixed to a moving one (theory, eq. 8.1 and 8.2). */
  void fixedTo(FrameMotion before, FixedPose pose) {
    placedOn(before, pose);
    Flat.copy(before.v, v);
    Flat.copy(before.a, a);
    Flat.copy(before.w, w);
    Flat.copy(before.alpha, alpha);
    carry();
  }

  /** Takes the place of a frame fixed to another (theory, eq. 8.1); its motion stays as it was. */
  void placedOn(FrameMotion before, FixedPose pose) {
    Flat.quaternionTimes(before.q, pose.q, q);
    Kernels.rotationMatrix(q[0], q[1], q[2], q[3], r);
    Flat.times(before.r, pose.p, d);
    Flat.copy(before.p, p);
    Flat.add(1, d, p);
  }

  /** Comes to rest. */
  void halt() {
    Arrays.fill(v, 0);
    Arrays.fill(a, 0);
    Arrays.fill(w, 0);
    Arrays.fill(alpha, 0);
  }

  /** What a shift of the origin by d, which turns with the frame, does to its motion. */
  private void carry() {
    Flat.addCross(1, w, d, v);
    Flat.addCross(1, alpha, d, a);
    Flat.addDoubleCross(w, w, d, a);
  }

  /** Slides along an axis of the base that turns with the frame (theory, eq. 8.4). */
  void slide(double[] axis, double q1, double qd, double qdd) {
    d[0] = 0;
    d[1] = 0;
    d[2] = 0;
    Flat.add(q1, axis, d);
    Flat.add(1, d, p);
    carry();
    Flat.add(qd, axis, v);
    Flat.add(qdd, axis, a);
    Flat.addCross(2 * qd, w, axis, a);
  }

  /**
   * Turns about an axis of the base that turns with the frame before (theory, eq. 8.3).
   *
   * @param turn quaternion of the turn in the frame's own axes
   */
  void turn(double[] axis, double[] turn, double qd, double qdd, double[] scratch) {
    turnTo(turn, scratch);
    Flat.addCross(qd, w, axis, alpha);
    Flat.add(qdd, axis, alpha);
    Flat.add(qd, axis, w);
  }

  /**
   * Turns; its motion stays as it was.
   *
   * @param turn quaternion of the turn in the frame's own axes
   */
  void turnTo(double[] turn, double[] scratch) {
    System.arraycopy(q, 0, scratch, 0, 4);
    Flat.quaternionTimes(scratch, turn, q);
    Kernels.rotationMatrix(q[0], q[1], q[2], q[3], r);
  }

  /** A pose that does not change, as arrays. */
  static final class FixedPose {
    private final double[] q;
    private final double[] p;

    FixedPose(Pose pose) {
      q =
          new double[] {
            pose.rotation().w(), pose.rotation().x(), pose.rotation().y(), pose.rotation().z()
          };
      p = array(pose.position());
    }
  }

  static double[] array(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }
}
