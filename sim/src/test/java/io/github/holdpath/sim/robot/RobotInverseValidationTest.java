package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * The joint log of an industrial arm, found again from its flange poses, which another program
 * computed (compared there with Orocos KDL 1.5.1). Origin and attribution:
 * reference/robot/README.md.
 */
class RobotInverseValidationTest {
  /** Half the last printed digit of poses (m, and quaternion parts) and joints. */
  private static final double PRINTED = 1e-7;

  @Test
  void jointsOfTheLogAreAmongThePosturesOfItsPoses() throws IOException {
    Map<String, Map<String, String>> poses = new HashMap<>();
    for (Map<String, String> row : Arms.table("/reference/recording/arm-poses.csv")) {
      poses.put(Objects.requireNonNull(row.get("t")), row);
    }
    SerialArm arm = new SerialArm(Arms.logged(), Pose.IDENTITY, OptionalDouble.empty());
    FlangeSolver solver = new FlangeSolver(arm);
    int compared = 0;
    for (Map<String, String> row : Arms.table("/reference/robot/arm-joints.csv")) {
      double[] joints =
          Arms.numbers(row, "joint_1", "joint_2", "joint_3", "joint_4", "joint_5", "joint_6");
      Map<String, String> theirs = Objects.requireNonNull(poses.get(row.get("t")));
      double[] x = Arms.numbers(theirs, "x", "y", "z", "qw", "qx", "qy", "qz");
      Pose pose = new Pose(new Vec3(x[0], x[1], x[2]), new Quaternion(x[3], x[4], x[5], x[6]));
      Reach reach = arm.inverse(pose);
      if (reach instanceof Reach.Unreachable out) {
        // The arm stands stretched, and the printed pose is a hair beyond that.
        assertTrue(out.measure() < PRINTED, out.toString());
        continue;
      }
      List<Posture> postures = assertInstanceOf(Reach.Reached.class, reach).postures();
      double nearest = Double.POSITIVE_INFINITY;
      for (Posture posture : postures) {
        nearest = Math.min(nearest, apart(solver, joints, posture.values()));
      }
      // Printing errs by a few digits in six numbers, lengths weigh by 1 / 0.6 m, and the least
      // singular value magnifies them.
      double condition = solver.conditionAt(joints);
      if (condition > 0.01) {
        assertEquals(0, nearest, 10 * PRINTED / condition);
        compared++;
      }
    }
    // In the others the arm stands stretched or its wrist straight.
    assertTrue(compared > 300, "compared only " + compared + " of 450");
  }

  /** The log's fourth and sixth joints go beyond half a turn; postures are given inside it. */
  private static double apart(FlangeSolver solver, double[] logged, double[] found) {
    double[] turned = found.clone();
    for (int k = 0; k < 6; k++) {
      turned[k] += 2 * Math.PI * Math.rint((logged[k] - found[k]) / (2 * Math.PI));
    }
    return solver.size(logged, turned);
  }
}
