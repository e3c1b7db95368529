package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode.Place;
import io.github.holdpath.sim.scene.quantity.NearestName;
import io.github.holdpath.sim.surface.FrictionPairs;
import io.github.holdpath.sim.surface.FrictionRange;
import io.github.holdpath.sim.surface.SurfaceState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Reads the friction between grip and part, which the result names as assumed unless told: a number
 * or a pair of materials, of whose range the low end counts.
 */
final class FrictionInput {
  private FrictionInput() {}

  /**
   * Friction coefficient.
   *
   * @param owner object with the field {@code friction}
   * @return mu, dimensionless; empty if a fault was noted
   */
  static OptionalDouble read(Values owner, GripContext context) {
    Optional<Values> pair = owner.group("friction");
    if (pair.isEmpty()) {
      context.notes().add(owner, "friction", Scene.Origin.ASSUMED);
      return owner.number("friction");
    }
    Optional<FrictionRange> range = range(pair.get(), context.faults());
    range.ifPresent(r -> context.notes().add(owner, "friction", text(r), Scene.Origin.ASSUMED));
    return range.isPresent() ? OptionalDouble.of(range.get().low()) : OptionalDouble.empty();
  }

  private static String text(FrictionRange r) {
    return r.low()
        + ", the low end of "
        + r.low()
        + " to "
        + r.high()
        + " for "
        + r.pair()
        + ", "
        + r.state().label()
        + " ("
        + r.source()
        + ")";
  }

  private static Optional<FrictionRange> range(Values field, Faults faults) {
    Optional<String> text = field.text("pair");
    Optional<SurfaceState> state = field.text("state").flatMap(SurfaceState::of);
    if (text.isEmpty() || state.isEmpty()) {
      return Optional.empty();
    }
    List<String> names = Stream.of(text.get().split(",", -1)).map(String::strip).toList();
    if (names.size() != 2) {
      faults.add(
          field.place("pair"),
          "must be two materials with a comma between; for example \"steel, steel\"");
      return Optional.empty();
    }
    FrictionPairs pairs = FrictionPairs.load();
    String one = names.get(0);
    String other = names.get(1);
    Optional<FrictionRange> found = pairs.find(one, other, state.get());
    if (found.isEmpty()) {
      faults.add(missingPlace(field, pairs, names), missing(pairs, names, state.get()));
    }
    return found;
  }

  private static Place missingPlace(Values field, FrictionPairs pairs, List<String> names) {
    boolean known = !pairs.states(names.get(0), names.get(1)).isEmpty();
    return field.place(known ? "state" : "pair");
  }

  /** What is not in the table, and what is. */
  private static String missing(FrictionPairs pairs, List<String> names, SurfaceState state) {
    List<String> materials = pairs.materials();
    for (String name : names) {
      if (materials.stream().noneMatch(name::equalsIgnoreCase)) {
        return "no friction is known of \""
            + name
            + "\"; "
            + NearestName.hint(name, materials)
            + "known: "
            + String.join(", ", materials);
      }
    }
    List<SurfaceState> states = pairs.states(names.get(0), names.get(1));
    String number = "; measure it and write a number";
    if (!states.isEmpty()) {
      return "no friction of "
          + String.join(" on ", names)
          + " is known "
          + state.label()
          + ", only "
          + String.join(", ", states.stream().map(SurfaceState::label).toList())
          + number;
    }
    return "no friction of "
        + String.join(" on ", names)
        + " is known; known with "
        + names.get(0)
        + ": "
        + String.join(", ", pairs.partners(names.get(0)))
        + number;
  }
}
