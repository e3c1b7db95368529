package io.github.holdpath.sim.scene.grip;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;
import static io.github.holdpath.sim.scene.grip.GripFields.FORCE;
import static io.github.holdpath.sim.scene.grip.GripFields.FRICTION;
import static io.github.holdpath.sim.scene.grip.GripFields.INCLUDES_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.LEDGES;
import static io.github.holdpath.sim.scene.grip.GripFields.REQUIRED_SAFETY;
import static io.github.holdpath.sim.scene.grip.GripFields.SIZE;
import static io.github.holdpath.sim.scene.grip.GripFields.STIFFNESS_FIELD;

import io.github.holdpath.dynamics.grip.MagnetType;
import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.stream.Stream;

/** Fields of magnet grips. */
final class MagnetSpec {
  private static final int MOST_ROWS = 200;
  private static final QuantityType GAP = QuantityType.of(Dimension.LENGTH, Bounds.notNegative(1));

  private static final ObjectSpec FACE =
      ObjectSpec.of(
          "face",
          "one face of a magnet",
          optional("name", new TextType(), "what the face is called", "\"front left\""),
          LayoutFields.PLACE,
          optional("diameter", SIZE, "its diameter, where it differs", "\"50 mm\""),
          optional(
              "size",
              LayoutFields.SIDES,
              "its sides along x and y, where they differ",
              "\"60 40 mm\""),
          optional("pull", FORCE, "its pull on this part, where it differs", "\"240 N\""));

  private static final ObjectSpec ROW =
      ObjectSpec.of(
          "row of a pull curve",
          "the pull of a face at one gap on one sheet",
          required("gap", GAP, "between face and sheet: oil, paint, dirt, film", "\"0.1 mm\""),
          required("thickness", SIZE, "of the sheet", "\"1.5 mm\""),
          required("pull", FORCE, "of one face", "\"240 N\""));

  private static final ObjectSpec FACES =
      ObjectSpec.of(
              "faces",
              "the faces of the magnets, in the plane z = 0 of the grip frame",
              LayoutFields.GRID,
              LayoutFields.ring("faces"),
              LayoutFields.list("face", FACE),
              LayoutFields.SPACING,
              optional("diameter", SIZE, "diameter of each round face", "\"50 mm\""),
              optional(
                  "size",
                  LayoutFields.SIDES,
                  "sides of each rectangular face along x and y, in place of diameter",
                  "\"60 40 mm\""),
              optional(
                  "pull",
                  FORCE,
                  "pull of one face on this part: its material, thickness, gap and surface",
                  "\"240 N\""),
              optional(
                  "curve",
                  new ListType(new ObjectType(ROW), 1, MOST_ROWS),
                  "rows of the data sheet, in place of pull",
                  "[ { \"gap\": \"0.1 mm\", \"thickness\": \"1.5 mm\", \"pull\": \"240 N\" } ]"),
              optional(
                  "gap",
                  GAP,
                  "between face and part in this job: oil, paint, dirt, film; a curve is read there",
                  "\"0.1 mm\""),
              optional(
                  "thickness",
                  SIZE,
                  "of the part's wall under the faces, one sheet alone; a curve is read there",
                  "\"1.5 mm\""),
              LayoutFields.off("face"),
              STIFFNESS_FIELD)
          .exactlyOne("grid", "ring", "list");

  /** Magnets. */
  static final ObjectSpec SPEC =
      ObjectSpec.of(
          "magnet grip",
          "magnets for ferromagnetic parts",
          KindType.kind("magnet", "the kind of grip"),
          FRICTION,
          REQUIRED_SAFETY,
          INCLUDES_SAFETY,
          required(
              "type",
              new ChoiceType(Stream.of(MagnetType.values()).map(MagnetType::label).toList()),
              "how the magnets are switched, which says what a loss of power does",
              "\"switched permanent\""),
          required("faces", new ObjectType(FACES), "the faces of the magnets", ""),
          LEDGES);

  private MagnetSpec() {}
}
