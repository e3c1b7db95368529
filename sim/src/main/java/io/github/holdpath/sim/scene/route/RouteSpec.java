package io.github.holdpath.sim.scene.route;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.EitherType;
import io.github.holdpath.sim.scene.field.FieldType;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.SharedFields;
import io.github.holdpath.sim.scene.field.StepType;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import io.github.holdpath.sim.scene.recording.RecordingFields;
import java.util.List;

/** Fields of a route: steps, or a recording. */
public final class RouteSpec {
  private static final QuantityType PAUSE =
      QuantityType.of(Dimension.TIME, Bounds.notNegative(86_400));
  private static final int MOST_STEPS = 100_000;

  /** Where a route begins. */
  static final ObjectSpec START =
      ObjectSpec.of(
          "start step",
          "where the route begins",
          required(
              "start",
              new ObjectType(SharedFields.POSE),
              "the grip frame at the start, in the world",
              "{ \"at\": \"0.9 0 0.4 m\", \"rpy\": \"180 0 0 deg\" }"));

  /** Taking or releasing the part. */
  static final ObjectSpec GRIP =
      ObjectSpec.of(
          "grip step",
          "taking or releasing the part",
          required(
              "grip",
              new ChoiceType(List.of("take", "release")),
              "take or release the part",
              "\"take\""),
          required(
              "wait",
              PAUSE,
              "how long the grip stands for it; the part is held between the two waits",
              "\"0.25 s\""));

  /** A straight move. */
  static final ObjectSpec LINE =
      ObjectSpec.of(
          "line step",
          "a straight move, at rest at both ends",
          required(
              "line",
              new ObjectType(SharedFields.POSE),
              "where the grip frame goes; an orientation left out stays as it was",
              "{ \"at\": \"0.9 0 0.8 m\" }"),
          optional("name", new TextType(), "what the move is called", "\"across\""),
          optional(
              "speed",
              SharedFields.speed(true),
              "of the scene's speed, or a lower one",
              "\"80 %\""),
          optional(
              "acceleration",
              SharedFields.acceleration(true),
              "of the scene's acceleration, or a lower one",
              "\"80 %\""),
          optional(
              "jerk", SharedFields.jerk(true), "of the scene's jerk, or a lower one", "\"80 %\""),
          optional(
              "turnSpeed",
              SharedFields.turnSpeed(true),
              "turning speed, where it differs from what speed says",
              "\"90 deg/s\""),
          optional(
              "turnAcceleration",
              SharedFields.turnAcceleration(true),
              "turning acceleration, where it differs from what acceleration says",
              "\"360 deg/s^2\""),
          optional(
              "turnJerk",
              SharedFields.turnJerk(true),
              "turning jerk, where it differs from what jerk says",
              "\"3600 deg/s^3\""));

  /** Standing still. */
  static final ObjectSpec WAIT =
      ObjectSpec.of(
          "wait step",
          "standing still",
          required("wait", PAUSE, "how long to stand still", "\"0.5 s\""));

  private static final StepType STEP = new StepType(List.of(START, GRIP, LINE, WAIT));

  /** Steps in a list, or a recording. */
  public static final FieldType ROUTE =
      new EitherType(
          List.of(new ListType(STEP, 1, MOST_STEPS), new ObjectType(RecordingFields.ROUTE)));

  private RouteSpec() {}
}
