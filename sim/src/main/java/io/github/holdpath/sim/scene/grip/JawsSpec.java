package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.CONTACT;
import static io.github.holdpath.sim.scene.grip.GripFields.FORCE;
import static io.github.holdpath.sim.scene.grip.GripFields.FRICTION;
import static io.github.holdpath.sim.scene.grip.GripFields.GUIDE;
import static io.github.holdpath.sim.scene.grip.GripFields.INCLUDES_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.LEDGES;
import static io.github.holdpath.sim.scene.grip.GripFields.MECHANISM;
import static io.github.holdpath.sim.scene.grip.GripFields.OVERHANG;
import static io.github.holdpath.sim.scene.grip.GripFields.PAD_SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.RANGE;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFFNESS_FIELD;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;

/** Fields of grips with two jaws. */
final class JawsSpec {
  private static final ObjectSpec VEE =
      ObjectSpec.of(
          "vee",
          "a groove in each pad in which a round bar lies",
          required(
              "angle",
              QuantityType.of(
                  Dimension.ANGLE, Bounds.between(Math.toRadians(10), Math.toRadians(170))),
              "the angle between the two flanks",
              "\"90 deg\""),
          optional(
              "along",
              new ChoiceType(List.of("x", "z")),
              "the axis along which the bar lies; that of the part's cylinder if left out",
              "\"x\""));

  private static final ObjectSpec PADS =
      ObjectSpec.of(
          "pads",
          "the two pads of the jaws",
          PAD_SIZE,
          CONTACT,
          optional(
              "vee",
              new ObjectType(VEE),
              "a groove in each pad, for a round bar",
              "{ \"angle\": \"90 deg\" }"),
          OVERHANG,
          STIFFNESS_FIELD);

  /** Parallel jaws. */
  static final ObjectSpec SPEC =
      ObjectSpec.of(
          "jaws grip",
          "two jaws that close along y of the grip frame",
          KindType.kind("jaws", "the kind of grip"),
          FRICTION,
          REQUIRED_SAFETY,
          INCLUDES_SAFETY,
          MECHANISM,
          required("force", FORCE, "the gripping force of each jaw, not of both", "\"400 N\""),
          required(
              "opening",
              SIZE,
              "distance between the pads' faces when they hold the part; in a vee the diameter of"
                  + " the bar",
              "\"50 mm\""),
          RANGE,
          required("pads", new ObjectType(PADS), "the two pads", "{ \"size\": \"40 25 mm\" }"),
          GUIDE,
          LEDGES);

  private JawsSpec() {}
}
