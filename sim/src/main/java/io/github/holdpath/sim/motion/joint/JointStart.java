package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.sim.robot.Posture;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.robot.StartChoice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where joints begin, as far as the user says it.
 *
 * @param near value near which each joint begins, rad or m; empty where it is left to the rule of
 *     {@link StartChoice}
 */
public record JointStart(List<OptionalDouble> near) {
  /** Copies the list. */
  public JointStart {
    near = List.copyOf(near);
  }

  /** Nothing said. */
  public static JointStart any(Robot robot) {
    return new JointStart(robot.joints().stream().map(j -> OptionalDouble.empty()).toList());
  }

  /** Whether anything is said. */
  public boolean said() {
    return near.stream().anyMatch(OptionalDouble::isPresent);
  }

  /**
   * Joint values to begin with, the best first: those within the ranges; where something is said,
   * only the nearest to it.
   *
   * @param postures that reach the beginning
   */
  public List<double[]> candidates(Robot robot, List<Posture> postures) {
    if (!said()) {
      return StartChoice.ranked(robot, postures).stream().map(Posture::values).toList();
    }
    List<double[]> turned = new ArrayList<>();
    for (Posture posture : postures) {
      double[] q = posture.values();
      for (int k = 0; k < q.length; k++) {
        RobotJoint joint = robot.joints().get(k);
        if (near.get(k).isPresent() && joint.kind().turns()) {
          double turns = Math.rint((near.get(k).getAsDouble() - q[k]) / (2 * Math.PI));
          q[k] += 2 * Math.PI * turns;
        }
      }
      turned.add(q);
    }
    return turned.stream().sorted(Comparator.comparingDouble(this::away)).limit(1).toList();
  }

  private double away(double[] q) {
    double sum = 0;
    for (int k = 0; k < q.length; k++) {
      if (near.get(k).isPresent()) {
        double d = q[k] - near.get(k).getAsDouble();
        sum += d * d;
      }
    }
    return sum;
  }
}
