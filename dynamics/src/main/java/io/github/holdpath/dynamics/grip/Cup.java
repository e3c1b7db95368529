package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * One suction cup; its lip lies in the plane z = 0 of the grip frame, its axis along z.
 *
 * @param name as shown to the user
 * @param position of the lip's centre, grip frame, m
 * @param diameter effective diameter of the lip, m
 * @param pull force of the vacuum, N
 * @param stiffness of the cup
 */
public record Cup(
    String name, Vec3 position, double diameter, double pull, PatchStiffness stiffness) {
  /**
   * Pull of a vacuum on a lip.
   *
   * @param vacuum below the surrounding pressure, Pa
   * @param diameter effective diameter of the lip, m
   * @param areaRatio part of the lip's area that pulls, dimensionless
   * @return pressure times area, N
   */
  public static double pull(double vacuum, double diameter, double areaRatio) {
    return vacuum * areaRatio * Math.PI * diameter * diameter / 4;
  }
}
