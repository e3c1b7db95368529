package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.FORCE;
import static io.github.holdpath.sim.scene.grip.GripFields.FRICTION;
import static io.github.holdpath.sim.scene.grip.GripFields.INCLUDES_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.LEDGES;
import static io.github.holdpath.sim.scene.grip.GripFields.PRESSURE;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFFNESS_FIELD;

import io.github.holdpath.dynamics.supply.Atmosphere;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;

/** Fields of suction grips. */
final class SuctionSpec {
  private static final ObjectSpec CUP =
      ObjectSpec.of(
          "cup",
          "one suction cup",
          optional("name", new TextType(), "what the cup is called", "\"front left\""),
          LayoutFields.PLACE,
          optional("diameter", SIZE, "the lip's effective diameter, where it differs", "\"50 mm\""),
          optional(
              "size",
              LayoutFields.SIDES,
              "effective length and width of an oval lip along x and y, where they differ",
              "\"80 30 mm\""),
          optional("pull", FORCE, "its pull at pullAt, where it differs", "\"70 N\""));

  private static final ObjectSpec CUPS =
      ObjectSpec.of(
              "cups",
              "the suction cups, their lips in the plane z = 0 of the grip frame",
              LayoutFields.GRID,
              LayoutFields.ring("cups"),
              LayoutFields.list("cup", CUP),
              LayoutFields.SPACING,
              optional("diameter", SIZE, "effective diameter of each lip", "\"50 mm\""),
              optional(
                  "size",
                  LayoutFields.SIDES,
                  "effective length and width of each oval lip along x and y, in place of diameter",
                  "\"80 30 mm\""),
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
              LayoutFields.off("cup"),
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
  static final ObjectSpec SPEC =
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

  private SuctionSpec() {}
}
