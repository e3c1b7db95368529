package io.github.holdpath.sim.report;

import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.joint.SlowedMotion;
import io.github.holdpath.sim.motion.route.MoveShape;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.StudyResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** What to type into a controller, move by move, and how to slow one move. */
final class Settings {
  private static final List<Quantity> QUANTITIES =
      List.of(
          new Quantity("speed", "m/s", 1, MoveLimits::speed),
          new Quantity("acceleration", "m/s^2", 2, MoveLimits::acceleration),
          new Quantity("jerk", "m/s^3", 3, MoveLimits::jerk),
          new Quantity("turnSpeed", "deg/s", 1, MoveLimits::turnSpeed),
          new Quantity("turnAcceleration", "deg/s^2", 2, MoveLimits::turnAcceleration),
          new Quantity("turnJerk", "deg/s^3", 3, MoveLimits::turnJerk));

  private Settings() {}

  /** One limit of a move; {@code order} is the power of time in it. */
  private record Quantity(
      String field, String unit, int order, ToDoubleFunction<MoveLimits> value) {
    boolean turns() {
      return field.startsWith("turn");
    }

    double shown(MoveLimits limits) {
      double v = value.applyAsDouble(limits);
      return turns() ? Math.toDegrees(v) : v;
    }
  }

  /** Moves of a route; empty for a recording. */
  static List<RouteStep.Move> moves(MotionSource source) {
    List<RouteStep.Move> moves = new ArrayList<>();
    if (source instanceof Route route) {
      for (RouteStep step : route.steps()) {
        if (step instanceof RouteStep.Move move) {
          moves.add(move);
        }
      }
    }
    return moves;
  }

  /** The share of its own speed at which the robot plays a move. */
  static double played(StudyResult result, int segment) {
    return result.motion() instanceof SlowedMotion slowed ? slowed.factor(segment) : 1;
  }

  /**
   * Speed, acceleration and jerk of one move in SI and in percent of the scene's limits, its blend
   * and its override.
   *
   * @param played the share of its own speed at which the robot plays it
   */
  static String line(Scene scene, RouteStep.Move move, double length, double turn, double played) {
    List<String> parts = new ArrayList<>();
    if (move.shape() instanceof MoveShape.Joints) {
      parts.add("joint move");
    }
    for (Quantity q : QUANTITIES) {
      double v = q.shown(move.limits()) * Math.pow(played, q.order());
      if (used(scene, q, length, turn) && Double.isFinite(v)) {
        double most = q.shown(scene.limits());
        String percent = Double.isFinite(most) ? " (" + Text.number(100 * v / most, 3) + " %)" : "";
        parts.add(words(q.field()) + " " + Text.number(v, 4) + " " + q.unit() + percent);
      }
    }
    if (move.blend() > 0) {
      parts.add("blend " + Text.number(1000 * move.blend(), 4) + " mm");
    }
    if (move.override() < 1) {
      parts.add("override " + Text.number(100 * move.override(), 3) + " %");
    }
    return String.join(", ", parts);
  }

  /** Peaks of jerk and turning that a move reaches, as far as they are bounded; may be empty. */
  static String peaks(MotionSegment move) {
    List<String> parts = new ArrayList<>();
    if (move.length() > 0) {
      peak("jerk", move.peakJerk(), "m/s^3", parts);
    }
    if (move.turn() > 0) {
      peak("turn speed", Math.toDegrees(move.peakTurnSpeed()), "deg/s", parts);
      peak("turn acceleration", Math.toDegrees(move.peakTurnAcceleration()), "deg/s^2", parts);
      peak("turn jerk", Math.toDegrees(move.peakTurnJerk()), "deg/s^3", parts);
    }
    return String.join(", ", parts);
  }

  private static void peak(String name, double value, String unit, List<String> parts) {
    if (Double.isFinite(value)) {
      parts.add(name + " " + Text.number(value, 3) + " " + unit);
    }
  }

  private static String words(String field) {
    return field.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  /**
   * The {@code --set} options that play one move k times as fast, rounded to the safe side: speed
   * times k, acceleration k^2, jerk k^3. Where the move neither turns nor meets drag the load hangs
   * on the acceleration alone, and only that is slowed. A move along the joints, which may keep
   * limits of theirs, is slowed by its override.
   */
  static List<String> slowed(
      Scene scene, RouteStep.Move move, double length, double turn, double k) {
    if (move.shape() instanceof MoveShape.Joints) {
      // The field of the move counts beside the one for all moves.
      double all = scene.motion() instanceof Route route ? route.override() : 1;
      String share = down(100 * move.override() / all * k) + " %";
      return List.of("--set \"" + move.pointer() + "/override=" + share + "\"");
    }
    boolean onlyAcceleration = turn == 0 && scene.part().air().dragArea() == 0;
    List<String> options = new ArrayList<>();
    for (Quantity q : QUANTITIES) {
      double now = q.shown(move.limits());
      if (!used(scene, q, length, turn) || !Double.isFinite(now)) {
        continue;
      }
      if (onlyAcceleration && q.order() != 2) {
        continue;
      }
      Quantity twin = QUANTITIES.get((QUANTITIES.indexOf(q) + 3) % 6);
      double share = now / q.shown(scene.limits());
      double twinShare = twin.shown(move.limits()) / twin.shown(scene.limits());
      // Percents act on travel and turning alike.
      boolean both = length > 0 && turn > 0;
      boolean limited = Double.isFinite(q.shown(scene.limits()));
      boolean percent = limited && (!both || Math.abs(share - twinShare) < 1e-9);
      double factor = Math.pow(k, q.order());
      if (percent && both && q.turns()) {
        continue;
      }
      String field = percent ? words(q.field()).replace("turn ", "") : q.field();
      String value =
          percent ? down(100 * share * factor) + " %" : down(now * factor) + " " + q.unit();
      options.add("--set \"" + move.pointer() + "/" + field + "=" + value + "\"");
    }
    return options;
  }

  private static boolean used(Scene scene, Quantity q, double length, double turn) {
    boolean jerk = scene.motion() instanceof Route route && route.law().boundsJerk();
    return (q.turns() ? turn : length) > 0 && (q.order() < 3 || jerk);
  }

  /** Three significant digits, towards zero. */
  private static String down(double v) {
    return new java.math.BigDecimal(v)
        .round(new java.math.MathContext(3, java.math.RoundingMode.DOWN))
        .stripTrailingZeros()
        .toPlainString();
  }
}
