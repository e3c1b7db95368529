package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.MOST_PATCHES;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;

import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.NumberListType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;

/** Fields by which cups and magnet faces are laid out. */
final class LayoutFields {
  static final QuantityType SIDES = QuantityType.list(Dimension.LENGTH, 2, Bounds.positive(100));
  static final FieldSpec PLACE =
      required(
          "at",
          QuantityType.list(Dimension.LENGTH, 2, Bounds.within(1000)),
          "x and y of its middle in the grip frame",
          "\"110 60 mm\"");
  static final FieldSpec GRID =
      optional(
          "grid",
          new NumberListType(2, true, Bounds.between(1, 20)),
          "rows along x and along y, centred on the grip",
          "[2, 3]");
  static final FieldSpec SPACING =
      optional(
          "spacing",
          SIDES,
          "distance between the rows of a grid along x and along y",
          "\"220 120 mm\"");

  private LayoutFields() {}

  /** A circle of them, the first on +x. */
  static FieldSpec ring(String things) {
    ObjectSpec spec =
        ObjectSpec.of(
            "ring of " + things,
            things + " on a circle, the first on +x",
            required(
                "count",
                new NumberType(Bounds.between(1, MOST_PATCHES), true),
                "how many " + things,
                "6"),
            required("diameter", SIZE, "diameter of the circle on which they lie", "\"200 mm\""));
    return optional(
        "ring",
        new ObjectType(spec),
        things + " on a circle",
        "{ \"count\": 6, \"diameter\": \"200 mm\" }");
  }

  /** Each by itself. */
  static FieldSpec list(String thing, ObjectSpec one) {
    return optional(
        "list",
        new ListType(new ObjectType(one), 1, MOST_PATCHES),
        "each " + thing + " by itself",
        "[ { \"at\": \"110 60 mm\" } ]");
  }

  /** Those that do not pull. */
  static FieldSpec off(String thing) {
    return optional(
        "off",
        new ListType(new TextType(), 1, MOST_PATCHES),
        "names of " + thing + "s that are switched off",
        "[\"" + thing + " 1,1\"]");
  }
}
