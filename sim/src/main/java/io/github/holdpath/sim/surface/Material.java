package io.github.holdpath.sim.surface;

/**
 * What is known of a material.
 *
 * @param name of the material
 * @param leastDensity kg/m^3
 * @param mostDensity kg/m^3
 * @param magnetic whether a magnet holds it
 * @param wraps whether things made of it are packages, whose filling makes their mass
 * @param source where the densities come from, in words
 */
public record Material(
    String name,
    double leastDensity,
    double mostDensity,
    boolean magnetic,
    boolean wraps,
    String source) {
  /** Refuses densities that are none. */
  public Material {
    if (!(leastDensity > 0 && leastDensity <= mostDensity) || !Double.isFinite(mostDensity)) {
      throw new IllegalArgumentException(
          "no range of density: " + leastDensity + " to " + mostDensity);
    }
  }
}
