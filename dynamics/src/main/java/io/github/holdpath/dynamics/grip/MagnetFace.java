package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * One pole face of a magnet in the plane z = 0 of the grip frame, looking along z.
 *
 * @param name as shown to the user
 * @param position of its middle, grip frame, m
 * @param shape a disc, or a rectangle with its sides along x and y of the grip frame
 * @param pull on this part, N
 * @param stiffness of the face
 */
public record MagnetFace(
    String name, Vec3 position, PatchShape shape, double pull, PatchStiffness stiffness) {
  /** Refuses shapes that are no faces. */
  public MagnetFace {
    if (!(shape instanceof PatchShape.Disc || shape instanceof PatchShape.Rectangle)) {
      throw new IllegalArgumentException(
          "a magnet's face is a disc or a rectangle, but was a " + shape.label());
    }
  }
}
