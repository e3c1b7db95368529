package io.github.holdpath.sim.scene.recording;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.recorded.Recording;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.Pointers;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Builds a recorded motion. */
public final class RecordingBuilder {
  private static final List<String> QUATERNION = List.of("qw", "qx", "qy", "qz");
  private static final List<String> POSITION = List.of("x", "y", "z");
  private static final List<String> ANGLES = List.of("roll", "pitch", "yaw");

  private final Values scene;
  private final JsonNode root;
  private final Beside beside;
  private final Optional<Scene.Tool> tool;
  private final Optional<Robot> robot;
  private final Faults faults;

  /**
   * Begins.
   *
   * @param scene checked fields of the file
   * @param root nodes of the file
   * @param beside where the recording stands
   * @param tool for a recording of the flange or of joints
   * @param robot for a recording of joints
   */
  public RecordingBuilder(
      Values scene,
      JsonNode root,
      Beside beside,
      Optional<Scene.Tool> tool,
      Optional<Robot> robot,
      Faults faults) {
    this.scene = scene;
    this.root = root;
    this.beside = beside;
    this.tool = tool;
    this.robot = robot;
    this.faults = faults;
  }

  /**
   * Reads the recording.
   *
   * @param route checked fields of the route
   * @return empty if faults were noted
   */
  public Optional<Recording> build(Values route) {
    for (String planned : List.of("law", "override")) {
      if (scene.isThere(planned)) {
        faults.add(
            scene.place(planned),
            "belongs to a planned route, while a recording brings its own times; take it out");
      }
    }
    Optional<Values> recording = route.group("recording");
    if (recording.isEmpty()) {
      return Optional.empty();
    }
    int before = faults.count();
    Optional<RecordingSpec> spec = spec(recording.get());
    if (spec.isEmpty() || faults.count() > before) {
      return Optional.empty();
    }
    try {
      return Optional.of(RecordingReader.read(spec.get(), beside, this::fault));
    } catch (SceneException e) {
      faults.addAll(e.faults());
      return Optional.empty();
    }
  }

  private Fault fault(String pointer, String message) {
    JsonNode.Place at =
        Pointers.find(root, pointer).map(JsonNode::place).orElseGet(() -> scene.place("route"));
    return new Fault(at.source(), at.line(), at.column(), pointer, message);
  }

  private Optional<RecordingSpec> spec(Values v) {
    Optional<String> file = v.text("file");
    Optional<String> frame = v.text("frame");
    boolean joints = frame.equals(Optional.of("joints"));
    if (joints && (!scene.isThere("robot") || (robot.isEmpty() && isFree()))) {
      faults.add(
          v.place("frame"),
          "joint values need the robot whose joints they are; give robot with its kind");
    }
    Optional<RecordingColumns> columns =
        v.group("columns").flatMap(c -> joints ? jointColumns(c) : columns(c));
    Optional<RecordingUnits> units =
        joints
            ? v.group("units").flatMap(this::jointUnits)
            : v.group("units")
                .flatMap(u -> units(u, columns.map(c -> !c.quaternion()).orElse(false)));
    boolean flange = frame.equals(Optional.of("flange"));
    if (flange && !scene.isThere("tool")) {
      faults.add(
          v.place("frame"),
          "poses of the flange need tool/flangeToGrip, but there is no tool; give it, or record the"
              + " \"grip\"");
    }
    boolean readable =
        Stream.of("separator", "cutoff", "held", "decimalComma")
            .allMatch(name -> !v.isThere(name) || isRead(v, name));
    Optional<Pose> toGrip =
        flange || (joints && scene.isThere("tool"))
            ? tool.map(Scene.Tool::flangeToGrip)
            : Optional.of(Pose.IDENTITY);
    if (file.isEmpty()
        || frame.isEmpty()
        || columns.isEmpty()
        || units.isEmpty()
        || toGrip.isEmpty()
        || !readable) {
      return Optional.empty();
    }
    Optional<Values> held = v.group("held");
    return Optional.of(
        new RecordingSpec(
            beside.folder(),
            file.get(),
            joints ? RecordingFrame.JOINTS : flange ? RecordingFrame.FLANGE : RecordingFrame.GRIP,
            toGrip.get(),
            v.text("separator").map(RecordingBuilder::separator).orElse(','),
            v.value("decimalComma", Boolean.class).orElse(false),
            columns.get(),
            units.get(),
            held.map(h -> h.number("from")).orElse(OptionalDouble.empty()),
            held.map(h -> h.number("to")).orElse(OptionalDouble.empty()),
            v.number("cutoff").orElse(RecordingSpec.DEFAULT_CUTOFF),
            robot));
  }

  private boolean isFree() {
    return scene.group("robot").flatMap(r -> r.text("kind")).equals(Optional.of("free"));
  }

