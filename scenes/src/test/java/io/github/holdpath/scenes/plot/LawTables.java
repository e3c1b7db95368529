package io.github.holdpath.scenes.plot;

import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.LawProfile;
import java.util.ArrayList;
import java.util.List;

/** The tables of the page, in Markdown. */
final class LawTables {
  /** A limit that is missed by less than this counts as reached: rounding. */
  private static final double NEARLY = 1 - 1e-9;

  /** Frequency times duration up to which the largest swing is looked for. */
  private static final double UNTIL = 40;

  private static final double STEP = 0.02;

  private LawTables() {}

  static String times() {
    StringBuilder t =
        new StringBuilder(
            """
            | law | time s | peak speed m/s | peak acceleration m/s² | peak jerk m/s³ | limits reached |
            | --- | --- | --- | --- | --- | --- |
            """);
    for (LawKind law : LawKind.values()) {
      LawProfile p = Laws.withinLimits(law);
      t.append(
          row(
              law.label(),
              number(3, p.duration()),
              number(2, p.peakSpeed()),
              number(2, p.peakAcceleration()),
              jerk(p),
              reached(p)));
    }
    return t.toString();
  }

  private static String reached(LawProfile p) {
    LawLimits limits = Laws.LIMITS;
    List<String> reached = new ArrayList<>();
    if (p.peakSpeed() >= limits.speed() * NEARLY) {
      reached.add("speed");
    }
    if (p.peakAcceleration() >= limits.acceleration() * NEARLY) {
      reached.add("acceleration");
    }
    if (Double.isFinite(p.peakJerk()) && p.peakJerk() >= limits.jerk() * NEARLY) {
      reached.add("jerk");
    }
    return String.join(", ", reached);
  }

  static String peaks() {
    StringBuilder t =
        new StringBuilder(
            """
            | law, 1 m in 1 s | peak speed m/s | peak acceleration m/s² | times the least possible | peak jerk m/s³ |
            | --- | --- | --- | --- | --- |
            """);
    for (Laws.Variant v : Laws.inOneSecond()) {
      LawProfile p = v.profile();
      t.append(
          row(
              v.name(),
              number(2, p.peakSpeed()),
              number(2, p.peakAcceleration()),
              number(2, p.peakAcceleration() / 4),
              jerk(p)));
    }
    return t.toString();
  }

  private static String jerk(LawProfile p) {
    return Double.isInfinite(p.peakJerk()) ? "no bound" : number(1, p.peakJerk());
  }

  static String factors() {
    StringBuilder t =
        new StringBuilder(
            """
            | law | speed Cv | acceleration Ca | jerk Cj |
            | --- | --- | --- | --- |
            """);
    for (LawKind law : List.of(LawKind.QUINTIC, LawKind.MODIFIED_SINE, LawKind.CYCLOIDAL)) {
      double[] c = Laws.peaks(law);
      t.append(row(law.label(), number(3, c[0]), number(3, c[1]), number(2, c[2])));
    }
    return t.toString();
  }

  static String swing() {
    double[] from = {1, 2, 3, 5, 10, 20};
    StringBuilder t = new StringBuilder("| law |");
    for (double f : from) {
      t.append(" from ").append(number(0, f)).append(" on |");
    }
    t.append("\n| ---").append(" | ---".repeat(from.length)).append(" |\n");
    StopSwing swing = new StopSwing();
    for (LawKind law : LawKind.values()) {
      LawProfile p = Laws.withinLimits(law);
      double[] most = new double[from.length];
      for (int i = 0; from[0] + i * STEP <= UNTIL; i++) {
        double cycles = from[0] + i * STEP;
        double left = swing.after(p, cycles);
        for (int k = 0; k < from.length && from[k] <= cycles; k++) {
          most[k] = Math.max(most[k], left);
        }
      }
      String[] cells = new String[from.length + 1];
      cells[0] = law.label();
      for (int k = 0; k < from.length; k++) {
        cells[k + 1] = number(2, most[k]);
      }
      t.append(row(cells));
    }
    return t.toString();
  }

  static String corner() {
    StringBuilder t =
        new StringBuilder(
            """
            | zone mm | corner missed by mm | peak curvature 1/m | speed in the corner m/s | peak jerk in the corner m/s³ | time s | gained s | gained % |
            | --- | --- | --- | --- | --- | --- | --- | --- |
            """);
    double stopping = 2 * RoundedCorner.leg().duration();
    t.append(row("stop", "0.0", "-", "-", "-", number(3, stopping), "-", "-"));
    for (double zone : new double[] {0.03, 0.06, 0.12}) {
      RoundedCorner c = new RoundedCorner(zone);
      double time = c.law().duration();
      t.append(
          row(
              number(0, zone * 1000),
              number(1, c.blend().missed() * 1000),
              number(1, c.curvature()),
              number(2, c.bendSpeed()),
              number(0, c.bendJerk()),
              number(3, time),
              number(3, stopping - time),
              number(0, 100 * (1 - time / stopping))));
    }
    return t.toString();
  }

  private static String row(String... cells) {
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private static String number(int decimals, double value) {
    return Laws.number(decimals, value);
  }
}
