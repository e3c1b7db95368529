package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.GiveResult;
import io.github.holdpath.sim.study.Help;
import io.github.holdpath.sim.study.SegmentResult;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Verdict;
import io.github.holdpath.sim.study.Worst;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The table and verdict that {@code check} prints, at most 80 characters wide. */
public final class CheckReport {
  private static final String HEADER_1 =
      " #  move         peak   peak   worst  factor margin   may run  first to fail";
  private static final String HEADER_2 =
      "                  m/s  m/s^2    at s         (>= 1)     speed";

  /** Where the last column of the table begins. */
  private static final int LAST_COLUMN = 63;

  /** A move that would have to be slower than this share of its speed is not worth slowing. */
  private static final double SLOWEST = 0.05;

  private final StudyResult result;
  private final Ink ink;
  private final StringBuilder out = new StringBuilder();

  private CheckReport(StudyResult result, Ink ink) {
    this.result = result;
    this.ink = ink;
  }

  /** The whole text, lines ended by a line feed. */
  public static String text(StudyResult result, Ink ink) {
    return new CheckReport(result, ink).write();
  }

  private String write() {
    title();
    table();
    verdict();
    helps();
    settings();
    payload();
    result.joints().ifPresent(j -> out.append(RobotWords.block(result, j)));
    list("Warnings", result.warnings());
    list("Rests on", result.assumptions());
    out.append('\n');
    Text.wrap(out, "Caution: ", "  ", Words.CAUTION);
    return out.toString();
  }

  private void title() {
    Scene scene = result.scene();
    Text.wrap(out, "", "", scene.title());
    Text.wrap(
        out,
        "  ",
        "  ",
        scene.part().name()
            + ", "
            + Text.number(scene.part().body().mass(), 4)
            + " kg, held by "
            + Words.grip(scene.grip().kind())
            + " ("
            + result.scene().grip().patches().size()
            + " contacts), required safety "
            + Text.number(result.requiredSafety(), 4));
    out.append('\n');
  }

  private void table() {
    out.append(HEADER_1).append('\n').append(HEADER_2).append('\n');
    for (SegmentResult segment : result.segments()) {
      row(segment);
    }
    out.append('\n');
  }

  private void row(SegmentResult segment) {
    MotionSegment move = segment.move();
    String index = Text.right(Integer.toString(move.index()), 2);
    out.append(Text.left(index + "  " + (move.name().isEmpty() ? "-" : move.name()), 14));
    boolean travels = move.length() > 0;
    out.append(Text.right(travels ? Text.number(move.peakSpeed(), 3) : "-", 7));
    out.append(Text.right(travels ? Text.number(move.peakAcceleration(), 3) : "-", 7));
    if (segment.worst().isEmpty()) {
      out.append(Text.right("-", 8)).append(Text.right("-", 8)).append(Text.right("-", 8));
      out.append(Text.right("-", 9)).append("  not held\n");
      return;
    }
    Worst worst = segment.worst().get();
    double margin = worst.first().factor() / result.requiredSafety();
    boolean unlimited = worst.first().unlimited();
    boolean fails = margin < 1;
    out.append(Text.right(Text.fixed(worst.time(), 3), 8));
    out.append(
        paint(
            fails,
            Text.right(
                unlimited ? "none" : figure(worst.first().factor(), result.requiredSafety()), 8)));
    out.append(paint(fails, Text.right((unlimited ? "none" : figure(margin, 1)), 7)));
    out.append(fails ? "!" : " ");
    out.append(Text.right(speed(segment.speedHeadroom()), 9)).append("  ");
    String first =
        unlimited
            ? "no limit"
            : (worst.first().mode().label() + " " + worst.first().patchName()).trim();
    out.append(Text.left(first, Text.WIDTH - LAST_COLUMN).stripTrailing()).append('\n');
  }

