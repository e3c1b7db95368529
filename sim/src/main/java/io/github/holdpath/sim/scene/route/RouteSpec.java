package io.github.holdpath.sim.scene.route;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.DirectionType;
import io.github.holdpath.sim.scene.field.EitherType;
import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.FieldType;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.PercentType;
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

  /** What any move may say besides where it goes. */
  private static final FieldSpec[] MOVE = {
    optional("name", new TextType(), "what the move is called", "\"across\""),
    optional("speed", SharedFields.speed(true), "of the scene's speed, or a lower one", "\"80 %\""),
    optional(
        "acceleration",
        SharedFields.acceleration(true),
        "of the scene's acceleration, or a lower one",
        "\"80 %\""),
    optional("jerk", SharedFields.jerk(true), "of the scene's jerk, or a lower one", "\"80 %\""),
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
        "\"3600 deg/s^3\""),
    optional(
        "blend",
        QuantityType.of(Dimension.LENGTH, Bounds.positive(100)),
        "radius of the zone about its end in which the path may leave the corner, to go on into"
            + " the next move without a stop",
        "\"60 mm\""),
    optional(
        "override",
        new PercentType(),
        "plays the move slower: speed by it, acceleration by its square, jerk by its cube",
        "\"50 %\"")
  };

  /** A straight move. */
  static final ObjectSpec LINE =
      ObjectSpec.of(
              "line step",
              "a straight move, which ends at rest unless it has a blend",
              required(
                  "line",
                  new ObjectType(SharedFields.POSE),
                  "where the grip frame goes; an orientation left out stays as it was",
                  "{ \"at\": \"0.9 0 0.8 m\" }"))
          .with(MOVE);

  /** A point on the way of an arc. */
  private static final ObjectSpec VIA =
      ObjectSpec.of(
          "via point",
          "a point of an arc between its ends",
          required("at", SharedFields.POINT, "the position", "\"0.6 0.3 0.8 m\""));

  /** The way of an arc. */
  private static final ObjectSpec ARC_WAY =
      ObjectSpec.of(
              "arc",
              "an arc of a circle: through a point to an end, or about a centre by an angle",
              optional(
                  "via",
                  new ObjectType(VIA),
                  "a point of the arc between its ends, with at as its end",
                  "{ \"at\": \"0.6 0.3 0.8 m\" }"),
              optional("at", SharedFields.POINT, "where an arc with via ends", "\"0.9 0.6 0.8 m\""),
              optional(
                  "centre",
                  SharedFields.POINT,
                  "centre of the circle, or any point of its axis, with axis and angle",
                  "\"0.5 0 0.8 m\""),
              optional("axis", new DirectionType(), "direction of the axis", "\"0 0 1\""),
              optional(
                  "angle",
                  QuantityType.of(Dimension.ANGLE, Bounds.within(1000)),
                  "how far to go about the axis, right-handed",
                  "\"90 deg\""))
          .with(
              SharedFields.POSE.field("rpy").orElseThrow(),
              SharedFields.POSE.field("quaternion").orElseThrow())
          .exactlyOne("via", "centre");

  /** A move along an arc. */
  static final ObjectSpec ARC =
      ObjectSpec.of(
              "arc step",
              "a move along an arc, which ends at rest unless it has a blend",
              required(
                  "arc",
                  new ObjectType(ARC_WAY),
                  "the arc; an orientation left out stays as it was",
                  "{ \"via\": { \"at\": \"0.6 0.3 0.8 m\" }, \"at\": \"0.9 0.6 0.8 m\" }"))
          .with(MOVE);

  /** A move along the joints. */
  static final ObjectSpec JOINT =
      ObjectSpec.of(
              "joint step",
              "a move of all joints of the robot in proportion, which ends at rest unless it has a"
                  + " blend",
              required(
                  "joint",
                  new ObjectType(SharedFields.POSE),
                  "where the grip frame goes; an orientation left out stays as it was",
                  "{ \"at\": \"0.9 0 0.8 m\" }"))
          .with(MOVE);

  /** Standing still. */
  static final ObjectSpec WAIT =
      ObjectSpec.of(
          "wait step",
          "standing still",
          required("wait", PAUSE, "how long to stand still", "\"0.5 s\""));

  private static final StepType STEP = new StepType(List.of(START, GRIP, LINE, ARC, JOINT, WAIT));

  /** Steps in a list, or a recording. */
  public static final FieldType ROUTE =
      new EitherType(
          List.of(new ListType(STEP, 1, MOST_STEPS), new ObjectType(RecordingFields.ROUTE)));

  private RouteSpec() {}
}
