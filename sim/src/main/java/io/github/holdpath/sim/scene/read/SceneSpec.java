package io.github.holdpath.sim.scene.read;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.dynamics.supply.Atmosphere;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.DirectionType;
import io.github.holdpath.sim.scene.field.EitherType;
import io.github.holdpath.sim.scene.field.KindType;
import io.github.holdpath.sim.scene.field.NumberType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.OriginsType;
import io.github.holdpath.sim.scene.field.PercentType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.RoundType;
import io.github.holdpath.sim.scene.field.SharedFields;
import io.github.holdpath.sim.scene.field.TextType;
import io.github.holdpath.sim.scene.grip.GripKinds;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import io.github.holdpath.sim.scene.robot.RobotKinds;
import io.github.holdpath.sim.scene.route.RouteSpec;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.stream.Stream;

/** The scene file's fields; those of grips, routes and recordings stand in their packages. */
final class SceneSpec {
  private static final Bounds SIZE = Bounds.positive(100);
  private static final Bounds MASS = Bounds.positive(10_000);

  private static final QuantityType SIX =
      QuantityType.list(Dimension.INERTIA, 6, Bounds.within(1e6));

  /** Words for an inertia that is computed from the shape, one for each shape. */
  static final List<String> UNIFORM =
      List.of("uniform box", "uniform cylinder", "uniform tube", "uniform sphere");

  private static final ObjectSpec SITE =
      ObjectSpec.of(
          "site",
          "where the job is done",
          optional(
              "altitude",
              QuantityType.of(
                  Dimension.LENGTH, Bounds.between(Atmosphere.LOWEST, Atmosphere.HIGHEST)),
              "height above the sea, which sets the pressure of the air; 0 m if left out",
              "\"120 m\""),
          optional(
              "temperature",
              QuantityType.of(Dimension.TEMPERATURE, Bounds.between(200, 400)),
              "temperature of the air; 20 degC if left out",
              "\"20 degC\""),
          optional(
              "gravity",
              QuantityType.list(Dimension.ACCELERATION, 3, Bounds.within(100)),
              "gravity in world axes; straight down with standard gravity if left out",
              "\"0 0 -9.80665 m/s^2\""),
          optional(
              "airDensity",
              QuantityType.of(Dimension.DENSITY, Bounds.notNegative(100)),
              "density of the air; from altitude and temperature if left out",
              "\"1.2 kg/m^3\""));

  private static final ObjectSpec DAMAGE =
      ObjectSpec.of(
          "damage",
          "what the part bears without harm",
          optional(
              "maxPressure",
              QuantityType.of(Dimension.PRESSURE, Bounds.positive(1e11)),
              "the largest mean pressure that a patch may put on the part",
              "\"150 kPa\""),
          optional(
              "maxPeakPressure",
              QuantityType.of(Dimension.PRESSURE, Bounds.positive(1e11)),
              "the largest pressure at the edge of a jaw's pad",
              "\"300 kPa\""));

  private static final ObjectSpec DRAG =
      ObjectSpec.of(
          "drag",
          "what the air does to the moved part",
          optional(
              "area",
              QuantityType.of(Dimension.AREA, Bounds.notNegative(1000)),
              "the area that meets the air",
              "\"0.12 m^2\""),
          optional(
              "coefficient", NumberType.of(Bounds.notNegative(10)), "the drag coefficient", "1.2"),
          optional(
              "addedMass",
              QuantityType.of(Dimension.MASS, Bounds.notNegative(1000)),
              "air that a flat part carries along when it moves broadside; 0 kg if left out",
              "\"0.5 kg\""),
          optional(
              "normal", new DirectionType(), "the normal of a flat part, grip frame", "\"0 0 1\""));

