package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Builds grips with two parallel jaws. */
final class JawsBuilder {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);

  private JawsBuilder() {}

  /** Shape of the pads' contact and the direction of its first side. */
  private record Contact(PatchShape shape, Vec3 along) {}

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  static Optional<JawGrip> build(Values grip, GripContext context) {
    int before = context.faults().count();
    double safety = grip.number("includesSafety").orElse(1);
    OptionalDouble friction = FrictionInput.read(grip, context);
    SafetyNote.add(context.notes(), grip, "force", safety);
    Optional<Values> pads = grip.group("pads");
    if (pads.isEmpty()) {
      return Optional.empty();
    }
    PatchStiffness stiffness = LedgeBuilder.stiffness(pads.get(), context.notes());
    List<Ledge> ledges =
        LedgeBuilder.build(grip, pads.get(), stiffness, List.of("pad +y", "pad -y"), context);
    Optional<Contact> contact = contact(pads.get(), context);
    Optional<Mechanism> mechanism = GripFields.mechanism(grip);
    OptionalDouble opening = grip.number("opening");
    OptionalDouble force = grip.number("force");
    if (context.faults().count() > before
        || contact.isEmpty()
        || mechanism.isEmpty()
        || opening.isEmpty()
        || force.isEmpty()
        || friction.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new JawGrip(
            opening.getAsDouble(),
            contact.get().shape(),
            contact.get().along(),
            mechanism.get(),
            force.getAsDouble() * safety,
            friction.getAsDouble(),
            stiffness,
            context.damage("maxPressure"),
            context.damage("maxPeakPressure"),
            ledges));
  }

  private static Optional<Contact> contact(Values pads, GripContext context) {
    Optional<Amount> size = pads.amount("size");
    Optional<String> stated = pads.text("contact");
    boolean unreadable = pads.isThere("contact") && stated.isEmpty();
    if (size.isEmpty() || unreadable || shapeIsFaulty(context)) {
      return Optional.empty();
    }
    double alongX = size.get().get(0);
    double alongZ = size.get().get(1);
    Optional<PartShape> shape = context.shape();
    Contact face = new Contact(new PatchShape.Rectangle(alongX, alongZ), X);
    if (stated.equals(Optional.of("face"))) {
      return Optional.of(face);
    }
    if (shape.isPresent() && shape.get() instanceof PartShape.Cylinder bar && bar.axis() != 1) {
      double side = bar.axis() == 0 ? alongX : alongZ;
      PatchShape line = new PatchShape.Line(Math.min(side, bar.length()));
      return Optional.of(new Contact(line, bar.axis() == 0 ? X : Z));
    }
    if (stated.isPresent()) {
      context
          .faults()
          .add(
              pads.place("contact"),
              "a line needs a part with a cylinder or tube along x or z; give that shape, or write"
                  + " \"face\"");
      return Optional.empty();
    }
    if (shape.isPresent() && shape.get() instanceof PartShape.Sphere) {
      context
          .faults()
          .add(
              pads.place("contact"),
              "flat pads touch a sphere in a point, which cannot hold a turn; for pads shaped to the"
                  + " part write \"contact\": \"face\"");
      return Optional.empty();
    }
    return Optional.of(face);
  }

  private static boolean shapeIsFaulty(GripContext context) {
    return context.shape().isEmpty()
        && context
            .part()
            .filter(p -> Stream.of("box", "cylinder", "tube", "sphere").anyMatch(p::isThere))
            .isPresent();
  }
}
