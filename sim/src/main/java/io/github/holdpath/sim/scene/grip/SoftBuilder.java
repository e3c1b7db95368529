package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.SoftGrip;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds grips with compliant fingers. */
final class SoftBuilder {
  private SoftBuilder() {}

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  static Optional<SoftGrip> build(Values grip, GripContext context) {
    int before = context.faults().count();
    Optional<Clamping> clamping = Clamping.read(grip, context);
    clamping.ifPresent(c -> checkMost(grip, c.force(), context));
    context.notes().add(grip, "maxForce", Scene.Origin.NOT_STATED);
    Optional<Values> fingers = grip.group("fingers");
    if (fingers.isEmpty()) {
      return Optional.empty();
    }
    ReachRule.check(grip, fingers.get(), "diameter", context);
    PatchStiffness stiffness = LedgeBuilder.stiffness(fingers.get(), context.notes());
    OptionalDouble count = fingers.get().number("count");
    List<Ledge> ledges =
        LedgeBuilder.build(
            grip, fingers.get(), stiffness, CentricBuilder.names("finger ", count), context);
    OptionalDouble diameter = fingers.get().number("diameter");
    Optional<Amount> size = fingers.get().amount("size");
    if (context.faults().count() > before
        || clamping.isEmpty()
        || count.isEmpty()
        || diameter.isEmpty()
        || size.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SoftGrip(
            (int) count.getAsDouble(),
            diameter.getAsDouble(),
            size.get().get(0),
            size.get().get(1),
            clamping.get().mechanism(),
            clamping.get().force(),
            grip.number("maxForce").orElse(Double.POSITIVE_INFINITY),
            clamping.get().friction(),
            stiffness,
            context.damage("maxPressure"),
            context.damage("maxPeakPressure"),
            ledges));
  }

  private static void checkMost(Values grip, double force, GripContext context) {
    OptionalDouble most = grip.number("maxForce");
    if (most.isPresent() && force > most.getAsDouble()) {
      context
          .faults()
          .add(
              grip.place("maxForce"),
              "is below the "
                  + (float) force
                  + " N with which each finger presses already at rest; put less force, or what the"
                  + " part bears");
    }
  }
}
