package io.github.holdpath.sim.scene.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.sim.motion.joint.JointStart;
import io.github.holdpath.sim.robot.Delta;
import io.github.holdpath.sim.robot.Gantry;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.Scara;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.Amount;
import io.github.holdpath.sim.scene.route.PoseBuilder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The kinds of robot: their fields, and the robot built from them. */
public final class RobotKinds {
  private final Values v;
  private final Faults faults;

  private RobotKinds(Values v, Faults faults) {
    this.v = v;
    this.faults = faults;
  }

  /** Fields of every kind. */
  public static List<ObjectSpec> specs() {
    return List.of(
        RobotFields.FREE,
        RobotFields.GANTRY,
        RobotFields.SCARA,
        RobotFields.DELTA,
        RobotFields.URDF);
  }

  /**
   * A robot as read.
   *
   * @param robot it
   * @param start where its joints begin, as far as the file says it
   * @param notes what the result must say of it, a sentence each
   */
  public record Built(Robot robot, JointStart start, List<String> notes) {
    /** Copies the list. */
    public Built {
      notes = List.copyOf(notes);
    }
  }

  /** Whether these fields ask for no robot. */
  public static boolean free(Values fields) {
    return fields.spec() == RobotFields.FREE;
  }

  /**
   * Builds a robot.
   *
   * @param fields of a kind that is not free
   * @param beside where a robot's file stands
   * @return empty if faults were noted
   */
  public static Optional<Built> build(Values fields, Beside beside, Faults faults) {
    int before = faults.count();
    RobotKinds kinds = new RobotKinds(fields, faults);
    Optional<Built> built;
    if (fields.spec() == RobotFields.URDF) {
      built = new UrdfInput(fields, beside, faults).build(kinds.base(), kinds.payload());
    } else if (fields.spec() == RobotFields.GANTRY) {
      built = kinds.gantry();
    } else if (fields.spec() == RobotFields.SCARA) {
      built = kinds.scara();
    } else {
      built = kinds.delta();
    }
    return faults.count() > before ? Optional.empty() : built;
  }

  private Pose base() {
    return v.group("base")
        .flatMap(p -> PoseBuilder.build(p, Quaternion.IDENTITY, faults))
        .orElse(Pose.IDENTITY);
  }

  private Pose mount() {
    return v.group("mount")
        .flatMap(p -> PoseBuilder.build(p, Robot.HANGING.rotation(), faults))
        .orElse(Robot.HANGING);
  }

  private OptionalDouble payload() {
    return v.number("payload");
  }

  private Optional<Built> gantry() {
    List<String> axes = List.of("x", "y", "z", "turn");
    if (axes.stream().noneMatch(v::isThere)) {
      faults.add(
          v.place(),
          "has no axis; give those that move, for example \"x\": { \"range\": \"0 2500 mm\","
              + " \"speed\": \"2 m/s\" }");
      return Optional.empty();
    }
    Gantry robot =
        new Gantry(axis("x"), axis("y"), axis("z"), axis("turn"), mount(), base(), payload());
    return built(robot, axes.stream().filter(v::isThere));
  }

  private Optional<Built> scara() {
    OptionalDouble upper = v.number("upperArm");
    OptionalDouble fore = v.number("foreArm");
    if (upper.isEmpty() || fore.isEmpty()) {
      return Optional.empty();
    }
    Scara robot =
        new Scara(
            upper.getAsDouble(),
            fore.getAsDouble(),
            limits("shoulder"),
            limits("elbow"),
            limits("lift"),
            limits("turn"),
            mount(),
            base(),
            payload());
    return built(robot, Stream.of("shoulder", "elbow", "lift", "turn"));
  }

  private Optional<Built> delta() {
    List<OptionalDouble> sizes =
        Stream.of("baseRadius", "platformRadius", "upperArm", "rod").map(v::number).toList();
    if (sizes.stream().anyMatch(OptionalDouble::isEmpty)) {
      return Optional.empty();
    }
    double[] s = sizes.stream().mapToDouble(OptionalDouble::getAsDouble).toArray();
    if (Math.abs(s[0] - s[1]) >= s[2] + s[3]) {
      faults.add(
          v.place("rod"), "the arms cannot meet: look at the four lengths, or give a longer rod");
      return Optional.empty();
    }
    Delta robot =
        new Delta(s[0], s[1], s[2], s[3], limits("arm"), axis("turn"), mount(), base(), payload());
    Stream<String> axes = Stream.of("arm", "arm", "arm");
    return built(robot, v.isThere("turn") ? Stream.concat(axes, Stream.of("turn")) : axes);
  }

  private Optional<Built> built(Robot robot, Stream<String> axes) {
    List<OptionalDouble> near =
        axes.map(a -> v.group(a).map(g -> g.number("start")).orElse(OptionalDouble.empty()))
            .toList();
    return Optional.of(new Built(robot, new JointStart(near), List.of()));
  }

  private Optional<JointLimits> axis(String name) {
    return v.isThere(name) ? Optional.of(limits(name)) : Optional.empty();
  }

  private JointLimits limits(String name) {
    return v.group(name).map(a -> limits(a, JointLimits.NONE, faults)).orElse(JointLimits.NONE);
  }

  /**
   * Limits of an axis.
   *
   * @param axis its fields
   * @param otherwise what counts where the file says nothing
   */
  static JointLimits limits(Values axis, JointLimits otherwise, Faults faults) {
    Optional<Amount> range = axis.amount("range");
    double lower = range.map(r -> r.get(0)).orElse(otherwise.lower());
    double upper = range.map(r -> r.get(1)).orElse(otherwise.upper());
    if (!(lower < upper)) {
      faults.add(
          axis.place("range"),
          "leaves no room: write the lower stop first, then the upper one, for example \"-170 170"
              + " deg\" or \"0 2500 mm\"");
      return otherwise;
    }
    return new JointLimits(
        lower,
        upper,
        axis.number("speed").orElse(otherwise.speed()),
        axis.number("acceleration").orElse(otherwise.acceleration()),
        otherwise.effort());
  }
}
