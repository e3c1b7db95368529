package io.github.holdpath.sim.report;

import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.study.LawAt;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The law of a move as {@code explain} shows it, lines of at most 80 characters. */
final class LawWords {
  private static final int DIGITS = 5;
  private static final int COLUMN = 11;

  /** Below this a speed or acceleration is the rounding of a law that rests there. */
  private static final double NOTHING = 1e-9;

  private LawWords() {}

  static List<String> lines(LawAt law) {
    List<String> lines = new ArrayList<>();
    if (law instanceof LawAt.Planned planned) {
      planned(planned, lines);
    } else if (law instanceof LawAt.Recorded) {
      lines.add("  The motion is recorded: it follows no law.");
    } else {
      lines.add("  The tool stands still: no law runs.");
    }
    return lines;
  }

  private static void planned(LawAt.Planned law, List<String> lines) {
    MotionSegment move = law.move();
    List<String> ways = new ArrayList<>();
    if (move.length() > 0) {
      ways.add(Text.number(move.length(), DIGITS) + " m");
    }
    if (move.turn() > 0) {
      ways.add(Text.number(Math.toDegrees(move.turn()), DIGITS) + " deg");
    }
    lines.add(
        "  "
            + law.law().label()
            + " over "
            + String.join(" and ", ways)
            + ", from "
            + Text.fixed(move.from(), 4)
            + " s to "
            + Text.fixed(move.to(), 4)
            + " s");
    lines.add(row("", "peak", "limit", "", "use"));
    for (LawAt.LimitReached l : law.limitsReached()) {
      lines.add(limit(l));
    }
    String governing =
        law.limitsReached().stream()
            .filter(LawAt.LimitReached::governs)
            .map(LawAt.LimitReached::quantity)
            .collect(Collectors.joining(", "));
    lines.add(
        governing.isEmpty()
            ? "  Governed by none of its own limits."
            : "  Governed by: " + governing);
    phases(law, lines);
  }

  private static String limit(LawAt.LimitReached l) {
    boolean turns = l.unit().startsWith("rad");
    double unit = turns ? Math.toDegrees(1) : 1;
    boolean bounded = Double.isFinite(l.limit());
    return row(
        l.quantity(),
        Text.number(unit * l.peak(), DIGITS),
        bounded ? Text.number(unit * l.limit(), DIGITS) : "none",
        turns ? l.unit().replace("rad", "deg") : l.unit(),
        bounded ? Text.number(100 * l.peak() / l.limit(), 4) + " %" : "-");
  }

  private static void phases(LawAt.Planned law, List<String> lines) {
    boolean travels = law.move().length() > 0;
    double unit = travels ? 1 : Math.toDegrees(1);
    String speed = travels ? "m/s" : "deg/s";
    String acceleration = travels ? "m/s^2" : "deg/s^2";
    lines.add(phase("phase", "begins", "ends", "speed", "at end", "accel.", "at end"));
    lines.add(phase("", "s", "s", speed, speed, acceleration, acceleration));
    for (int i = 0; i < law.phases().size(); i++) {
      LawAt.Phase p = law.phases().get(i);
      lines.add(
          phase(
              (i == law.current() ? "> " : "  ") + (i + 1),
              Text.fixed(p.from(), 4),
              Text.fixed(p.to(), 4),
              figure(unit * p.startSpeed()),
              figure(unit * p.endSpeed()),
              figure(unit * p.startAcceleration()),
              figure(unit * p.endAcceleration())));
    }
    if (law.alongJoints()) {
      lines.add("  > marks the phase of this instant; along the joints speed changes by place:");
      lines.add("  these are of an even way of the same length; minus slows down.");
      return;
    }
    lines.add("  > marks the phase of this instant; speed is along the path, minus slows down.");
  }

  private static String figure(double v) {
    return Math.abs(v) < NOTHING ? "0" : Text.number(v, DIGITS);
  }

  private static String row(String name, String peak, String limit, String unit, String use) {
    return ("  "
            + Text.left(name, 18)
            + Text.right(peak, COLUMN)
            + Text.right(limit, COLUMN)
            + " "
            + Text.left(unit, 8)
            + Text.right(use, COLUMN))
        .stripTrailing();
  }

  private static String phase(String name, String... columns) {
    StringBuilder s = new StringBuilder("  " + Text.left(name, 8));
    for (String column : columns) {
      s.append(Text.right(column, COLUMN));
    }
    return s.toString().stripTrailing();
  }
}
