package io.github.holdpath.sim.scene.read;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.motion.joint.JointFault;
import io.github.holdpath.sim.motion.joint.JointOutcome;
import io.github.holdpath.sim.motion.joint.JointStart;
import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.motion.route.JointRoute;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.RobotCell;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.Pointers;
import io.github.holdpath.sim.scene.robot.RobotKinds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Builds the robot, and lets it follow the motion. */
final class RobotStep {
  private static final String NO_TOOL =
      "The scene has no tool: the robot's flange counts as the grip frame; give tool/flangeToGrip.";

  private final Values scene;
  private final JsonNode root;
  private final Optional<Scene.Tool> tool;
  private final Faults faults;
  private final Optional<RobotKinds.Built> built;

  /**
   * Builds the robot.
   *
   * @param scene checked fields of the file
   * @param root nodes of the file
   * @param beside where a robot's file stands
   * @param tool between flange and grip
   */
  RobotStep(Values scene, JsonNode root, Beside beside, Optional<Scene.Tool> tool, Faults faults) {
    this.scene = scene;
    this.root = root;
    this.tool = tool;
    this.faults = faults;
    built =
        scene
            .group("robot")
            .filter(r -> !RobotKinds.free(r))
            .flatMap(r -> RobotKinds.build(r, beside, faults));
  }

  /** The robot; empty if there is none, or faults were noted. */
  Optional<Robot> robot() {
    return built.map(RobotKinds.Built::robot);
  }

  private Pose grip() {
    return tool.map(Scene.Tool::flangeToGrip).orElse(Pose.IDENTITY);
  }

  /**
   * Lets the robot follow a motion.
   *
   * @param spacing of its joints' samples, s
   * @return empty if there is no robot, or faults were noted
   */
  Optional<RobotCell> follow(MotionSource motion, double spacing) {
    if (built.isEmpty()) {
      requireNoJointMove(motion);
      return Optional.empty();
    }
    Robot robot = built.get().robot();
    JointStart start = built.get().start();
    JointOutcome outcome =
        motion instanceof Route route
            ? JointRoute.follow(robot, grip(), route, start, spacing)
            : JointTrack.follow(robot, grip(), motion.motion(), start, true, spacing);
    if (outcome instanceof JointFault fault) {
      for (JointFault each : fault.all()) {
        faults.add(place(each.pointer().isEmpty() ? "route/0" : each.pointer()), each.words());
      }
      return Optional.empty();
    }
    List<String> notes = new ArrayList<>(built.get().notes());
    if (tool.isEmpty()) {
      notes.add(NO_TOOL);
    }
    String kind = scene.group("robot").flatMap(r -> r.text("kind")).orElseThrow();
    return Optional.of(new RobotCell(kind, (JointTrack) outcome, notes));
  }

  private void requireNoJointMove(MotionSource motion) {
    if (motion instanceof Route route) {
      route
          .firstJointMove()
          .ifPresent(
              move ->
                  faults.add(
                      place(move.pointer() + "/joint"),
                      "a move along the joints needs a robot that has joints; give robot a kind,"
                          + " for example \"scara\", or write \"line\" in place of \"joint\""));
    }
  }

  private JsonNode.Place place(String pointer) {
    return Pointers.find(root, pointer).map(JsonNode::place).orElseGet(() -> scene.place("route"));
  }
}