  private Optional<RecordingColumns> jointColumns(Values c) {
    for (String name : Stream.of(POSITION, QUATERNION, ANGLES).flatMap(List::stream).toList()) {
      if (c.isThere(name)) {
        faults.add(c.place(name), "belongs to poses, but the frame is joints; take it out");
      }
    }
    if (!c.isThere("joints")) {
      faults.add(
          c.place("joints"),
          "is missing: the columns of the joints, in the order from the robot's base; for example"
              + " [ \"J1\", \"J2\" ]");
    }
    List<String> names = c.items("joints", String.class);
    Optional<String> time = c.text("time");
    if (names.isEmpty() || time.isEmpty() || robot.isEmpty()) {
      return Optional.empty();
    }
    int due = robot.get().joints().size();
    if (names.size() != due) {
      faults.add(
          c.place("joints"),
          "names "
              + names.size()
              + " columns, but the robot has "
              + due
              + " joints with a drive; it needs "
              + robot.get().joints().stream().map(RobotJoint::name).toList());
      return Optional.empty();
    }
    return Optional.of(new RecordingColumns(time.get(), List.of(), names));
  }

  private Optional<RecordingUnits> jointUnits(Values u) {
    boolean turns =
        robot.stream().flatMap(r -> r.joints().stream()).anyMatch(j -> j.kind().turns());
    boolean slides =
        robot.stream().flatMap(r -> r.joints().stream()).anyMatch(j -> !j.kind().turns());
    if (turns && !u.isThere("angle")) {
      faults.add(u.place("angle"), "is missing: the unit of joints that turn; for example \"deg\"");
    }
    if (slides && !u.isThere("length")) {
      faults.add(
          u.place("length"), "is missing: the unit of joints that slide; for example \"mm\"");
    }
    Optional<Double> time = u.text("time").flatMap(t -> size(RecordingUnits.TIME, t));
    Optional<Double> length =
        slides ? u.text("length").flatMap(t -> size(RecordingUnits.LENGTH, t)) : Optional.of(1.0);
    Optional<Double> angle =
        turns ? u.text("angle").flatMap(t -> size(RecordingUnits.ANGLE, t)) : Optional.of(1.0);
    return time.isPresent() && length.isPresent() && angle.isPresent()
        ? Optional.of(new RecordingUnits(time.get(), length.get(), angle.get()))
        : Optional.empty();
  }

  private static boolean isRead(Values v, String name) {
    return v.value(name, Object.class).isPresent();
  }

  private static char separator(String name) {
    return Optional.ofNullable(RecordingFields.SEPARATORS.get(name)).orElseThrow();
  }

  private Optional<RecordingColumns> columns(Values c) {
    if (c.isThere("joints")) {
      faults.add(
          c.place("joints"), "belongs to \"frame\": \"joints\"; take it out, or name that frame");
    }
    for (String name : POSITION) {
      if (!c.isThere(name)) {
        faults.add(
            c.place(name), "is missing: the column of " + name + "; for example \"" + name + "\"");
      }
    }
    List<String> given =
        Stream.of(QUATERNION, ANGLES).flatMap(List::stream).filter(c::isThere).toList();
    boolean quaternion = QUATERNION.stream().anyMatch(given::contains);
    List<String> wanted = quaternion ? QUATERNION : ANGLES;
    if (given.isEmpty()) {
      faults.add(
          c.place(), "has no orientation; name the columns qw, qx, qy, qz or roll, pitch, yaw");
    } else if (!given.equals(wanted)) {
      faults.add(
          c.place(given.get(0)),
          "an orientation is all of qw, qx, qy, qz or all of roll, pitch, yaw, but here stand "
              + String.join(", ", given)
              + "; name all of one kind and none of the other");
    }
    Optional<String> time = c.text("time");
    List<String> position = texts(c, POSITION);
    List<String> rotation = texts(c, wanted);
    return given.equals(wanted)
            && time.isPresent()
            && position.size() == 3
            && rotation.size() == wanted.size()
        ? Optional.of(new RecordingColumns(time.get(), position, rotation))
        : Optional.empty();
  }

  private static List<String> texts(Values c, List<String> names) {
    return names.stream().flatMap(n -> c.text(n).stream()).toList();
  }

  private Optional<RecordingUnits> units(Values u, boolean angles) {
    if (!u.isThere("length")) {
      faults.add(
          u.place("length"), "is missing: the unit of the columns x, y and z; for example \"mm\"");
    }
    if (angles && !u.isThere("angle")) {
      faults.add(
          u.place("angle"),
          "is missing: the unit of the columns roll, pitch and yaw; for example \"deg\"");
    }
    Optional<Double> time = u.text("time").flatMap(t -> size(RecordingUnits.TIME, t));
    Optional<Double> length = u.text("length").flatMap(t -> size(RecordingUnits.LENGTH, t));
    Optional<Double> angle =
        angles ? u.text("angle").flatMap(t -> size(RecordingUnits.ANGLE, t)) : Optional.of(1.0);
    return time.isPresent() && length.isPresent() && angle.isPresent()
        ? Optional.of(new RecordingUnits(time.get(), length.get(), angle.get()))
        : Optional.empty();
  }

  private static Optional<Double> size(Map<String, Double> table, String unit) {
    return Optional.ofNullable(table.get(unit));
  }
}
