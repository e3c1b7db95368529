package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * One suction cup; its lip lies in the plane z = 0 of the grip frame, its axis along z.
 *
 * @param name as shown to the user
 * @param position of the lip's centre, grip frame, m
 * @param length of the lip along x, m
 * @param width of the lip along y, m; an oval lip has two half circles at its ends
 * @param pull force of the vacuum, N
 * @param stiffness of the cup
 */
public record Cup(
    String name,
    Vec3 position,
    double length,
    double width,
    double pull,
    PatchStiffness stiffness) {
  /** A round cup, diameter in m, pull in N. */
  public Cup(String name, Vec3 position, double diameter, double pull, PatchStiffness stiffness) {
    this(name, position, diameter, diameter, pull, stiffness);
  }

  /**
   * Diameter of the circle by which the lip's friction, peeling and crushing are judged, m: that of
   * a round lip, and the largest inside an oval one, which grips no worse (theory, section 2).
   */
  public double diameter() {
    return Math.min(length, width);
  }

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
