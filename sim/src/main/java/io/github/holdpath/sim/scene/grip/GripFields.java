package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.DirectionType;
import io.github.holdpath.sim.scene.field.EitherType;
import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.SharedFields;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Fields that several kinds of grip have. */
final class GripFields {
  static final QuantityType SIZE = QuantityType.of(Dimension.LENGTH, Bounds.positive(100));
  static final QuantityType FORCE = QuantityType.of(Dimension.FORCE, Bounds.positive(1e7));
  static final QuantityType STIFF = QuantityType.of(Dimension.STIFFNESS, Bounds.positive(1e12));
  static final QuantityType PRESSURE = QuantityType.of(Dimension.PRESSURE, Bounds.positive(1e7));
  static final int MOST_PATCHES = 400;

  static final FieldSpec FRICTION =
      required(
          "friction",
          NumberType.of(Bounds.between(0, 3)),
          "the friction coefficient between grip and part, a pure number",
          "0.5");
  static final FieldSpec REQUIRED_SAFETY =
      required(
          "requiredSafety",
          NumberType.of(Bounds.between(1, 100)),
          "the factor that must be in hand before the first slip",
          "2.0");
  static final FieldSpec INCLUDES_SAFETY =
      optional(
          "includesSafety",
          NumberType.of(Bounds.between(1, 100)),
          "the safety factor that the data sheet's force already has in it; it is taken out again",
          "2");

  static final ObjectSpec STIFFNESS =
      ObjectSpec.of(
          "stiffness",
          "how much each patch of the grip gives",
          required("normal", STIFF, "force per way along the patch's normal", "\"6 N/mm\""),
          optional(
              "shear",
              STIFF,
              "force per way across; two thirds of normal if left out",
              "\"4 N/mm\""));
  static final FieldSpec STIFFNESS_FIELD =
      optional(
          "stiffness",
          new ObjectType(STIFFNESS),
          "how much each patch gives; all alike if left out",
          "{ \"normal\": \"6 N/mm\" }");

  static final ObjectSpec LEDGE =
      ObjectSpec.of(
          "ledge",
          "a face that stands in the part's way: form fit",
          required("name", new TextType(), "what the ledge is called", "\"left rim\""),
          required("at", SharedFields.POINT, "its middle in the grip frame", "\"0 40 60 mm\""),
          required(
              "normal",
              new DirectionType(),
              "the direction in which it pushes on the part",
              "\"0 0 -1\""),
          required(
              "size",
              QuantityType.list(Dimension.LENGTH, 2, Bounds.positive(100)),
              "its sides, the first along the grip's x (its z where the ledge looks along x)",
              "\"40 10 mm\""),
          required(
              "stiffness",
              new EitherType(List.of(STIFF, NumberType.of(Bounds.between(1e-6, 1e6)))),
              "force per way, or a pure number: so many times that of a cup or pad",
              "5"));
  static final FieldSpec LEDGES =
      optional(
          "ledges",
          new ListType(new ObjectType(LEDGE), 1, MOST_PATCHES),
          "form fit besides the friction",
          "");

  static final FieldSpec DAMPING =
      optional(
          "damping",
          NumberType.of(Bounds.between(0, 0.9)),
          "damping ratio with which the part swings on its grip; 0.05 if left out; needs stiffness",
          "0.05");
  static final FieldSpec SETTLE =
      optional(
          "settle",
          QuantityType.of(Dimension.LENGTH, Bounds.positive(1)),
          "swing of the part's centre of mass within which it counts as settled; needs stiffness",
          "\"0.1 mm\"");

  static final FieldSpec MECHANISM =
      required(
          "mechanism",
          new ChoiceType(Stream.of(Mechanism.values()).map(Mechanism::label).toList()),
          "how the fingers are driven, which changes the answer by factors: synchronised,"
              + " independent or self-locking",
          "\"synchronised\"");

  private GripFields() {}

  /** How a grip's fingers are driven; empty if the field is faulty. */
  static Optional<Mechanism> mechanism(Values grip) {
    return grip.text("mechanism")
        .flatMap(
            label ->
                Stream.of(Mechanism.values()).filter(m -> m.label().equals(label)).findFirst());
  }
}
