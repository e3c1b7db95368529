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

  ContactPatch patch(double friction, double maxPressure, double maxPeakPressure) {
    Vec3 n = normal.unit();
    Vec3 along = Math.abs(n.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1);
    return new ContactPatch(
        name,
        new Pose(position, Quaternion.ofAxes(n, along)),
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
