package io.github.holdpath.sim.robot;

import java.util.Locale;

/** Answer to whether a robot can follow a path, in one go and without changing its branch. */
public sealed interface Following {
  /**
   * It can.
   *
   * @param path joint values along the path
   * @param leastCondition least of the Jacobian's conditions along it, 0 to 1: small is near a
   *     singularity
   * @param leastConditionAt where that is, path parameter
   */
  record Followed(JointPath path, double leastCondition, double leastConditionAt)
      implements Following {}

  /**
   * A part of the path is out of reach.
   *
   * @param at first place out of reach, path parameter
   * @param worstAt place that is farthest out of those looked at, path parameter
   * @param why what keeps the robot from that place, and how far it is out
   */
  record OutOfReach(double at, double worstAt, Reach.Unreachable why) implements Following {}

  /**
   * A joint leaves its range.
   *
   * @param joint name
   * @param at first place past the stop, path parameter
   * @param value the joint's value where it is farthest out, rad or m
   * @param beyond how far that is beyond the stop, rad or m, positive
   * @param worstAt place where that is, path parameter
   */
  record PastLimit(String joint, double at, double value, double beyond, double worstAt)
      implements Following {}

  /**
   * The path meets a singularity, where a joint would have to move without bounds or the arm could
   * change its branch.
   *
   * @param at place, path parameter
   * @param condition least by greatest singular value there, as far as it was followed
   */
  record Singular(double at, double condition) implements Following {}

  /** One line that says what was found, in SI units. */
  default String words() {
    if (this instanceof OutOfReach out) {
      return line(
          "out of reach from %.6g of the path on: %s, by %.3g at %.6g",
          out.at, out.why.reason(), out.why.measure(), out.worstAt);
    }
    if (this instanceof PastLimit past) {
      return line(
          "joint %s passes its stop at %.6g of the path, and is %.3g beyond it at %.6g",
          past.joint, past.at, past.beyond, past.worstAt);
    }
    if (this instanceof Singular singular) {
      return line(
          "singular at %.6g of the path (condition %.2g): a joint would have to move without"
              + " bounds; shift the path, lean the tool or begin in another posture",
          singular.at, singular.condition);
    }
    return "the robot follows the whole path";
  }

  private static String line(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
