package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;

/**
 * Motion of a robot's flange from that of its joints. A workspace: make one per thread, set a
 * state, then read; nothing allocates but {@link #flangePose()}. What is read is seen from and in
 * the axes of the frame in which the robot's base was given: the world for {@link Robot#motion()},
 * the base for a {@link Chain} alone.
 */
public sealed interface RobotMotion permits ChainMotion, DeltaMotion {
  /** Number of joints with a drive of their own: the length of every array of joint values. */
  int drives();

  /**
   * Sets the robot at rest.
   *
   * @param q joint values, rad or m
   * @return false if no place of the flange fits them; then nothing may be read
   */
  boolean moveTo(double[] q);

  /**
   * Sets the robot in motion.
   *
   * @param q joint values, rad or m
   * @param qd their rates, rad/s or m/s
   * @param qdd their second rates, rad/s^2 or m/s^2
   * @return false if no motion of the flange fits them, as where the rods of a delta do not meet;
   *     then nothing may be read
   */
  boolean move(double[] q, double[] qd, double[] qdd);

  /** Pose of the flange; allocates. */
  Pose flangePose();

  /**
   * Motion of the flange.
   *
   * @param state flat form of {@link MotionState}, overwritten
   */
  void flange(double[] state);

  /**
   * Third order of the flange's motion where the third rates of all joints are 0: the jerk of its
   * origin and the second derivative of its angular velocity (theory, eq. 5.71 to 5.74).
   *
   * @param out six numbers, m/s^3 and rad/s^3, overwritten
   */
  void third(double[] out);

  /**
   * Jacobian J of the flange: {@code (v, omega) = J q'}.
   *
   * @param jacobian row-major, 6 rows by drives, overwritten; m/s and rad/s by unit of joint speed
   */
  void jacobian(double[] jacobian);
}
