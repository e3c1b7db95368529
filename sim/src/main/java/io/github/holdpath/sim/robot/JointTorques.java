package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Arrays;
import java.util.List;

/**
 * Torques (of sliding joints: forces) that the drives of a chain must give for a motion, by the
 * recursive Newton-Euler method: outwards the motion of every link, inwards the forces that it
 * takes (theory, eq. 8.7 to 8.10). Links are rigid; friction and the inertia of motors and gears
 * are not in it, and may be the larger part of a small arm's torque.
 *
 * <p>A workspace: make one per thread; nothing allocates after that.
 *
 * @see "Luh, Walker, Paul: On-line computational scheme for mechanical manipulators, ASME Journal
 *     of Dynamic Systems, Measurement, and Control 102, 1980; in the form of Craig: Introduction to
 *     Robotics, 3rd ed. 2005, section 6.5 (both from memory)"
 */
public final class JointTorques {
  private static final double[] WEIGHTLESS = new double[3];

  private final ChainMotion motion;
  private final int joints;
  private final Body[] bodies;
  private final Body payload;
  private final double[] gravity;
  private final double[] noLoad = new double[6];
  private final double[] zero;
  private final double[] unit;
  private final double[] one;

  private final double[] force = new double[3];
  private final double[] moment = new double[3];
  private final double[] lever = new double[3];
  private final double[] inertial = new double[3];
  private final double[] angular = new double[3];
  private final double[] local = new double[3];
  private final double[] turned = new double[3];

  /**
   * For a chain with a payload that is rigidly on its flange.
   *
   * @param chain the arm
   * @param gravity acceleration of free fall in the axes of the base, m/s^2; (0, 0, -9.81) for a
   *     base on the floor with z up
   * @param payload all that the flange carries, in the flange's frame; {@link LinkBody#NONE} if
   *     nothing
   */
  public JointTorques(Chain chain, Vec3 gravity, LinkBody payload) {
    List<Joint> list = chain.joints();
    motion = new ChainMotion(chain);
    joints = list.size();
    bodies = list.stream().map(j -> new Body(j.body())).toArray(Body[]::new);
    this.payload = new Body(payload);
    this.gravity = FrameMotion.array(gravity);
    zero = new double[motion.drives()];
    unit = new double[motion.drives()];
    one = new double[motion.drives()];
  }

  /**
   * Torques for a motion of the joints, no other load at the flange than the payload.
   *
   * @param q joint values, rad or m
   * @param qd their rates, rad/s or m/s
   * @param qdd their second rates, rad/s^2 or m/s^2
   * @param torque of each drive on the link after it, N m or N, overwritten
   */
  public void of(double[] q, double[] qd, double[] qdd, double[] torque) {
    of(q, qd, qdd, noLoad, torque);
  }

  /**
   * Torques for a motion of the joints while the flange also pushes on something.
   *
   * @param q joint values, rad or m
   * @param qd their rates, rad/s or m/s
   * @param qdd their second rates, rad/s^2 or m/s^2
   * @param load force (N) and moment (N m) of the flange on what it pushes, beside the payload; six
   *     numbers, about the flange's origin, in its axes
   * @param torque of each drive on the link after it, N m or N, overwritten
   */
  public void of(double[] q, double[] qd, double[] qdd, double[] load, double[] torque) {
    run(q, qd, qdd, gravity, load, torque);
  }

  /**
   * Joint-space inertia matrix H, payload included: torque for unit acceleration of one drive at a
   * time, without weight and speed.
   *
   * @param q joint values, rad or m
   * @param matrix row-major, drives by drives, overwritten; kg m^2, kg m or kg by kinds of joint
   * @see "Walker, Orin: Efficient dynamic computer simulation of robotic mechanisms, ASME Journal
   *     of Dynamic Systems, Measurement, and Control 104, 1982, method 1 (from memory)"
   */
  public void inertia(double[] q, double[] matrix) {
    int n = motion.drives();
    if (matrix.length != n * n) {
      throw new IllegalArgumentException(
          "matrix must have " + n * n + " numbers, but has " + matrix.length);
    }
    for (int c = 0; c < n; c++) {
      unit[c] = 1;
      run(q, zero, unit, WEIGHTLESS, noLoad, one);
      unit[c] = 0;
      for (int r = 0; r < n; r++) {
        matrix[r * n + c] = one[r];
      }
    }
  }

  private void run(
      double[] q, double[] qd, double[] qdd, double[] g, double[] load, double[] torque) {
    if (load.length != 6) {
      throw new IllegalArgumentException("load must be 6 numbers, but were " + load.length);
    }
    if (torque.length != motion.drives()) {
      throw new IllegalArgumentException(
          "torque must have " + motion.drives() + " numbers, but has " + torque.length);
    }
    motion.move(q, qd, qdd);
    Arrays.fill(torque, 0);
    FrameMotion frame = motion.flange();
    System.arraycopy(load, 0, local, 0, 3);
    Flat.times(frame.r, local, force);
    System.arraycopy(load, 3, local, 0, 3);
    Flat.times(frame.r, local, moment);
    bear(frame, payload, g);
    for (int i = joints - 1; i >= 0; i--) {
      FrameMotion inner = motion.frame(i);
      Flat.minus(frame.p, inner.p, lever);
      Flat.addCross(1, lever, force, moment);
      bear(inner, bodies[i], g);
      motion.addEffort(i, Flat.dot(motion.axis(i), motion.turns(i) ? moment : force), torque);
      frame = inner;
    }
  }

  /** Adds what moves and holds up one body to force and moment about its frame's origin. */
  private void bear(FrameMotion frame, Body body, double[] g) {
    Flat.times(frame.r, body.centre, lever);
    Flat.minus(frame.a, g, inertial);
    Flat.addCross(1, frame.alpha, lever, inertial);
    Flat.addDoubleCross(frame.w, frame.w, lever, inertial);
    for (int i = 0; i < 3; i++) {
      inertial[i] *= body.mass;
    }
    Flat.add(1, inertial, force);
    Flat.addCross(1, lever, inertial, moment);

    Flat.timesTransposed(frame.r, frame.w, local);
    Flat.times(body.inertia, local, turned);
    Flat.cross(local, turned, angular);
    Flat.timesTransposed(frame.r, frame.alpha, local);
    Flat.times(body.inertia, local, turned);
    Flat.add(1, turned, angular);
    Flat.times(frame.r, angular, turned);
    Flat.add(1, turned, moment);
  }

  /** Mass properties as arrays. */
  private static final class Body {
    private final double mass;
    private final double[] centre;
    private final double[] inertia;

    Body(LinkBody body) {
      mass = body.mass();
      centre = FrameMotion.array(body.centreOfMass());
      Inertia i = body.inertia();
      inertia =
          new double[] {i.xx(), i.xy(), i.xz(), i.xy(), i.yy(), i.yz(), i.xz(), i.yz(), i.zz()};
    }
  }
}
