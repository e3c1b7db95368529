package io.github.holdpath.sim.robot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which of several postures to begin with. The rule: of those inside the joint limits, the one in
 * which the room of the joint nearest its stop ({@link JointLimits#room}) times the Jacobian's
 * condition (least singular value by greatest) is largest. Ties go to the first.
 */
public final class StartChoice {
  private StartChoice() {}

  /**
   * Postures inside the joint limits, the best first; empty if none is.
   *
   * @param robot the robot
   * @param postures as it answered
   */
  public static List<Posture> ranked(Robot robot, List<Posture> postures) {
    FlangeSolver solver = new FlangeSolver(robot);
    record Scored(Posture posture, double score) {}
    List<Scored> scored = new ArrayList<>();
    for (Posture posture : postures) {
      double room = room(robot, posture);
      if (room >= 0) {
        scored.add(new Scored(posture, room * solver.conditionAt(posture.values())));
      }
    }
    return scored.stream()
        .sorted(Comparator.comparingDouble(Scored::score).reversed())
        .map(Scored::posture)
        .toList();
  }

  /** Room of the joint that is nearest its stop; negative beyond. */
  static double room(Robot robot, Posture posture) {
    double least = 1;
    double[] q = posture.values();
    for (int k = 0; k < q.length; k++) {
      least = Math.min(least, robot.joints().get(k).limits().room(q[k]));
    }
    return least;
  }
}
