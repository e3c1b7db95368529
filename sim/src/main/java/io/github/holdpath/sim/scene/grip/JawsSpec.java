package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.FORCE;
import static io.github.holdpath.sim.scene.grip.GripFields.FRICTION;
import static io.github.holdpath.sim.scene.grip.GripFields.INCLUDES_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.LEDGES;
import static io.github.holdpath.sim.scene.grip.GripFields.MECHANISM;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFFNESS_FIELD;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;

/** Fields of grips with two jaws. */
final class JawsSpec {
  private static final ObjectSpec PADS =
      ObjectSpec.of(
          "pads",
          "the two pads of the jaws",
          required(
              "size",
              QuantityType.list(Dimension.LENGTH, 2, GripFields.EXTENT),
              "sides of a pad along the grip's x and z",
              "\"40 25 mm\""),
          optional(
              "contact",
              new ChoiceType(List.of("face", "line")),
              "how the pads touch; face for flat parts and shaped pads, line for a bar in flat"
                  + " pads",
              "\"face\""),
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
              "distance between the pads' faces when they hold the part",
              "\"50 mm\""),
          required("pads", new ObjectType(PADS), "the two pads", "{ \"size\": \"40 25 mm\" }"),
          LEDGES);

  private JawsSpec() {}
}
