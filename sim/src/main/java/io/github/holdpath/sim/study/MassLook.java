package io.github.holdpath.sim.study;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.surface.Material;
import io.github.holdpath.sim.surface.Materials;
import java.util.Locale;
import java.util.Optional;

/** Whether a part's mass fits the size of its shape and the material that it names. */
final class MassLook {
  /** A body of the named material is not heavier than solid; the rest is rounding of sizes. */
  private static final double HEAVIER = 1.15;

  /** Below this part of the solid a shape is an outline or a slip (common practice, no source). */
  private static final double LIGHTER = 0.2;

  private MassLook() {}

  /** A warning, if the mass is far from the named material's; packages are left alone. */
  static Optional<String> warning(Scene.Part part) {
    if (part.shape().isEmpty() || part.material().isBlank()) {
      return Optional.empty();
    }
    Optional<Material> named = Materials.load().named(part.material()).filter(m -> !m.wraps());
    if (named.isEmpty()) {
      return Optional.empty();
    }
    Material material = named.get();
    double density = part.body().mass() / part.shape().get().volume();
    boolean heavy = density > HEAVIER * material.mostDensity();
    boolean light = density < LIGHTER * material.leastDensity();
    if (!heavy && !light) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "The part's mass over its %s is %.0f kg/m^3, but %s has %.0f to %.0f (%s): %s; check"
                + " part/mass and the shape's size.",
            part.shape().get().label(),
            density,
            material.name(),
            material.leastDensity(),
            material.mostDensity(),
            material.source(),
            heavy ? "it is heavier than solid" : "most of the shape would be hollow"));
  }
}