  /** A factor or margin; one that fails is never rounded up to what is required. */
  static String figure(double v, double required) {
    if (v >= 10) {
      return Text.number(v, 3);
    }
    String near = Text.fixed(v, 2);
    return v < required && Double.parseDouble(near) >= required ? Text.down(v, 2) : near;
  }

  private static String speed(double k) {
    if (k >= SpeedHeadroom.LARGEST) {
      return "any";
    }
    if (k == 0) {
      return "none";
    }
    return "x" + (k < 10 ? Text.fixed(Math.floor(k * 100) / 100, 2) : Text.number(k, 3));
  }

  private String paint(boolean bad, String s) {
    return bad ? ink.bad(s) : s;
  }

  private void verdict() {
    boolean holds = result.verdict() == Verdict.HOLDS;
    boolean swings = NextWords.swingAloneFails(result);
    Worst worst = result.worst();
    String word = result.verdict().label().toUpperCase(Locale.ROOT);
    String numbers =
        worst.first().mode() == FailureMode.NONE
            ? ": the load meets no limit."
            : (swings ? ": factor " : ": least factor ")
                + figure(worst.first().factor(), result.requiredSafety())
                + (swings
                    ? " while rigid on its grip, required "
                    : holds ? ", required " : " is below the required ")
                + Text.number(result.requiredSafety(), 4)
                + " (margin "
                + figure(result.margin(), 1)
                + ").";
    StringBuilder lines = new StringBuilder();
    Text.wrap(lines, "", "  ", word + numbers);
    out.append(holds ? ink.good(word) : ink.bad(word)).append(lines.substring(word.length()));
    if (worst.first().mode() != FailureMode.NONE) {
      Text.wrap(
          out,
          "  ",
          "  ",
          "At "
              + Text.fixed(worst.time(), 3)
              + " s in "
              + Words.segment(result, worst.segment())
              + " "
              + Words.happens(worst.first())
              + ".");
    }
    result.give().ifPresent(this::give);
    Text.wrap(out, "  ", "  ", NextWords.speed(result));
    drop();
    if (!holds) {
      NextWords.force(result).ifPresent(s -> Text.wrap(out, "  ", "  ", s));
      slower();
    }
    out.append("  Cycle ")
        .append(Text.fixed(result.cycleTime(), 2))
        .append(" s, part held ")
        .append(Text.fixed(result.heldTime(), 2))
        .append(" s")
        .append(
            result.cycleTime() > 0
                ? ", " + Text.number(result.partsPerHour(), 3) + " parts per hour.\n"
                : ".\n");
    result
        .guide()
        .ifPresent(
            g ->
                Text.wrap(
                    out,
                    "  ",
                    "  ",
                    "The guide of "
                        + g.jaw()
                        + " bears "
                        + Text.number(Math.ceil(1000 * g.use()) / 10, 4)
                        + " % of its rating at "
                        + Text.fixed(g.time(), 3)
                        + " s."));
    result
        .preload()
        .ifPresent(
            p ->
                Text.wrap(
                    out,
                    "  ",
                    "  ",
                    "At rest the grip presses with "
                        + Text.number(100 * p.ratio(), 3)
                        + " % of what the part may take ("
                        + p.patch()
                        + ": "
                        + Text.number(p.preload(), 3)
                        + " N of "
                        + Text.number(p.permitted(), 3)
                        + " N)."));
  }

  private void give(GiveResult give) {
    boolean bad = give.factor() < result.requiredSafety();
    List<String> sentences = GiveWords.sentences(result, give);
    for (int i = 0; i < sentences.size(); i++) {
      StringBuilder lines = new StringBuilder();
      Text.wrap(lines, "  ", "  ", sentences.get(i));
      out.append(i == 0 && bad ? ink.bad(lines.toString()) : lines);
    }
  }

