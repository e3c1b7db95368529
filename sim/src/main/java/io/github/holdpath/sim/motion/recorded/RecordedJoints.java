package io.github.holdpath.sim.motion.recorded;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.robot.Robot;
import java.util.List;

/**
 * Joint values of a recording.
 *
 * @param robot whose joints they are
 * @param grip pose of the grip frame in the flange, {@code X_FT}
 * @param rows one list for each time, rad or m, in the order of the robot's joints
 */
public record RecordedJoints(Robot robot, Pose grip, List<List<Double>> rows) {
  /** Copies the lists; refuses rows of another length than the robot has joints. */
  public RecordedJoints {
    rows = rows.stream().map(List::copyOf).toList();
    int n = robot.joints().size();
    if (rows.stream().anyMatch(r -> r.size() != n)) {
      throw new IllegalArgumentException("rows must have " + n + " values, one for each joint");
    }
  }
}
