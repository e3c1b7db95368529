package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.joint.JointWalk;
import io.github.holdpath.sim.motion.joint.JointWords;
import io.github.holdpath.sim.robot.Reach;
import io.github.holdpath.sim.robot.RobotJoint;
import java.util.Locale;

/** Sentences about moves along the joints that cannot be made. */
final class JointMoveWords {
  /** Of a robot with joints to spare. */
  static final String SPARE =
      "a robot with more than six joints has many postures for each pose, so a blend beside a move"
          + " along the joints is not determined; take the blend out";

  /** Of a corner of two moves that turn in place. */
  static final String ONLY_TURNS =
      "both moves only turn in place, where a zone has no length; take it out to stop here";

  /** Of a way that stands still for an instant. */
  static final String STANDS =
      "the grip all but stands still on its way along the joints, where no chain of blended moves"
          + " can pass; take the blend out, or put a point between";

  private JointMoveWords() {}

  static String noPlace(double u) {
    return text(
        "%.0f %% on the way along the joints the robot has no place for its flange; put a point"
            + " between",
        100 * u);
  }

  /** Why the joints do not follow a move that is joined to others by blends. */
  static String noWay(JointMoves joints, EvenPiece piece, JointWalk walk, String where) {
    double[] state = new double[MotionState.SIZE];
    piece.state(walk.stuckAt(), state);
    Pose pose = MotionState.of(state).pose();
    String place = JointWords.place(pose.position());
    if (joints.robot().inverse(pose.times(joints.grip().inverse()))
        instanceof Reach.Unreachable out) {
      return text(
          "out of the robot's reach %s: %s, with the grip at %s; look at the point, at robot/base"
              + " and at tool/flangeToGrip",
          where, out.reason(), place);
    }
    return text(
        "%s, with the grip at %s, the robot meets a singular place, where a joint would have to %s;"
            + " put the path elsewhere, turn the tool, or stop at the corner",
        where, place, walk.lost() ? "jump" : "move without bounds");
  }

  static String otherPosture(RobotJoint joint) {
    return text(
        "the blend would lead joint %s into another posture than the move along the joints has;"
            + " take a smaller zone, or take the blend out to stop here",
        joint.name());
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
