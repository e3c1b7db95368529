package io.github.holdpath.sim.scene;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.robot.Robot;
import java.util.List;

/**
 * The robot of a scene, as it makes the scene's motion.
 *
 * @param kind as scene files name it, as {@code scara}
 * @param track how its joints go
 * @param notes what the result must say of it, a sentence each
 */
public record RobotCell(String kind, JointTrack track, List<String> notes) {
  /** Copies the list. */
  public RobotCell {
    notes = List.copyOf(notes);
  }

  /** The robot. */
  public Robot robot() {
    return track.robot();
  }

  /** Pose of the grip frame in the flange, {@code X_FT}. */
  public Pose grip() {
    return track.grip();
  }
}
