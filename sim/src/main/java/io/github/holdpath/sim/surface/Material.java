package io.github.holdpath.sim.surface;

import java.util.List;

/**
 * What is known of a material.
 *
 * @param name of the material
 * @param otherNames by which it is called too, as the number of a steel
 * @param leastDensity kg/m^3
 * @param mostDensity kg/m^3
 * @param magnetic whether a magnet holds it
 * @param wraps whether things made of it are packages, whose filling makes their mass
 * @param source where the densities come from, in words
 */
public record Material(
    String name,
    List<String> otherNames,
    double leastDensity,
    double mostDensity,
    boolean magnetic,
    boolean wraps,
    String source) {
  /** Copies the names; refuses densities that are none. */
  public Material {
    otherNames = List.copyOf(otherNames);
    if (!(leastDensity > 0 && leastDensity <= mostDensity) || !Double.isFinite(mostDensity)) {
      throw new IllegalArgumentException(
          "no range of density: " + leastDensity + " to " + mostDensity);
    }
  }
}