  /** Beyond which load nothing holds; never a factor to design by. */
  private void drop() {
    double factor = result.drop().factor();
    Text.wrap(
        out,
        "  ",
        "  ",
        factor >= HoldModel.NO_LIMIT
            ? "Drop bound: none; parts of the grip may creep, but it carries any such load."
            : "Drop bound "
                + (factor < 10 ? Text.fixed(factor, 2) : Text.number(factor, 3))
                + ": beyond that many times the load nothing holds the part, and contacts creep"
                + " before. Not to design by.");
  }

  private void helps() {
    if (result.helps().isEmpty()) {
      return;
    }
    out.append("\nWhat would help most (10 % each alone, to first order):\n");
    for (Help help : result.helps()) {
      out.append("  +")
          .append(Text.left(Text.fixed(help.gain(), help.gain() < 0.1 ? 3 : 2), 7))
          .append(help.more() ? "more " : "less ")
          .append(help.input())
          .append('\n');
    }
  }

  /** How to slow the moves that fail; silent where slowing cannot cure one of them. */
  private void slower() {
    List<RouteStep.Move> moves = Settings.moves(result.scene().motion());
    List<SegmentResult> failing =
        result.segments().stream().filter(s -> s.held() && s.speedHeadroom() < 1).toList();
    boolean curable = failing.stream().allMatch(s -> s.speedHeadroom() > SLOWEST);
    if (moves.isEmpty() || failing.isEmpty() || !curable) {
      return;
    }
    String numbers =
        failing.stream()
            .map(s -> Integer.toString(s.move().index()))
            .collect(Collectors.joining(", "));
    out.append(failing.size() == 1 ? "  To slow move " : "  To slow moves ")
        .append(numbers)
        .append(failing.size() == 1 ? " alone until it holds:\n" : " until each holds:\n");
    for (SegmentResult s : failing) {
      MotionSegment move = s.move();
      RouteStep.Move step = moves.get(move.index() - 1);
      for (String option :
          Settings.slowed(
              result.scene(),
              step,
              move.length(),
              move.turn(),
              Settings.played(result, move.index()) * s.speedHeadroom())) {
        out.append("    ").append(option).append('\n');
      }
    }
    if (moves.stream().anyMatch(m -> m.blend() > 0)) {
      out.append("  Moves that a blend joins share its corner: check again with these.\n");
    }
  }

  private void settings() {
    List<RouteStep.Move> moves = Settings.moves(result.scene().motion());
    if (moves.isEmpty()) {
      return;
    }
    out.append("\nSettings of each move (percent of the scene's limits):\n");
    for (int i = 0; i < moves.size(); i++) {
      MotionSegment move = result.segments().get(i).move();
      Text.wrap(
          out,
          "  " + Text.left(Words.move(move), 16),
          " ".repeat(18),
          Settings.line(
              result.scene(),
              moves.get(i),
              move.length(),
              move.turn(),
              Settings.played(result, move.index())));
    }
    peaks();
  }

  /** What the table has no room for: jerk and turning, where the law bounds or does them. */
  private void peaks() {
    List<MotionSegment> more =
        result.segments().stream()
            .map(SegmentResult::move)
            .filter(m -> !Settings.peaks(m).isEmpty())
            .toList();
    if (more.isEmpty()) {
      return;
    }
    out.append("\nPeaks of jerk and turning:\n");
    for (MotionSegment move : more) {
      Text.wrap(out, "  " + Text.left(Words.move(move), 16), " ".repeat(18), Settings.peaks(move));
    }
  }

  private void payload() {
    if (result.payload().isEmpty()) {
      return;
    }
    out.append("\nPayload entry (flange axes, from the flange's origin; inertia in kg m^2):\n");
    for (String line : PayloadWords.lines(result, result.payload().get())) {
      out.append(line).append('\n');
    }
  }

  private void list(String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    out.append('\n').append(heading).append(":\n");
    for (String sentence : sentences) {
      Text.wrap(out, "  - ", "    ", sentence);
    }
  }
}
