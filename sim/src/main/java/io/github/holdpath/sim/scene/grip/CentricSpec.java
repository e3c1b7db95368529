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
import static io.github.holdpath.sim.scene.grip.GripFields.MOST_PATCHES;
import static io.github.holdpath.sim.scene.grip.GripFields.OVERHANG;
import static io.github.holdpath.sim.scene.grip.GripFields.PAD_SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.RANGE;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFFNESS_FIELD;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;

/** Fields of grips with three or more jaws on a circle. */
final class CentricSpec {
  private static final ObjectSpec PADS =
      ObjectSpec.of(
          "centric pads",
          "the pads, evenly spread on a circle about z of the grip frame, the first on +x",
          required(
              "count", new NumberType(Bounds.between(3, MOST_PATCHES), true), "how many jaws", "3"),
          required("diameter", SIZE, "diameter of the circle on which they press", "\"80 mm\""),
          PAD_SIZE,
          required(
              "side",
              new ChoiceType(List.of("outside", "inside")),
              "outside where they press inward on the part, inside where they press outward in a"
                  + " hole",
              "\"outside\""),
          CONTACT,
          OVERHANG,
          STIFFNESS_FIELD);

  private static final ObjectSpec SPIN =
      ObjectSpec.of(
          "spin",
          "rotation of the grip about its z axis, which throws the jaws outward",
          required(
              "speed",
              QuantityType.of(Dimension.FREQUENCY, Bounds.positive(1e4)),
              "turns per time",
              "\"1500 1/min\""),
          required(
              "jawMass",
              QuantityType.of(Dimension.MASS, Bounds.positive(1e4)),
              "mass of one jaw with all that moves with it",
              "\"0.4 kg\""),
          required(
              "jawRadius",
              SIZE,
              "distance of the jaw's centre of mass from the axis",
              "\"55 mm\""));

  /** Centric jaws. */
  static final ObjectSpec SPEC =
      ObjectSpec.of(
          "centric grip",
          "three or more jaws that close on the z axis of the grip frame",
          KindType.kind("centric", "the kind of grip"),
          FRICTION,
          REQUIRED_SAFETY,
          INCLUDES_SAFETY,
          MECHANISM,
          required(
              "force",
              FORCE,
              "the gripping force of each jaw at rest, not of all together",
              "\"600 N\""),
          required(
              "pads",
              new ObjectType(PADS),
              "the pads of the jaws",
              "{ \"count\": 3, \"diameter\": \"80 mm\", \"size\": \"20 30 mm\", \"side\":"
                  + " \"outside\" }"),
          RANGE,
          optional(
              "spin",
              new ObjectType(SPIN),
              "rotation of the grip while it holds; none if left out",
              "{ \"speed\": \"1500 1/min\", \"jawMass\": \"0.4 kg\", \"jawRadius\": \"55 mm\" }"),
          GUIDE,
          LEDGES);

  private CentricSpec() {}
}