  private static final ObjectSpec PART =
      ObjectSpec.of(
          "part",
          "what is carried",
          optional("name", new TextType(), "what the part is called", "\"crate of 12 jars\""),
          required(
              "mass",
              QuantityType.of(Dimension.MASS, MASS),
              "the mass of one part, as it is carried",
              "\"12 kg\""),
          required(
              "centreOfMass",
              SharedFields.POINT,
              "the centre of mass as seen from the middle of the grip; zeros must be written",
              "\"0 0 130 mm\""),
          optional(
              "box",
              QuantityType.list(Dimension.LENGTH, 3, SIZE),
              "the shape: sides along x, y and z",
              "\"400 300 260 mm\""),
          optional(
              "cylinder",
              new RoundType(QuantityType.list(Dimension.LENGTH, 2, SIZE)),
              "the shape: diameter, length and axis",
              "\"50 300 mm x\""),
          optional(
              "tube",
              new RoundType(QuantityType.list(Dimension.LENGTH, 3, SIZE)),
              "the shape: outer diameter, inner diameter, length and axis",
              "\"120 30 40 mm z\""),
          optional(
              "sphere",
              QuantityType.of(Dimension.LENGTH, SIZE),
              "the shape: diameter",
              "\"75 mm\""),
          optional(
              "shapeAt",
              SharedFields.POINT,
              "the middle of the shape in the grip frame, where it is not straight below the grip",
              "\"0 0 130 mm\""),
          required(
              "inertia",
              new EitherType(List.of(SIX, new ChoiceType(UNIFORM))),
              "how the mass is spread: from the shape, or xx yy zz xy xz yz about the centre of"
                  + " mass",
              "\"uniform box\""),
          optional("material", new TextType(), "what the part is made of", "\"corrugated board\""),
          optional("damage", new ObjectType(DAMAGE), "what the part bears without harm", ""),
          optional("drag", new ObjectType(DRAG), "what the air does to the moved part", ""));

  private static final ObjectSpec TOOL =
      ObjectSpec.of(
          "tool",
          "what the flange carries besides the part, in the frame of the flange",
          required(
              "mass", QuantityType.of(Dimension.MASS, MASS), "the mass of the tool", "\"3.1 kg\""),
          required(
              "centreOfMass",
              SharedFields.POINT,
              "the tool's centre of mass, flange frame",
              "\"0 0 60 mm\""),
          optional(
              "inertia",
              SIX,
              "xx yy zz xy xz yz about the tool's centre of mass; a point if left out",
              "\"0.02 0.02 0.01 0 0 0 kg*m^2\""),
          required(
              "flangeToGrip",
              new ObjectType(SharedFields.POSE),
              "the grip frame as seen from the flange; not turned if it says no orientation",
              "{ \"at\": \"0 0 180 mm\" }"),
          optional(
              "flange",
              new TextType(),
              "the designation of the mechanical interface: pitch circle, holes, thread",
              "\"ISO 9409-1-50-4-M6\""));

  private static final ObjectSpec LIMITS =
      ObjectSpec.of(
          "limits",
          "the most that any move may ask for",
          optional("speed", SharedFields.speed(false), "largest speed", "\"1.8 m/s\""),
          optional(
              "acceleration",
              SharedFields.acceleration(false),
              "largest acceleration",
              "\"9 m/s^2\""),
          optional("jerk", SharedFields.jerk(false), "largest jerk", "\"90 m/s^3\""),
          optional(
              "turnSpeed", SharedFields.turnSpeed(false), "largest turning speed", "\"180 deg/s\""),
          optional(
              "turnAcceleration",
              SharedFields.turnAcceleration(false),
              "largest turning acceleration",
              "\"720 deg/s^2\""),
          optional(
              "turnJerk",
              SharedFields.turnJerk(false),
              "largest turning jerk",
              "\"7200 deg/s^3\""));

  /** The whole file. */
  static final ObjectSpec SCENE =
      ObjectSpec.of(
          "scene",
          "one job: a part, a grip, a route and what must be shown",
          required(
              "format",
              new ChoiceType(List.of(Scene.FORMAT)),
              "the version of the format",
              "\"" + Scene.FORMAT + "\""),
          optional("title", new TextType(), "one line for headings", "\"Crates onto a pallet\""),
          optional("site", new ObjectType(SITE), "where the job is done", ""),
          required("part", new ObjectType(PART), "what is carried", ""),
          required("grip", new KindType(GripKinds.specs()), "what carries it", ""),
          optional("tool", new ObjectType(TOOL), "what the flange carries besides the part", ""),
          optional(
              "robot",
              new KindType(RobotKinds.specs()),
              "what moves the grip; free if left out",
              "{ \"kind\": \"free\" }"),
          optional("limits", new ObjectType(LIMITS), "the most that any move may ask for", ""),
          optional(
              "law",
              new ChoiceType(Stream.of(LawKind.values()).map(LawKind::label).toList()),
              "the motion law of every move of a planned route",
              "\"s-curve\""),
          optional(
              "override",
              new PercentType(),
              "plays every move of a planned route slower, waits as they are",
              "\"50 %\""),
          required(
              "route",
              RouteSpec.ROUTE,
              "the steps of the job in their order, or a recording",
              "[ { \"start\": { \"at\": \"0.9 0 0.4 m\", \"rpy\": \"180 0 0 deg\" } } ]"),
          optional(
              "origins",
              new OriginsType(),
              "where values come from: measured, data sheet, estimated or assumed",
              "{ \"part/mass\": \"measured\" }"));

  private SceneSpec() {}
}
