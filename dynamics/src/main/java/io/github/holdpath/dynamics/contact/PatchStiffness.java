package io.github.holdpath.dynamics.contact;

/**
 * Stiffness of a contact patch.
 *
 * @param normal along patch z, N/m, positive
 * @param shear along patch x and y, N/m, positive
 */
public record PatchStiffness(double normal, double shear) {
  /** Shear per normal stiffness where only one is known: {@code 2 (1-nu)/(2-nu)}, nu = 1/2. */
  public static final double SHEAR_PER_NORMAL = 2.0 / 3.0;

  /** One for all patches where none is given: only ratios count for the shares. */
  public static final PatchStiffness ALIKE = ofNormal(1);

  /** Refuses numbers that are not positive. */
  public PatchStiffness {
    if (!(normal > 0) || !(shear > 0) || Double.isInfinite(normal) || Double.isInfinite(shear)) {
      throw new IllegalArgumentException(
          "stiffness must be positive, but was " + normal + " and " + shear);
    }
  }

  /**
   * Shear stiffness by Mindlin's ratio for a material that keeps its volume.
   *
   * @param normal N/m
   * @see "Mindlin: Compliance of elastic bodies in contact, Journal of Applied Mechanics 16, 1949"
   */
  public static PatchStiffness ofNormal(double normal) {
    return new PatchStiffness(normal, SHEAR_PER_NORMAL * normal);
  }
}
