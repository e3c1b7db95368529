package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Builds the chain of a robot whose axes are those of its base. */
final class LevelAxes {
  private final List<Joint> joints = new ArrayList<>();
  private Pose before;

  /**
   * Begins at a base.
   *
   * @param base {@code X_WB}
   */
  LevelAxes(Pose base) {
    before = base;
  }

  /** Adds a joint some way from the one before, without mass. */
  void add(RobotJoint joint, Vec3 offset, Vec3 axis) {
    Pose origin = before.times(new Pose(offset, Quaternion.IDENTITY));
    joints.add(
        Joint.driven(joint.name(), joint.kind(), origin, axis, joint.limits(), LinkBody.NONE));
    before = Pose.IDENTITY;
  }

  /** The workspace of all that was added. */
  ChainMotion motion(Pose mount) {
    return new ChainMotion(new Chain(joints, before.times(mount)));
  }

  /** A joint that turns, with or without stops. */
  static RobotJoint turning(String name, JointLimits limits) {
    boolean endless = Double.isInfinite(limits.upper() - limits.lower());
    return new RobotJoint(name, endless ? JointKind.CONTINUOUS : JointKind.REVOLUTE, limits);
  }

  /** Refuses a rated payload that is none. */
  static void checkPayload(OptionalDouble payload) {
    if (payload.isPresent()
        && !(payload.getAsDouble() > 0 && Double.isFinite(payload.getAsDouble()))) {
      throw new IllegalArgumentException(
          "ratedPayload must be positive, but was " + payload.getAsDouble());
    }
  }

  /** Refuses a length that is none. */
  static void checkLength(double length, String name) {
    if (!(length > 0) || !Double.isFinite(length)) {
      throw new IllegalArgumentException(name + " must be positive, but was " + length);
    }
  }
}
