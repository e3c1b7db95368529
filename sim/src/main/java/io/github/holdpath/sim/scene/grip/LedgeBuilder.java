package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.InputNotes;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Builds stiffness and ledges, which several kinds of grip have. */
final class LedgeBuilder {
  private LedgeBuilder() {}

  /**
   * Stiffness of each cup or pad.
   *
   * @param owner object with the field {@code stiffness}
   * @return {@link PatchStiffness#ALIKE} where the file gives none
   */
  static PatchStiffness stiffness(Values owner, InputNotes notes) {
    Optional<Values> given = owner.group("stiffness");
    if (given.isEmpty() || given.get().number("normal").isEmpty()) {
      return PatchStiffness.ALIKE;
    }
    notes.add(owner, "stiffness", Scene.Origin.ASSUMED);
    double normal = given.get().number("normal").getAsDouble();
    OptionalDouble shear = given.get().number("shear");
    return shear.isPresent()
        ? new PatchStiffness(normal, shear.getAsDouble())
        : PatchStiffness.ofNormal(normal);
  }

  /**
   * Builds the ledges of a grip.
   *
   * @param grip with the field {@code ledges}
   * @param owner object with the stiffness of the cups or pads
   * @param patch stiffness of each cup or pad
   * @param names of the other patches
   */
  static List<Ledge> build(
      Values grip, Values owner, PatchStiffness patch, List<String> names, GripContext context) {
    List<Ledge> ledges = new ArrayList<>();
    Set<String> seen = new HashSet<>(names);
    for (Values v : grip.groups("ledges")) {
      Optional<String> name = v.text("name");
      if (name.isPresent() && !seen.add(name.get())) {
        context
            .faults()
            .add(
                v.place("name"),
                "another patch is called \"" + name.get() + "\" already; give each its own name");
      }
      OptionalDouble normal = stiffness(v, owner, patch, context);
      Optional<Vec3> at = v.vector("at");
      Optional<Vec3> direction = v.vector("normal");
      Optional<Amount> size = v.amount("size");
      if (name.isPresent()
          && at.isPresent()
          && direction.isPresent()
          && size.isPresent()
          && normal.isPresent()) {
        ledges.add(
            new Ledge(
                name.get(),
                at.get(),
                direction.get(),
                size.get().get(0),
                size.get().get(1),
                normal.getAsDouble()));
      }
    }
    return ledges;
  }

  private static OptionalDouble stiffness(
      Values ledge, Values owner, PatchStiffness patch, GripContext context) {
    OptionalDouble number = ledge.number("stiffness");
    if (number.isEmpty()) {
      return number;
    }
    context.notes().add(ledge, "stiffness", Scene.Origin.ASSUMED);
    if (ledge.amount("stiffness").isEmpty()) {
      return OptionalDouble.of(number.getAsDouble() * patch.normal());
    }
    if (!owner.isThere("stiffness")) {
      context
          .faults()
          .add(
              ledge.place("stiffness"),
              "cannot be compared, as "
                  + owner.place().pointer()
                  + " has no stiffness; give that too,"
                  + " or a pure number: so many times as stiff, for example 5");
    }
    return number;
  }
}
