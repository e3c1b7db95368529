package io.github.holdpath.dynamics.load;

import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * What the air does to a moved part: drag at the centre of mass against its velocity, and the air
 * that a flat part carries along when it moves broadside.
 *
 * @param density of the air, kg/m^3, not negative
 * @param dragArea drag coefficient times area, m^2, not negative
 * @param addedMass air carried along, kg, not negative
 * @param normal unit normal of the flat part, grip frame
 */
public record AirLoad(double density, double dragArea, double addedMass, Vec3 normal) {
  /** No air. */
  public static final AirLoad NONE = new AirLoad(0, 0, 0, new Vec3(0, 0, 1));

  /** Refuses negative numbers; scales the normal to length 1. */
  public AirLoad {
    notNegative("density", density);
    notNegative("dragArea", dragArea);
    notNegative("addedMass", addedMass);
    normal = normal.unit();
  }

  private static void notNegative(String name, double value) {
    if (!(value >= 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must not be negative, but was " + value);
    }
  }
}
