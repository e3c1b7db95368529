package io.github.holdpath.sim.scene.read;

import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.RobotCell;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.field.InputNotes;
import io.github.holdpath.sim.scene.field.OriginsType;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.grip.GiveInput;
import io.github.holdpath.sim.scene.grip.GripContext;
import io.github.holdpath.sim.scene.grip.GripKinds;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.Pointers;
import io.github.holdpath.sim.scene.recording.RecordingBuilder;
import io.github.holdpath.sim.scene.route.LimitsBuilder;
import io.github.holdpath.sim.scene.route.RouteBuilder;
import java.util.List;
import java.util.Optional;

/** Builds a scene from its checked fields; judges what several fields say together. */
final class SceneBuilder {
  /** Fields on which the motion depends. */
  private static final List<String> MOVING =
      List.of("route", "robot", "tool", "limits", "law", "override");

  /** Fields that name files on which it depends. */
  private static final List<String> FILES = List.of("robot/file", "route/recording/file");

  private final Values values;
  private final JsonNode.Obj root;
  private final Beside beside;
  private final Faults faults;
  private final double spacing;
  private final InputNotes notes = new InputNotes();

  /**
   * Begins.
   *
   * @param values checked fields of the file
   * @param root nodes of the file
   * @param beside where recordings and robots' files stand
   * @param faults those found so far; takes more
   * @param spacing of the samples of a robot's joints, s
   */
  SceneBuilder(Values values, JsonNode.Obj root, Beside beside, Faults faults, double spacing) {
    this.values = values;
    this.root = root;
    this.beside = beside;
    this.faults = faults;
    this.spacing = spacing;
  }

  /**
   * Builds the scene.
   *
   * @throws SceneException with every fault
   */
  Scene build() throws SceneException {
    Optional<Scene.Site> site = SiteBuilder.build(values);
    Optional<Values> partFields = values.group("part");
    Optional<Values> gripFields = values.group("grip");
    Optional<PartBuilder> builder = partFields.map(p -> new PartBuilder(p, faults));
    Optional<PartShape> shape = builder.flatMap(PartBuilder::shape);
    boolean between = gripFields.filter(GripKinds::between).isPresent();
    Optional<Scene.Part> part = builder.flatMap(b -> b.build(shape, site, between, notes));
    GripContext context = new GripContext(site, partFields, shape, faults, notes);
    Optional<? extends GripModel> grip = gripFields.flatMap(g -> GripKinds.build(g, context));
    Optional<Scene.Give> give =
        grip.flatMap(g -> GiveInput.read(gripFields.orElseThrow(), g, context));
    boolean toolThere = values.isThere("tool");
    Optional<Scene.Tool> tool = values.group("tool").flatMap(t -> ToolBuilder.build(t, faults));
    boolean toolRead = toolThere == tool.isPresent();
    Optional<Moved> moved = moved(tool, toolRead);
    List<Scene.InputNote> inputs = notes.all(origins(), root, faults);
    faults.throwIfAny();
    return new Scene(
        values.text("title").orElse("untitled"),
        site.orElseThrow(),
        part.orElseThrow(),
        grip.orElseThrow(),
        gripFields.orElseThrow().number("requiredSafety").orElseThrow(),
        tool,
        LimitsBuilder.ofScene(values),
        moved.orElseThrow().motion(),
        inputs,
        give,
        moved.get().cell());
  }

  /**
   * How the grip is moved, which costs most to find out.
   *
   * @param motion as told
   * @param cell the robot that makes it; empty where it needs none
   */
  private record Moved(MotionSource motion, Optional<RobotCell> cell) {}

  /** All that a motion depends on. */
  private record MotionKey(
      List<Optional<JsonNode>> fields, List<Optional<Beside.Stamp>> filesBeside) {}

  /** The motion; that of the scene read before if nothing has changed on which it depends. */
  private Optional<Moved> moved(Optional<Scene.Tool> tool, boolean toolRead) {
    MotionKey key = motionKey();
    Optional<Moved> kept = beside.kept(Moved.class, key);
    if (kept.isPresent()) {
      return kept;
    }
    int before = faults.count();
    RobotStep robot = new RobotStep(values, root, beside, tool, faults);
    boolean robotRead = faults.count() == before;
    Optional<? extends MotionSource> motion = motion(tool, robot.robot());
    Optional<RobotCell> cell =
        robotRead && toolRead ? motion.flatMap(m -> robot.follow(m, spacing)) : Optional.empty();
    Optional<Moved> moved = motion.map(m -> new Moved(m, cell));
    if (faults.count() == before && toolRead && spacing <= JointTrack.STEP) {
      moved.ifPresent(m -> beside.keep(Moved.class, key, m));
    }
    return moved;
  }

  private MotionKey motionKey() {
    return new MotionKey(
        MOVING.stream().map(root::get).toList(),
        FILES.stream().map(p -> Pointers.find(root, p).flatMap(this::stamp)).toList());
  }

  private Optional<Beside.Stamp> stamp(JsonNode name) {
    return name instanceof JsonNode.Text text ? beside.stamp(text.value()) : Optional.empty();
  }

  private Optional<? extends MotionSource> motion(
      Optional<Scene.Tool> tool, Optional<Robot> robot) {
    Optional<JsonNode> route = values.node("route");
    if (route.isPresent() && route.get() instanceof JsonNode.Items) {
      return new RouteBuilder(values, faults).build();
    }
    return values
        .group("route")
        .flatMap(r -> new RecordingBuilder(values, root, beside, tool, robot, faults).build(r));
  }

  private List<OriginsType.Entry> origins() {
    return values
        .value("origins", OriginsType.Origins.class)
        .map(OriginsType.Origins::entries)
        .orElse(List.of());
  }
}
