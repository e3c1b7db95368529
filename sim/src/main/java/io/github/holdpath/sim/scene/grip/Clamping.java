package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.sim.scene.field.Values;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What every grip that clamps with fingers states in the same fields.
 *
 * @param mechanism how the fingers are driven
 * @param force per finger without a data sheet's safety in it, N
 * @param friction mu, dimensionless
 */
record Clamping(Mechanism mechanism, double force, double friction) {
  /**
   * Reads the fields {@code mechanism}, {@code force}, {@code includesSafety}, {@code friction}.
   *
   * @return empty if one of them is faulty
   */
  static Optional<Clamping> read(Values grip, GripContext context) {
    double safety = grip.number("includesSafety").orElse(1);
    OptionalDouble friction = FrictionInput.read(grip, context);
    SafetyNote.add(context.notes(), grip, "force", safety);
    Optional<Mechanism> mechanism = GripFields.mechanism(grip);
    OptionalDouble force = grip.number("force");
    if (mechanism.isEmpty() || force.isEmpty() || friction.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Clamping(mechanism.get(), force.getAsDouble() * safety, friction.getAsDouble()));
  }
}
