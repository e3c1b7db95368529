package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A robot of any kind: its joints, where they put the flange, and which joint values put the flange
 * in a pose. Flange poses are in the world, {@code X_WF}.
 *
 * <p>Nothing here knows of collisions, or of what the robot's own controller permits.
 */
public sealed interface Robot permits Gantry, Scara, Delta, SerialArm {
  /** Flange of a robot whose tool hangs: its z axis, out of the flange, points down. */
  Pose HANGING = new Pose(Vec3.ZERO, Quaternion.ofAxisAngle(new Vec3(1, 0, 0), Math.PI));

  /** Joints with a drive of their own: the order of every array of joint values. */
  List<RobotJoint> joints();

  /** Pose of the base in the world, {@code X_WB}. */
  Pose base();

  /** Mass that the flange may carry by the maker's data, kg; empty if not known. */
  OptionalDouble ratedPayload();

  /**
   * A length of the robot's size, m, by which lengths and angles are weighed against each other in
   * singular values and shortest steps (theory, eq. 8.11).
   */
  double length();

  /** A new workspace for the flange's motion in the world. */
  RobotMotion motion();

  /**
   * Joint values that put the flange in a pose, one set per branch, whatever the joint limits.
   *
   * @param flange {@code X_WF}
   */
  Reach inverse(Pose flange);

  /**
   * Where joint values put the flange, {@code X_WF}; empty where they fit no pose.
   *
   * @param q joint values, rad or m
   */
  default Optional<Pose> flangeAt(double... q) {
    RobotMotion motion = motion();
    return motion.moveTo(q) ? Optional.of(motion.flangePose()) : Optional.empty();
  }

  /**
   * Its figure at joint values, in the world; empty where they fit no pose.
   *
   * @param q joint values, rad or m
   */
  Optional<RobotFigure> figure(double... q);
}
