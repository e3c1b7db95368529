package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Optional;

/**
 * A joint and the link that it moves. The joint's frame is that of the link; at joint value 0 it
 * stands at {@code origin} in the frame of the joint before.
 *
 * @param name as the arm's maker calls it
 * @param kind how it moves
 * @param origin pose of the joint's frame, at value 0, in the frame before (position in m)
 * @param axis direction of the axis in the joint's frame, scaled to length 1
 * @param limits what it may do
 * @param body mass properties of the link, in the joint's frame
 * @param mimic the joint that it follows, if it has no drive of its own
 */
public record Joint(
    String name,
    JointKind kind,
    Pose origin,
    Vec3 axis,
    JointLimits limits,
    LinkBody body,
    Optional<Mimic> mimic) {
  /** Scales the axis; refuses one without direction. */
  public Joint {
    if (!(axis.norm() > 0)) {
      throw new IllegalArgumentException("axis of joint " + name + " must not be zero");
    }
    axis = axis.unit();
  }

  /** A joint with a drive of its own. */
  public static Joint driven(
      String name, JointKind kind, Pose origin, Vec3 axis, JointLimits limits, LinkBody body) {
    return new Joint(name, kind, origin, axis, limits, body, Optional.empty());
  }
}
