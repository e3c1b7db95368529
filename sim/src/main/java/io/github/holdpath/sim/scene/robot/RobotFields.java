package io.github.holdpath.sim.scene.robot;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.ListType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.SharedFields;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;

/** Fields of each kind of robot. */
final class RobotFields {
  private static final QuantityType ARM_LENGTH =
      QuantityType.of(Dimension.LENGTH, Bounds.positive(100));
  private static final int MOST_JOINTS = 100;

  private static final FieldSpec[] SLIDING_FIELDS = {
    optional(
        "range",
        QuantityType.list(Dimension.LENGTH, 2, Bounds.within(1000)),
        "lower and upper stop; none if left out",
        "\"0 2500 mm\""),
    optional(
        "speed", SharedFields.speed(false), "greatest speed; no bound if left out", "\"2 m/s\""),
    optional(
        "acceleration",
        SharedFields.acceleration(false),
        "greatest acceleration; no bound if left out",
        "\"6 m/s^2\""),
    optional(
        "start",
        QuantityType.of(Dimension.LENGTH, Bounds.within(1000)),
        "value near which it begins; chosen by the program if left out",
        "\"100 mm\"")
  };

  private static final FieldSpec[] TURNING_FIELDS = {
    optional(
        "range",
        QuantityType.list(Dimension.ANGLE, 2, Bounds.within(1000)),
        "lower and upper stop; none if left out",
        "\"-170 170 deg\""),
    optional(
        "speed",
        SharedFields.turnSpeed(false),
        "greatest speed; no bound if left out",
        "\"250 deg/s\""),
    optional(
        "acceleration",
        SharedFields.turnAcceleration(false),
        "greatest acceleration; no bound if left out",
        "\"1000 deg/s^2\""),
    optional(
        "start",
        QuantityType.of(Dimension.ANGLE, Bounds.within(1000)),
        "value near which it begins; chosen by the program if left out",
        "\"45 deg\"")
  };

  private static final FieldSpec NAME =
      required("name", new TextType(), "the joint, as the file calls it", "\"joint_1\"");

  /** An axis that slides. */
  static final ObjectSpec SLIDING =
      ObjectSpec.of("sliding axis", "what an axis that slides may do", SLIDING_FIELDS);

  /** An axis that turns. */
  static final ObjectSpec TURNING =
      ObjectSpec.of("turning axis", "what an axis that turns may do", TURNING_FIELDS);

  private static final ObjectSpec SLIDING_JOINT =
      ObjectSpec.of("sliding joint", "what a joint of the file may do besides", NAME)
          .with(SLIDING_FIELDS);

  private static final ObjectSpec TURNING_JOINT =
      ObjectSpec.of("turning joint", "what a joint of the file may do besides", NAME)
          .with(TURNING_FIELDS);

  private static final FieldSpec BASE =
      optional(
          "base",
          new ObjectType(SharedFields.POSE),
          "the robot's base in the world; at its origin, not turned, if left out",
          "{ \"at\": \"0 0 0.7 m\" }");

  private static final FieldSpec PAYLOAD =
      optional(
          "payload",
          QuantityType.of(Dimension.MASS, Bounds.positive(10_000)),
          "what the flange may carry by the maker's data",
          "\"20 kg\"");

  private static final FieldSpec MOUNT =
      optional(
          "mount",
          new ObjectType(SharedFields.POSE),
          "the flange in the last axis' body; at its origin, z down, if left out",
          "{ \"at\": \"0 0 -100 mm\", \"rpy\": \"180 0 0 deg\" }");

  /** No robot at all. */
  static final ObjectSpec FREE =
      ObjectSpec.of(
          "free robot",
          "the grip frame moves as told, no arm is looked at",
          KindType.kind("free", "the kind of robot"));

  /** Linear axes. */
  static final ObjectSpec GANTRY =
      ObjectSpec.of(
          "gantry",
          "linear axes along x, y and z of the base, any of them missing, and one that turns",
          KindType.kind("gantry", "the kind of robot"),
          axis("x", SLIDING, "the axis along x; missing if left out"),
          axis("y", SLIDING, "the axis along y; missing if left out"),
          axis("z", SLIDING, "the axis along z, upwards; missing if left out"),
          axis("turn", TURNING, "the axis that turns the flange about z; missing if left out"),
          MOUNT,
          BASE,
          PAYLOAD);

  /** Two level arms and a lift. */
  static final ObjectSpec SCARA =
      ObjectSpec.of(
          "scara",
          "two level arms that turn about upright axes, a lift and an axis that turns",
          KindType.kind("scara", "the kind of robot"),
          required("upperArm", ARM_LENGTH, "from the shoulder to the elbow", "\"325 mm\""),
          required("foreArm", ARM_LENGTH, "from the elbow to the turning axis", "\"275 mm\""),
          axis("shoulder", TURNING, "the first arm"),
          axis("elbow", TURNING, "the second arm against the first"),
          axis("lift", SLIDING, "the height, upwards"),
          axis("turn", TURNING, "the turning axis against the second arm"),
          MOUNT,
          BASE,
          PAYLOAD);

  /** Three arms and a platform. */
  static final ObjectSpec DELTA =
      ObjectSpec.of(
          "delta",
          "three arms around an upright axis that carry a level platform by pairs of rods",
          KindType.kind("delta", "the kind of robot"),
          required(
              "baseRadius", ARM_LENGTH, "from the upright axis to the arms' axes", "\"200 mm\""),
          required(
              "platformRadius",
              ARM_LENGTH,
              "from the platform's middle to the rods' joints",
              "\"45 mm\""),
          required("upperArm", ARM_LENGTH, "from an arm's axis to its knee", "\"350 mm\""),
          required("rod", ARM_LENGTH, "from the knee to the platform", "\"800 mm\""),
          axis("arm", TURNING, "each arm; 0 is level, positive angles lower it"),
          axis("turn", TURNING, "the axis that turns the flange about z; missing if left out"),
          MOUNT,
          BASE,
          PAYLOAD);

  /** A serial arm from a file. */
  static final ObjectSpec URDF =
      ObjectSpec.of(
          "urdf robot",
          "a serial arm as a URDF file describes it",
          KindType.kind("urdf", "the kind of robot"),
          required(
              "file",
              new TextType(),
              "the URDF file, relative to the folder of the scene",
              "\"arm.urdf\""),
          optional(
              "baseLink",
              new TextType(),
              "the link that stands still; the file's first one if left out",
              "\"base_link\""),
          optional(
              "tipLink",
              new TextType(),
              "the link whose frame is the flange; the last one if left out and there is one only",
              "\"flange\""),
          joints(
              "turningJoints", TURNING_JOINT, "joints that turn and need more than the file says"),
          joints(
              "slidingJoints", SLIDING_JOINT, "joints that slide and need more than the file says"),
          BASE,
          PAYLOAD);

  private RobotFields() {}

  private static FieldSpec axis(String name, ObjectSpec spec, String help) {
    String example =
        spec == SLIDING
            ? "{ \"range\": \"0 2500 mm\", \"speed\": \"2 m/s\" }"
            : "{ \"range\": \"-170 170 deg\", \"speed\": \"250 deg/s\" }";
    return optional(name, new ObjectType(spec), help, example);
  }

  private static FieldSpec joints(String name, ObjectSpec spec, String help) {
    String unit = spec == SLIDING_JOINT ? "6 m/s^2" : "1000 deg/s^2";
    return optional(
        name,
        new ListType(new ObjectType(spec), 1, MOST_JOINTS),
        help,
        "[ { \"name\": \"joint_1\", \"acceleration\": \"" + unit + "\" } ]");
  }
}
