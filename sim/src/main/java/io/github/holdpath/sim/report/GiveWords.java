package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.compliance.SwingMode;
import io.github.holdpath.sim.study.GiveResult;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Worst;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What the swing of a part on its grip comes to, in sentences. */
final class GiveWords {
  private static final List<String> AXES = List.of("fx", "fy", "fz", "mx", "my", "mz");
  private static final double MILLI = 1e-3;

  private GiveWords() {}

  /** Sentences for {@code check}. */
  static List<String> sentences(StudyResult result, GiveResult give) {
    List<String> list = new ArrayList<>();
    Worst worst = give.worst();
    list.add(
        worst.first().unlimited()
            ? "Swinging on its grip the part meets no limit."
            : "Swinging on its grip the part has a least factor of "
                + CheckReport.figure(give.factor(), result.requiredSafety())
                + " (margin "
                + CheckReport.figure(give.factor() / result.requiredSafety(), 1)
                + "): at "
                + Text.fixed(worst.time(), 3)
                + " s in "
                + Words.segment(result, worst.segment())
                + " "
                + Words.happens(worst.first())
                + ".");
    String overshoot = overshoot(give);
    list.add(
        "Slowest swing "
            + slowest(give)
            + (overshoot.isEmpty() ? "" : "; what the grip carries peaks at " + overshoot)
            + "; largest swing "
            + millimetres(give.largestSwing())
            + " mm.");
    settling(result, give, list);
    return list;
  }

  private static String slowest(GiveResult give) {
    if (give.modes().isEmpty()) {
      return "none";
    }
    SwingMode mode = give.modes().get(0);
    return Text.number(mode.frequency(), 3) + " Hz (" + mode.direction() + ")";
  }

  /** Components whose peak the swing raises, as times the rigid part's. */
  private static String overshoot(GiveResult give) {
    List<String> parts = new ArrayList<>();
    for (int k = 0; k < AXES.size(); k++) {
      OptionalDouble f = give.dynamicFactors().get(k);
      if (f.isPresent() && f.getAsDouble() > 1.005) {
        parts.add("x" + Text.fixed(f.getAsDouble(), 2) + " in " + AXES.get(k));
      }
    }
    return String.join(", ", parts);
  }

  private static void settling(StudyResult result, GiveResult give, List<String> list) {
    OptionalDouble within = result.scene().give().orElseThrow().settle();
    if (within.isPresent()) {
      for (GiveResult.Stop stop : give.stops()) {
        double time = stop.settling().orElseThrow();
        list.add(
            String.format(
                Locale.ROOT,
                "After %s it swings by %s mm and is settled to %s mm %s; it rests there for %s s%s.",
                Words.segment(result, stop.segment()),
                millimetres(stop.swing()),
                millimetres(within.getAsDouble()),
                Double.isInfinite(time) ? "never" : "in " + Text.fixed(time, 2) + " s",
                Text.fixed(stop.rest(), 2),
                stop.settles() ? "" : ", which is too short"));
      }
    }
    if (give.swingAtRelease() > MILLI / 1000) {
      list.add("At the end it still swings by " + millimetres(give.swingAtRelease()) + " mm.");
    }
  }

  private static String millimetres(double metres) {
    return Text.number(metres / MILLI, 2);
  }
}
