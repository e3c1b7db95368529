package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.robot.Reach;
import io.github.holdpath.sim.robot.RobotJoint;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sentences about joints, in mm and degrees. */
public final class JointWords {
  private JointWords() {}

  /** A place in the world, in m. */
  public static String place(Vec3 p) {
    return text("(%.3f %.3f %.3f m)", p.x() + 0.0, p.y() + 0.0, p.z() + 0.0);
  }

  /**
   * Why a robot does not reach, and what to look at.
   *
   * @param time first instant out of reach, s
   * @param why where it is farthest out
   * @param place of the grip there
   */
  public static String outOfReach(double time, Reach.Unreachable why, String place) {
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
