package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Flange poses of an industrial arm along its joint log, computed elsewhere and compared there with
 * an independent kinematics library (Orocos KDL 1.5.1). Origin and attribution:
 * reference/robot/README.md.
 */
class ChainValidationTest {
  /** Poses and joints are printed to 1e-7: half a digit of each, joints with a lever of 0.5 m. */
  private static final double POSITION = 2e-7;

  private static final double ANGLE = 1e-6;

  @Test
  void posesOfTheLogAreThoseOfTheTable() throws IOException {
    Map<String, Map<String, String>> poses = new HashMap<>();
    for (Map<String, String> row : Arms.table("/reference/recording/arm-poses.csv")) {
      poses.put(Objects.requireNonNull(row.get("t")), row);
    }
    Chain arm = Arms.logged();
    List<Map<String, String>> rows = Arms.table("/reference/robot/arm-joints.csv");
    for (Map<String, String> row : rows) {
      Pose ours =
          arm.flangeAt(
              Arms.numbers(row, "joint_1", "joint_2", "joint_3", "joint_4", "joint_5", "joint_6"));
      Map<String, String> theirs = Objects.requireNonNull(poses.get(row.get("t")));
      double[] x = Arms.numbers(theirs, "x", "y", "z", "qw", "qx", "qy", "qz");
      assertEquals(0, ours.position().minus(new Vec3(x[0], x[1], x[2])).norm(), POSITION);
      assertEquals(0, ours.rotation().angleTo(new Quaternion(x[3], x[4], x[5], x[6])), ANGLE);
    }
    assertEquals(450, rows.size());
  }

  /** The log moves through a good part of the limits and stays inside them. */
  @Test
  void logStaysInsideThePublishedLimits() throws IOException {
    Chain arm = Arms.logged();
    for (Map<String, String> row : Arms.table("/reference/robot/arm-joints.csv")) {
      for (int k = 0; k < 6; k++) {
        assertTrue(arm.limits(k).allow(Arms.number(row, "joint_" + (k + 1))));
      }
    }
  }
}
