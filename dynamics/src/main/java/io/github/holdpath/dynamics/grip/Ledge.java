package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * Form fit: a rectangular face that stands in the part's way and can only push.
 *
 * @param name as shown to the user
 * @param position of its centre in the grip frame, m
 * @param normal direction in which it pushes on the part, grip frame, not zero
 * @param sizeX side along the grip frame's x laid into the face (its z where the face looks along
 *     x), m
 * @param sizeY the other side, m
 * @param normalStiffness N/m
 */
public record Ledge(
    String name, Vec3 position, Vec3 normal, double sizeX, double sizeY, double normalStiffness) {

  /**
   * Orientation of a patch that is given by its normal alone: patch x is the grip frame's x laid
   * into the face, or its z where the face looks along x (within 26 degrees).
   *
   * @param normal into the part, grip frame, not zero
   */
  public static Quaternion facing(Vec3 normal) {
    Vec3 n = normal.unit();
    return Quaternion.ofAxes(n, Math.abs(n.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1));
  }

  ContactPatch patch(double friction, double maxPressure, double maxPeakPressure) {
    return new ContactPatch(
        name,
        new Pose(position, facing(normal)),
        new PatchShape.Rectangle(sizeX, sizeY),
        friction,
        0,
        0,
        PatchStiffness.ofNormal(normalStiffness),
        maxPressure,
        maxPeakPressure,
        true);
  }
}
