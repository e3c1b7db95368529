package io.github.holdpath.sim.motion;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Reach;
import io.github.holdpath.sim.robot.RobotJoint;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sentences about joints, in mm and degrees. */
final class JointWords {
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

  private JointWords() {}

  static String place(Vec3 p) {
    return text("(%.3f %.3f %.3f m)", p.x() + 0.0, p.y() + 0.0, p.z() + 0.0);
  }

  static String outOfReach(double time, Reach.Unreachable why, String place) {
    boolean angle =
        why.cause() == Reach.Cause.CANNOT_LEAN || why.cause() == Reach.Cause.CANNOT_TURN;
    return text(
        "out of the robot's reach from %.3f s on: %s, by %s at most, with the grip at %s; look at"
            + " the point, at robot/base and at tool/flangeToGrip",
        time, why.reason(), angle ? degrees(why.measure()) : millimetres(why.measure()), place);
  }

  static String singular(double time, String place, boolean lost) {
    return text(
        "at %.3f s, with the grip at %s, the robot meets a singular place, where a joint would have"
            + " to %s; put the path elsewhere, turn the tool, or give joints another \"start\"",
        time, place, lost ? "jump" : "move without bounds");
  }

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
    String place = place(pose.position());
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

  static String past(RobotJoint joint, JointPast p) {
    boolean low = p.value() < joint.limits().lower();
    double bound = low ? joint.limits().lower() : joint.limits().upper();
    return text(
        "joint %s passes its %s stop of %s at %.3f s, by %s at most, at %.3f s; put the path"
            + " elsewhere, or give joints another \"start\"",
        joint.name(),
        low ? "lower" : "upper",
        value(joint, bound),
        p.from(),
        value(joint, p.beyond()),
        p.time());
  }

  /** One sentence for each stretch that is slowed. */
  static List<String> slowed(List<JointSlowing> slowings, Motion motion) {
    List<String> list = new ArrayList<>();
    for (JointSlowing s : slowings) {
      boolean one = s.fromSegment() == s.toSegment();
      String moves =
          one
              ? name(motion, s.fromSegment())
              : name(motion, s.fromSegment()) + " to " + s.toSegment();
      list.add(
          text(
              "The robot plays move%s %s at %.1f %% of its speed (acceleration at %.1f %%), so that"
                  + " %s keeps its greatest %s.",
              one ? "" : "s",
              moves,
              100 * s.factor(),
              100 * s.factor() * s.factor(),
              s.joint(),
              s.bySpeed() ? "speed" : "acceleration"));
    }
    return list;
  }

  private static String name(Motion motion, int segment) {
    String name = motion.segments().get(segment - 1).name();
    return segment + (name.isEmpty() ? "" : " (" + name + ")");
  }

  static String value(RobotJoint joint, double value) {
    return joint.kind().turns() ? degrees(value) : millimetres(value);
  }

  private static String degrees(double angle) {
    return plain(Math.toDegrees(angle)) + " deg";
  }

  private static String millimetres(double length) {
    return plain(1000 * length) + " mm";
  }

  /** A number with at least its whole digits and at most three that count behind them. */
  private static String plain(double value) {
    BigDecimal d = new BigDecimal(value);
    int whole = Math.max(0, d.precision() - d.scale());
    BigDecimal round = d.round(new MathContext(Math.max(3, whole))).stripTrailingZeros();
    return (round.signum() == 0 ? BigDecimal.ZERO : round).toPlainString();
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
