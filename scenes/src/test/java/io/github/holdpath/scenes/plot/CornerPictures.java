package io.github.holdpath.scenes.plot;

import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;
import java.util.ArrayList;
import java.util.List;

/** The pictures of the rounded corner. Places of labels were chosen by eye. */
final class CornerPictures {
  /** Zone of the corner that is shown, m. */
  static final double ZONE = 0.06;

  private static final int WIDTH = LawPictures.WIDTH;
  private static final double MM = 1000;

  private CornerPictures() {}

  static String path() {
    RoundedCorner corner = new RoundedCorner(ZONE);
    Axis x = Axis.even("x, mm", -110, 70, 20, 0);
    Axis y = Axis.even("y, mm", -20, 90, 20, 0);
    Plot plot =
        new Plot(
            WIDTH,
            Plot.evenHeight(WIDTH, x, y),
            "A corner of 90 degrees rounded in a zone of 60 mm",
            x,
            y);
    double zone = ZONE * MM;
    plot.curve(Ink.GREY_DASHED, 1.2, List.of(p(-200, 0), p(0, 0), p(0, 200)));
    List<double[]> circle = new ArrayList<>();
    List<double[]> arc = new ArrayList<>();
    for (int i = 0; i <= 180; i++) {
      double turn = Math.toRadians(2 * i);
      circle.add(p(zone * Math.cos(turn), zone * Math.sin(turn)));
      if (i <= 45) {
        arc.add(p(-zone + zone * Math.sin(turn), zone - zone * Math.cos(turn)));
      }
    }
    plot.curve(Ink.GREY, 1, circle);
    plot.curve(Ink.ARC, 2, arc);
    List<double[]> way = new ArrayList<>();
    double length = corner.chain().length();
    for (int i = 0; i <= 200; i++) {
      double[] at = corner.at(length * (0.3 + 0.4 * i / 200));
      way.add(p(at[0] * MM, at[1] * MM));
    }
    plot.curve(Ink.BLEND, 2.6, way);
    double[] middle = corner.at(length / 2);
    String missed = "missed by " + Laws.number(1, corner.blend().missed() * MM) + " mm";
    plot.label(Ink.BLEND, middle[0] * MM, middle[1] * MM, -55, 46, "end", "the blend");
    plot.label(Ink.GREY, 0, 0, 12, -12, "start", missed);
    plot.label(
        Ink.ARC,
        -zone * (1 - Math.sin(Math.PI / 6)),
        zone * (1 - Math.cos(Math.PI / 6)),
        -66,
        22,
        "end",
        "circular arc");
    double high = zone * Math.sqrt(0.75);
    plot.label(Ink.GREY, zone / 2, high, 36, 66, "start", "zone 60 mm");
    return plot.svg();
  }

  private static double[] p(double x, double y) {
    return new double[] {x, y};
  }

  static String curvature() {
    RoundedCorner corner = new RoundedCorner(ZONE);
    Axis s = Axis.even("way from the middle of the curve, mm", -80, 80, 20, 0);
    Axis k = Axis.even("curvature, 1/m", 0, 25, 5, 0);
    Plot plot = new Plot(WIDTH, 300, "Curvature of the rounded corner over its way", s, k);
    double radius = ZONE;
    double half = radius * Math.PI / 4 * MM;
    plot.curve(
        Ink.ARC,
        2,
        List.of(
            p(-100, 0),
            p(-half, 0),
            p(-half, 1 / radius),
            p(half, 1 / radius),
            p(half, 0),
            p(100, 0)));
    List<double[]> points = new ArrayList<>();
    double middle = corner.chain().length() / 2;
    for (int i = -160; i <= 160; i++) {
      double way = i / 2.0;
      points.add(p(way, corner.at(middle + way / MM)[2]));
    }
    plot.curve(Ink.BLEND, 2.6, points);
    plot.label(Ink.BLEND, 0, corner.at(middle)[2], 12, 22.5, "start", "the blend: no jump");
    plot.label(Ink.ARC, half, 12, 54, 15, "start", "arc: jumps");
    return plot.svg();
  }

  static String speed() {
    RoundedCorner corner = new RoundedCorner(ZONE);
    Axis time = Axis.even("time, s", 0, 1.2, 0.1, 1);
    Axis speed = Axis.even("speed, m/s", 0, 2.4, 0.5, 1);
    Plot plot =
        new Plot(WIDTH, 330, "Speed over time with a rounded corner and with a stop", time, speed);
    plot.level(Laws.LIMITS.speed(), "limit");
    LawProfile leg = RoundedCorner.leg();
    List<LawPhase> stopping = new ArrayList<>(leg.phases());
    leg.phases().forEach(phase -> stopping.add(phase.later(leg.duration())));
    plot.curve(Ink.ARC, 2.2, Laws.curve(stopping, LawPhase::speedAt, 0, 0));
    plot.curve(Ink.BLEND, 2.6, Laws.curve(corner.law().phases(), LawPhase::speedAt, 0, 0));
    double inBend = (corner.law().entered(1) + corner.law().left(1)) / 2;
    plot.label(
        Ink.BLEND,
        inBend,
        corner.bendSpeed(),
        inBend + 0.03,
        2.2,
        "start",
        "zone 60 mm: constant speed in the corner");
    double falling = 0.9;
    double second = leg.phaseAt(falling - leg.duration()).speedAt(falling - leg.duration());
    plot.label(Ink.ARC, falling, second, 0.94, 1.8, "start", "stop at the corner");
    return plot.svg();
  }
}
