package io.github.holdpath.sim.scene.recording;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.FlagType;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import java.util.List;
import java.util.Map;

/** Fields of a recorded route. */
public final class RecordingFields {
  /** Names of separators in the file and what they stand for. */
  static final Map<String, Character> SEPARATORS = Map.of(",", ',', ";", ';', "tab", '\t');

  private static final Bounds TIMES = Bounds.notNegative(86_400);
  private static final TextType NAME = new TextType();
  private static final int MOST_JOINTS = 100;

  private static final ObjectSpec COLUMNS =
      ObjectSpec.of(
          "columns",
          "names of the columns, as the first line of the table spells them",
          required("time", NAME, "the column of the time", "\"t\""),
          optional("x", NAME, "the column of x", "\"x\""),
          optional("y", NAME, "the column of y", "\"y\""),
          optional("z", NAME, "the column of z", "\"z\""),
          optional("qw", NAME, "the column of the quaternion's scalar part", "\"qw\""),
          optional("qx", NAME, "the column of the quaternion's x part", "\"qx\""),
          optional("qy", NAME, "the column of the quaternion's y part", "\"qy\""),
          optional("qz", NAME, "the column of the quaternion's z part", "\"qz\""),
          optional("roll", NAME, "the column of the turn about the fixed x axis", "\"A\""),
          optional("pitch", NAME, "the column of the turn about the fixed y axis", "\"B\""),
          optional("yaw", NAME, "the column of the turn about the fixed z axis", "\"C\""),
          optional(
              "joints",
              new ListType(NAME, 1, MOST_JOINTS),
              "the columns of the joints, in the order from the robot's base; in place of a pose",
              "[ \"J1\", \"J2\", \"J3\", \"J4\", \"J5\", \"J6\" ]"));

  private static final ObjectSpec UNITS =
      ObjectSpec.of(
          "units",
          "units of the table's numbers",
          required(
              "time",
              new ChoiceType(List.copyOf(RecordingUnits.TIME.keySet())),
              "the unit of the time column",
              "\"s\""),
          optional(
              "length",
              new ChoiceType(List.copyOf(RecordingUnits.LENGTH.keySet())),
              "the unit of the columns x, y and z, and of joints that slide",
              "\"mm\""),
          optional(
              "angle",
              new ChoiceType(List.copyOf(RecordingUnits.ANGLE.keySet())),
              "the unit of the columns roll, pitch and yaw, and of joints that turn",
              "\"deg\""));

  private static final ObjectSpec HELD =
      ObjectSpec.of(
          "held",
          "when the part is held, counted from the first row; all the time if left out",
          optional("from", QuantityType.of(Dimension.TIME, TIMES), "since when", "\"0.5 s\""),
          optional("to", QuantityType.of(Dimension.TIME, TIMES), "until when", "\"7.5 s\""));

  private static final ObjectSpec RECORDING =
      ObjectSpec.of(
          "recording",
          "a motion that was recorded",
          required("file", NAME, "the table, relative to the folder of the scene", "\"log.csv\""),
          required(
              "frame",
              new ChoiceType(List.of("grip", "flange", "joints")),
              "whose poses the table holds, tool/flangeToGrip leads from the flange to the grip; or the"
                  + " joints of the robot",
              "\"grip\""),
          required("columns", new ObjectType(COLUMNS), "names of the columns", ""),
          required(
              "units",
              new ObjectType(UNITS),
              "units of the table's numbers",
              "{ \"time\": \"s\", \"length\": \"mm\", \"angle\": \"deg\" }"),
          optional(
              "separator",
              new ChoiceType(List.of(",", ";", "tab")),
              "what stands between two fields of the table; a comma if left out",
              "\";\""),
          optional(
              "decimalComma",
              new FlagType(),
              "whether the table writes 0,5 for a half; false if left out",
              "true"),
          optional(
              "held", new ObjectType(HELD), "when the part is held", "{ \"from\": \"0.5 s\" }"),
          optional(
              "cutoff",
              QuantityType.of(Dimension.FREQUENCY, Bounds.positive(10_000)),
              "frequency above which the motion is smoothed; "
                  + (int) RecordingSpec.DEFAULT_CUTOFF
                  + " Hz if left out",
              "\"40 Hz\""));

  /** The route as an object. */
  public static final ObjectSpec ROUTE =
      ObjectSpec.of(
          "recorded route",
          "a motion that was recorded, in place of steps",
          required("recording", new ObjectType(RECORDING), "the recorded motion", ""));

  private RecordingFields() {}
}
