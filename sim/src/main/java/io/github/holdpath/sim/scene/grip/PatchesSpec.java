package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.FRICTION;
import static io.github.holdpath.sim.scene.grip.GripFields.MOST_PATCHES;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFFNESS_FIELD;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.DirectionType;
import io.github.holdpath.sim.scene.field.ExtentType;
import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.FlagType;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.SharedFields;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;

/** Fields of grips that are written out patch by patch. */
final class PatchesSpec {
  static final String RING = "ring";
  static final String DISC = "disc";
  static final String RECTANGLE = "rectangle";
  static final String LINE = "line";

  private static final QuantityType FORCE_OR_NONE =
      QuantityType.of(Dimension.FORCE, Bounds.notNegative(1e7));

  private static final ObjectSpec PATCH =
      ObjectSpec.of(
              "patch",
              "one contact between grip and part",
              required("name", new TextType(), "what the patch is called", "\"left pad\""),
              required("at", SharedFields.POINT, "its middle in the grip frame", "\"0 20 0 mm\""),
              optional(
                  "rpy",
                  QuantityType.list(Dimension.ANGLE, 3, Bounds.within(1000)),
                  "its orientation as turns about the grip's axes x, then y, then z; patch z points"
                      + " into the part",
                  "\"90 0 0 deg\""),
              optional(
                  "normal",
                  new DirectionType(),
                  "the direction into the part, in place of rpy; patch x is then the grip's x laid"
                      + " into the patch, or its z where the patch looks along x",
                  "\"0 -1 0\""),
              required(
                  "shape",
                  new ChoiceType(List.of(RING, DISC, RECTANGLE, LINE)),
                  "the pressed area: ring (a lip that seals), disc, rectangle or line",
                  "\"rectangle\""),
              required(
                  "size",
                  new ExtentType(Bounds.positive(100)),
                  "the diameter of a ring or disc, the sides of a rectangle along patch x and y, or"
                      + " the length of a line along patch x",
                  "\"30 15 mm\""),
              optional(
                  "friction",
                  NumberType.of(Bounds.between(0, 3)),
                  "its friction coefficient, where it differs from that of the grip",
                  "0.3"),
              optional(
                  "preload",
                  FORCE_OR_NONE,
                  "the force with which it presses on the part when that is weightless; as much as"
                      + " pull if left out",
                  "\"200 N\""),
              optional(
                  "pull",
                  FORCE_OR_NONE,
                  "the force of vacuum or magnetism with which it draws the part; none if left out",
                  "\"80 N\""),
              STIFFNESS_FIELD,
              optional(
                  "maxPressure",
                  QuantityType.of(Dimension.PRESSURE, Bounds.positive(1e11)),
                  "the largest mean pressure here, where it differs from part/damage",
                  "\"150 kPa\""),
              optional(
                  "ledge",
                  new FlagType(),
                  "whether this is form fit, which only pushes; false if left out",
                  "true"))
          .exactlyOne("normal", "rpy");

  private static final ObjectSpec MOVED =
      ObjectSpec.of(
          "moved patches",
          "patches that one drive or closure ties together",
          required(
              "patches",
              new ListType(new TextType(), 1, MOST_PATCHES),
              "their names",
              "[\"left pad\", \"right pad\"]"),
          optional(
              "directions",
              new ListType(new DirectionType(), 1, MOST_PATCHES),
              "the direction in which each closes; its own normal if left out",
              "[\"0 -1 0\", \"0 1 0\"]"));

  private static FieldSpec moved(String name, String help) {
    return optional(
        name,
        new ListType(new ObjectType(MOVED), 1, MOST_PATCHES),
        help,
        "[ { \"patches\": [\"left pad\", \"right pad\"] } ]");
  }

  /** Any patches. */
  static final ObjectSpec SPEC =
      ObjectSpec.of(
          "patches grip",
          "contact patches written out one by one",
          KindType.kind("patches", "the kind of grip"),
          FRICTION,
          REQUIRED_SAFETY,
          required(
              "patches",
              new ListType(new ObjectType(PATCH), 1, MOST_PATCHES),
              "the contact patches",
              ""),
          STIFFNESS_FIELD,
          moved("drives", "what moves patches together: the sum of their closing forces stays"),
          moved(
              "closures",
              "fingers that lock: the sum of their closing forces per stiffness stays; for the"
                  + " whole-grip factor"));

  private PatchesSpec() {}
}
