package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.margin.HoldModel;
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
import io.github.holdpath.sim.surface.SurfaceState;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Fields that several kinds of grip have. */
final class GripFields {
  /** Of a cup or pad; below a micrometre there is no contact to speak of. */
  static final Bounds EXTENT = Bounds.between(1e-6, 100);

  static final QuantityType SIZE = QuantityType.of(Dimension.LENGTH, EXTENT);
  static final QuantityType FORCE = QuantityType.of(Dimension.FORCE, Bounds.positive(1e7));
  static final QuantityType STIFF = QuantityType.of(Dimension.STIFFNESS, Bounds.positive(1e12));
  static final QuantityType PRESSURE = QuantityType.of(Dimension.PRESSURE, Bounds.positive(1e7));
  static final int MOST_PATCHES = 400;

  static final ObjectSpec FRICTION_PAIR =
      ObjectSpec.of(
          "friction",
          "friction by the table of pairs, its low end",
          required("pair", new TextType(), "the two materials", "\"steel, steel\""),
          required(
              "state",
              new ChoiceType(Stream.of(SurfaceState.values()).map(SurfaceState::label).toList()),
              "what lies between them: dry, oily, wet or dusty",
              "\"oily\""));
  static final FieldSpec FRICTION =
      required(
          "friction",
          new EitherType(
              List.of(NumberType.of(Bounds.between(0, 3)), new ObjectType(FRICTION_PAIR))),
          "the friction coefficient between grip and part, a pure number, or a pair of materials"
              + " and their state",
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
              QuantityType.list(Dimension.LENGTH, 2, EXTENT),
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
          new ListType(new ObjectType(LEDGE), 1, HoldModel.MOST_LEDGES),
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

  static final FieldSpec PAD_SIZE =
      required(
          "size",
          QuantityType.list(Dimension.LENGTH, 2, EXTENT),
          "sides of a pad: the first across (x of the grip for jaws, the tangent on a circle), the"
              + " second along its z",
          "\"40 25 mm\"");
  static final FieldSpec CONTACT =
      optional(
          "contact",
          new ChoiceType(List.of("face", "line")),
          "how the pads touch; face for flat parts and shaped pads, line for a bar in flat pads",
          "\"face\"");
  static final FieldSpec OVERHANG =
      optional(
          "overhang",
          QuantityType.of(Dimension.LENGTH, Bounds.notNegative(100)),
          "distance along z from a jaw's guide to the middle of its pad",
          "\"60 mm\"");
  static final FieldSpec RANGE =
      optional(
          "range",
          QuantityType.list(Dimension.LENGTH, 2, Bounds.notNegative(100)),
          "the least and the greatest opening, or diameter, that the gripper reaches",
          "\"30 80 mm\"");

  private static final ObjectSpec GUIDE_RATING =
      ObjectSpec.of(
          "guide",
          "what the guide of each jaw bears, after its data sheet",
          required(
              "moments",
              QuantityType.list(Dimension.MOMENT, 3, Bounds.positive(1e7)),
              "the largest moment about the axis across, the closing axis and z; between two jaws"
                  + " these are the grip's x, y and z",
              "\"40 25 30 N*m\""),
          optional("force", FORCE, "the largest force square to the closing axis", "\"1200 N\""));
  static final FieldSpec GUIDE =
      optional(
          "guide",
          new ObjectType(GUIDE_RATING),
          "what the guide of each jaw bears; it needs pads/overhang",
          "{ \"moments\": \"40 25 30 N*m\" }");

  private GripFields() {}

  /** How a grip's fingers are driven; empty if the field is faulty. */
  static Optional<Mechanism> mechanism(Values grip) {
    return grip.text("mechanism")
        .flatMap(
            label ->
                Stream.of(Mechanism.values()).filter(m -> m.label().equals(label)).findFirst());
  }
}
