package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import java.util.OptionalDouble;

/** Reads the friction between grip and part, which the result names as assumed unless told. */
final class FrictionInput {
  private FrictionInput() {}

  /**
   * Friction coefficient.
   *
   * @param owner object with the field {@code friction}
   * @return mu, dimensionless; empty if a fault was noted
   */
  static OptionalDouble read(Values owner, GripContext context) {
    context.notes().add(owner, "friction", Scene.Origin.ASSUMED);
    return owner.number("friction");
  }
}
