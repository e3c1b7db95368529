package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.FORCE;
import static io.github.holdpath.sim.scene.grip.GripFields.FRICTION;
import static io.github.holdpath.sim.scene.grip.GripFields.INCLUDES_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.LEDGES;
import static io.github.holdpath.sim.scene.grip.GripFields.MECHANISM;
import static io.github.holdpath.sim.scene.grip.GripFields.MOST_PATCHES;
import static io.github.holdpath.sim.scene.grip.GripFields.RANGE;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFF;

import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;

/** Fields of grips with compliant fingers. */
final class SoftSpec {
  private static final ObjectSpec STIFFNESS =
      ObjectSpec.of(
          "finger stiffness",
          "how much each finger gives at its contact",
          required("normal", STIFF, "force per way in which the finger closes", "\"1.5 N/mm\""),
          required("shear", STIFF, "force per way across", "\"0.6 N/mm\""));

  private static final ObjectSpec FINGERS =
      ObjectSpec.of(
          "fingers",
          "the fingers, evenly spread on a circle about z of the grip frame, the first on +x",
          required(
              "count",
              new NumberType(Bounds.between(2, MOST_PATCHES), true),
              "how many fingers",
              "4"),
          required("diameter", SIZE, "diameter of the circle on which they press", "\"70 mm\""),
          required(
              "size",
              QuantityType.list(Dimension.LENGTH, 2, Bounds.positive(100)),
              "sides of the face that a finger presses on the part: along the tangent and along z",
              "\"15 30 mm\""),
          required(
              "stiffness",
              new ObjectType(STIFFNESS),
              "how much each finger gives, along and across: the shares hang on it",
              "{ \"normal\": \"1.5 N/mm\", \"shear\": \"0.6 N/mm\" }"));

  /** Soft fingers. */
  static final ObjectSpec SPEC =
      ObjectSpec.of(
          "soft grip",
          "compliant fingers that close on the z axis of the grip frame",
          KindType.kind("soft", "the kind of grip"),
          FRICTION,
          REQUIRED_SAFETY,
          INCLUDES_SAFETY,
          MECHANISM,
          required(
              "force", FORCE, "the gripping force of each finger, not of all together", "\"6 N\""),
          optional(
              "maxForce",
              FORCE,
              "the most that a finger may press on the part, load and all",
              "\"20 N\""),
          required(
              "fingers",
              new ObjectType(FINGERS),
              "the fingers",
              "{ \"count\": 4, \"diameter\": \"70 mm\", \"size\": \"15 30 mm\", \"stiffness\": {"
                  + " \"normal\": \"1.5 N/mm\", \"shear\": \"0.6 N/mm\" } }"),
          RANGE,
          LEDGES);

  private SoftSpec() {}
}
