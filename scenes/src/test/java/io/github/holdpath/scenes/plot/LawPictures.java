package io.github.holdpath.scenes.plot;

import io.github.holdpath.scenes.plot.Laws.Quantity;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;
import java.util.ArrayList;
import java.util.List;

/** The pictures of the laws. Places of labels were chosen by eye. */
final class LawPictures {
  static final int WIDTH = 720;
  private static final int HEIGHT = 330;
  private static final double THICK = 2.2;
  private static final String MOVE = " of one move of 1 m by five motion laws, over time";
  private static final Axis TIME = Axis.even("time, s", 0, 1.25, 0.1, 1);

  private LawPictures() {}

  /** Where the label of a law stands: dot on the curve at a time, words at a place. */
  private record Spot(LawKind law, double dot, double x, double y) {}

  private static Spot spot(LawKind law, double dot, double x, double y) {
    return new Spot(law, dot, x, y);
  }

  static String position() {
    Plot plot =
        new Plot(WIDTH, HEIGHT, "Position" + MOVE, TIME, Axis.even("position, m", 0, 1.6, 0.2, 1));
    curves(plot, LawPhase::positionAt, Laws.WAY);
    double level = 1.5;
    for (LawKind law :
        List.of(
            LawKind.TRAPEZOID,
            LawKind.S_CURVE,
            LawKind.MODIFIED_SINE,
            LawKind.QUINTIC,
            LawKind.CYCLOIDAL)) {
      LawProfile p = Laws.withinLimits(law);
      String words = law.label() + " " + Laws.number(3, p.duration()) + " s";
      plot.label(Ink.of(law), p.duration(), 1, p.duration(), level, "start", words);
      level -= 0.09;
    }
    return plot.svg();
  }

  static String speed() {
    Plot plot =
        new Plot(WIDTH, HEIGHT, "Speed" + MOVE, TIME, Axis.even("speed, m/s", 0, 2.4, 0.5, 1));
    plot.level(2, "limit");
    return labelled(
        plot,
        LawPhase::speedAt,
        List.of(
            spot(LawKind.TRAPEZOID, 0.12, 0.01, 1.75),
            spot(LawKind.S_CURVE, 0.62, 0.8, 1.75),
            spot(LawKind.MODIFIED_SINE, 0.7, 0.85, 1.5),
            spot(LawKind.QUINTIC, 0.76, 0.9, 1.25),
            spot(LawKind.CYCLOIDAL, 0.84, 0.95, 1.0)));
  }

  static String acceleration() {
    Plot plot =
        new Plot(
            WIDTH,
            HEIGHT,
            "Acceleration" + MOVE,
            TIME,
            Axis.even("acceleration, m/s²", -12, 12, 5, 0));
    plot.level(10, "limit").level(-10, "limit");
    return labelled(
        plot,
        LawPhase::accelerationAt,
        List.of(
            spot(LawKind.TRAPEZOID, 0.2, 0.36, 8.7),
            spot(LawKind.S_CURVE, 0.23, 0.4, 7.1),
            spot(LawKind.MODIFIED_SINE, 0.27, 0.44, 5.5),
            spot(LawKind.QUINTIC, 0.33, 0.48, 3.9),
            spot(LawKind.CYCLOIDAL, 0.4, 0.52, 2.3)));
  }

  static String jerk() {
    Plot plot =
        new Plot(WIDTH, HEIGHT, "Jerk" + MOVE, TIME, Axis.even("jerk, m/s³", -150, 150, 50, 0));
    plot.level(100, "limit").level(-100, "limit");
    LawProfile trapezoid = Laws.withinLimits(LawKind.TRAPEZOID);
    double before = 0;
    for (LawPhase phase : trapezoid.phases()) {
      double after = phase.accelerationAt(phase.from());
      plot.arrow(Ink.TRAPEZOID, phase.from(), 0, after > before ? 145 : -145);
      before = after;
    }
    plot.arrow(Ink.TRAPEZOID, trapezoid.duration(), 0, 145);
    String words = "trapezoid: a jump, no bound";
    plot.words(Ink.TRAPEZOID, trapezoid.duration(), 137, "start", words);
    return labelled(
        plot,
        LawPhase::jerkAt,
        List.of(
            spot(LawKind.S_CURVE, 0.77, 0.9, 112),
            spot(LawKind.MODIFIED_SINE, 0.86, 0.95, 85),
            spot(LawKind.QUINTIC, 0.92, 0.98, 62),
            spot(LawKind.CYCLOIDAL, 0.98, 1.02, 38)));
  }

  private static String labelled(Plot plot, Quantity quantity, List<Spot> spots) {
    curves(plot, quantity, 0);
    for (Spot s : spots) {
      LawPhase phase = Laws.withinLimits(s.law).phaseAt(s.dot);
      double value = quantity.at(phase, s.dot);
      plot.label(Ink.of(s.law), s.dot, value, s.x, s.y, "start", s.law.label());
    }
    return plot.svg();
  }

  private static void curves(Plot plot, Quantity quantity, double atEnd) {
    for (LawKind law : LawKind.values()) {
      List<LawPhase> phases = Laws.withinLimits(law).phases();
      plot.curve(Ink.of(law), THICK, Laws.curve(phases, quantity, 0, atEnd));
    }
  }

  static String times() {
    List<Bars.Bar> bars = new ArrayList<>();
    for (LawKind law : LawKind.values()) {
      double time = Laws.withinLimits(law).duration();
      bars.add(new Bars.Bar(Ink.of(law), law.label(), time, Laws.number(3, time) + " s"));
    }
    return Bars.draw("Time for 1 m within 2 m/s, 10 m/s², 100 m/s³", bars);
  }

  static String peaks() {
    List<Bars.Bar> bars = new ArrayList<>();
    for (Laws.Variant v : Laws.inOneSecond()) {
      double a = v.profile().peakAcceleration();
      bars.add(new Bars.Bar(Ink.of(v.kind()), v.name(), a, Laws.number(2, a) + " m/s²"));
    }
    return Bars.draw("Peak acceleration for 1 m in 1 s", bars);
  }

  static String swing() {
    Axis cycles = Axis.even("natural frequency times move time", 0, 12, 1, 0);
    Axis size = Axis.log("swing left after the stop, m/s² for 1 m in 1 s", 0.05, 50);
    Plot plot =
        new Plot(
            WIDTH,
            420,
            "Swing left after the stop, by natural frequency times move time, five motion laws",
            cycles,
            size);
    StopSwing swing = new StopSwing();
    for (LawKind law : LawKind.values()) {
      LawProfile p = Laws.withinLimits(law);
      List<double[]> points = new ArrayList<>();
      for (int i = 5; i <= 600; i++) {
        double x = i / 50.0;
        points.add(new double[] {x, swing.after(p, x)});
      }
      plot.curve(Ink.of(law), 1.8, points);
    }
    for (Spot s :
        List.of(
            spot(LawKind.TRAPEZOID, 9, 9.4, 18),
            spot(LawKind.S_CURVE, 8.2, 8.5, 0.11),
            spot(LawKind.MODIFIED_SINE, 3.3, 3.6, 20),
            spot(LawKind.QUINTIC, 4.05, 4.2, 0.5),
            spot(LawKind.CYCLOIDAL, 5.05, 5.6, 0.3))) {
      double value = swing.after(Laws.withinLimits(s.law), s.dot);
      plot.label(Ink.of(s.law), s.dot, value, s.x, s.y, "start", s.law.label());
    }
    return plot.svg();
  }
}
