package io.github.holdpath.sim.report;

import io.github.holdpath.sim.study.JointUse;
import io.github.holdpath.sim.study.StudyResult;
import java.util.OptionalDouble;

/** The block of {@code check} about the robot. */
final class RobotWords {
  private static final int NAMED = 18;

  private RobotWords() {}

  /** Lines ended by a line feed. */
  static String block(StudyResult result, JointUse use) {
    StringBuilder out = new StringBuilder("\nRobot (");
    out.append(use.kind()).append("), most that its joints are used, per cent of their limits:\n");
    out.append("  ").append(Text.left("joint", NAMED));
    out.append("range  speed accel. torque  most in\n");
    for (JointUse.Peaks joint : use.joints()) {
      JointUse.Uses u = joint.uses();
      out.append("  ").append(Text.left(joint.name(), NAMED - 1));
      for (OptionalDouble share : new OptionalDouble[] {u.range(), u.speed(), u.acceleration()}) {
        out.append(percent(share)).append(' ');
      }
      out.append(percent(u.torque()));
      String where =
          joint.nearest().map(n -> "  " + Words.segment(result, n.segment())).orElse("  -");
      out.append(Text.left(where, Text.WIDTH - NAMED - 30).stripTrailing()).append('\n');
    }
    return out.toString();
  }

  /** Rounded up: what is near a limit is not shown as far from it. */
  private static String percent(OptionalDouble share) {
    if (share.isEmpty()) {
      return Text.right("-", 6);
    }
    double up = Math.ceil(100 * share.getAsDouble() - 1e-4);
    return Text.right(Text.number(up, Math.max(3, 1 + (int) Math.log10(Math.max(1, up)))), 6);
  }
}
