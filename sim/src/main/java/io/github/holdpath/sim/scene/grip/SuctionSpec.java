package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.FORCE;
import static io.github.holdpath.sim.scene.grip.GripFields.FRICTION;
import static io.github.holdpath.sim.scene.grip.GripFields.INCLUDES_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.LEDGES;
import static io.github.holdpath.sim.scene.grip.GripFields.MOST_PATCHES;
import static io.github.holdpath.sim.scene.grip.GripFields.PRESSURE;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFFNESS_FIELD;

import io.github.holdpath.dynamics.supply.Atmosphere;
import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.ExtentType;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.NumberListType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;

/** Fields of suction grips. */
final class SuctionSpec {
  static final String RECTANGULAR = "rectangular";
  static final String ROUND = "round";
  static final String OVAL = "oval";
  static final String BELLOWS = "bellows";

  private static final ObjectSpec PAD =
      ObjectSpec.of(
              "area pad",
              "a plate with many small cells, centred on the grip",
              required(
                  "shape",
                  new ChoiceType(List.of(RECTANGULAR, ROUND, OVAL)),
                  "outline of the pad",
                  "\"rectangular\""),
              required(
                  "size",
                  new ExtentType(Bounds.positive(100)),
                  "its sides along x and y, or the diameter of a round one",
                  "\"600 400 mm\""),
              optional(
                  "cells",
                  new NumberListType(2, true, Bounds.between(1, MOST_PATCHES)),
                  "how many cells lie along x and along y, evenly spread over the pad",
                  "[20, 14]"),
              optional(
                  "spacing",
                  LayoutFields.SIDES,
                  "distance between the cells along x and along y, in place of their number",
                  "\"30 28 mm\""))
          .exactlyOne("cells", "spacing");

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
              optional(
                  "pad",
                  new ObjectType(PAD),
                  "an area pad whose cells are the cups",
                  "{ \"shape\": \"rectangular\", \"size\": \"600 400 mm\", \"cells\": [20, 14] }"),
              LayoutFields.SPACING,
              optional(
                  "form",
                  new ChoiceType(List.of("flat", BELLOWS)),
                  "flat or bellows; bellows give sideways more than flat cups, so that both"
                      + " stiffnesses must be told",
                  "\"flat\""),
              optional(
                  "diameter",
                  SIZE,
                  "effective diameter of each lip, or of each cell of a pad",
                  "\"50 mm\""),
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
          .exactlyOne("grid", "ring", "list", "pad");

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
