package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.supply.Atmosphere;
import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.DirectionType;
import io.github.holdpath.sim.scene.field.EitherType;
import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.NumberListType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.SharedFields;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;
import java.util.stream.Stream;

/** Fields of the kinds of grip. */
final class GripSpec {
  private static final QuantityType SIZE = QuantityType.of(Dimension.LENGTH, Bounds.positive(100));
  private static final QuantityType FORCE = QuantityType.of(Dimension.FORCE, Bounds.positive(1e7));
  private static final QuantityType STIFF =
      QuantityType.of(Dimension.STIFFNESS, Bounds.positive(1e12));
  private static final QuantityType PRESSURE =
      QuantityType.of(Dimension.PRESSURE, Bounds.positive(1e7));
  private static final int MOST_CUPS = 400;

  private static final FieldSpec FRICTION =
      required(
          "friction",
          NumberType.of(Bounds.between(0, 3)),
          "the friction coefficient between grip and part, a pure number",
          "0.5");
  private static final FieldSpec REQUIRED_SAFETY =
      required(
          "requiredSafety",
          NumberType.of(Bounds.between(1, 100)),
          "the factor that must be in hand before the first slip",
          "2.0");
  private static final FieldSpec INCLUDES_SAFETY =
      optional(
          "includesSafety",
          NumberType.of(Bounds.between(1, 100)),
          "the safety factor that the data sheet's force already has in it; it is taken out again",
          "2");

  private static final ObjectSpec STIFFNESS =
      ObjectSpec.of(
          "stiffness",
          "how much each patch of the grip gives",
          required("normal", STIFF, "force per way along the patch's normal", "\"6 N/mm\""),
          optional(
              "shear",
              STIFF,
              "force per way across; two thirds of normal if left out",
              "\"4 N/mm\""));
  private static final FieldSpec STIFFNESS_FIELD =
      optional(
          "stiffness",
          new ObjectType(STIFFNESS),
          "how much each patch gives; all alike if left out",
          "{ \"normal\": \"6 N/mm\" }");

  private static final ObjectSpec LEDGE =
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
  private static final FieldSpec LEDGES =
      optional(
          "ledges",
          new ListType(new ObjectType(LEDGE), 1, MOST_CUPS),
          "form fit besides the friction",
          "");

  private static final ObjectSpec RING =
      ObjectSpec.of(
          "ring of cups",
          "cups on a circle, the first on +x",
          required(
              "count", new NumberType(Bounds.between(1, MOST_CUPS), true), "how many cups", "6"),
          required("diameter", SIZE, "diameter of the circle on which they lie", "\"200 mm\""));

  private static final ObjectSpec CUP =
      ObjectSpec.of(
          "cup",
          "one suction cup",
          optional("name", new TextType(), "what the cup is called", "\"front left\""),
          required(
              "at",
              QuantityType.list(Dimension.LENGTH, 2, Bounds.within(1000)),
              "x and y of its lip's middle in the grip frame",
              "\"110 60 mm\""),
          optional("diameter", SIZE, "the lip's effective diameter, where it differs", "\"50 mm\""),
          optional("pull", FORCE, "its pull at pullAt, where it differs", "\"70 N\""));

  private static final ObjectSpec CUPS =
      ObjectSpec.of(
              "cups",
              "the suction cups, their lips in the plane z = 0 of the grip frame",
              optional(
                  "grid",
                  new NumberListType(2, true, Bounds.between(1, 20)),
                  "rows along x and along y, centred on the grip",
                  "[2, 3]"),
              optional(
                  "ring",
                  new ObjectType(RING),
                  "cups on a circle",
                  "{ \"count\": 6, \"diameter\": \"200 mm\" }"),
              optional(
                  "list",
                  new ListType(new ObjectType(CUP), 1, MOST_CUPS),
                  "each cup by itself",
                  "[ { \"at\": \"110 60 mm\" } ]"),
              optional(
                  "spacing",
                  QuantityType.list(Dimension.LENGTH, 2, Bounds.positive(100)),
                  "distance between the rows of a grid along x and along y",
                  "\"220 120 mm\""),
              optional("diameter", SIZE, "effective diameter of each lip", "\"50 mm\""),
              optional(
                  "areaRatio",
                  NumberType.of(Bounds.between(0.01, 1)),
                  "what part of the lip's area pulls; 1 if left out",
                  "0.9"),
              optional(
                  "pull",
                  FORCE,
                  "pull of one cup after its data sheet, in place of its area",
                  "\"70 N\""),
              optional(
                  "pullAt",
                  PRESSURE,
                  "the vacuum for which the data sheet states the pull",
                  "\"60 kPa\""),
              optional(
                  "off",
                  new ListType(new TextType(), 1, MOST_CUPS),
                  "names of cups that are switched off",
                  "[\"cup 1,1\"]"),
              STIFFNESS_FIELD)
          .exactlyOne("grid", "ring", "list");

  private static final ObjectSpec SUPPLY =
      ObjectSpec.of(
              "supply",
              "the vacuum in the cups",
              optional("vacuum", PRESSURE, "pressure below the surrounding air", "\"60 kPa\""),
              optional(
                  "absolutePressure",
                  QuantityType.of(Dimension.PRESSURE, Bounds.notNegative(1e7)),
                  "pressure left in the cups",
                  "\"40 kPa\""),
              optional(
                  "ratedAt",
                  QuantityType.of(
                      Dimension.LENGTH, Bounds.between(Atmosphere.LOWEST, Atmosphere.HIGHEST)),
                  "altitude for which vacuum is stated, if not the site's; it is scaled",
                  "\"0 m\""))
          .exactlyOne("vacuum", "absolutePressure");

  /** Suction cups. */
  static final ObjectSpec SUCTION =
      ObjectSpec.of(
          "suction grip",
          "suction cups",
          KindType.kind("suction", "the kind of grip"),
          FRICTION,
          REQUIRED_SAFETY,
          INCLUDES_SAFETY,
          required("cups", new ObjectType(CUPS), "the suction cups", ""),
          required(
              "supply",
              new ObjectType(SUPPLY),
              "the vacuum in the cups",
              "{ \"vacuum\": \"60 kPa\" }"),
          LEDGES);

  private static final ObjectSpec PADS =
      ObjectSpec.of(
          "pads",
          "the two pads of the jaws",
          required(
              "size",
              QuantityType.list(Dimension.LENGTH, 2, Bounds.positive(100)),
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
  static final ObjectSpec JAWS =
      ObjectSpec.of(
          "jaws grip",
          "two jaws that close along y of the grip frame",
          KindType.kind("jaws", "the kind of grip"),
          FRICTION,
          REQUIRED_SAFETY,
          INCLUDES_SAFETY,
          required(
              "mechanism",
              new ChoiceType(Stream.of(Mechanism.values()).map(Mechanism::label).toList()),
              "how the jaws are driven, which changes the answer by factors: synchronised,"
                  + " independent or self-locking",
              "\"synchronised\""),
          required("force", FORCE, "the gripping force of each jaw, not of both", "\"400 N\""),
          required(
              "opening",
              SIZE,
              "distance between the pads' faces when they hold the part",
              "\"50 mm\""),
          required("pads", new ObjectType(PADS), "the two pads", "{ \"size\": \"40 25 mm\" }"),
          LEDGES);

  private GripSpec() {}
}
