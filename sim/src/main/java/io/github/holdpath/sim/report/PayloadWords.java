package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.FlangePattern;
import io.github.holdpath.sim.study.Payload;
import io.github.holdpath.sim.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/** What to type into a controller for the payload, lines of at most 80 characters. */
final class PayloadWords {
  private static final int DIGITS = 4;

  /** Numbers below this part of the largest are rounding, and 0 to a controller. */
  private static final double ROUNDING = 1e-9;

  private PayloadWords() {}

  /** Lines without the heading. */
  static List<String> lines(StudyResult result, Payload payload) {
    List<String> lines = new ArrayList<>();
    body("tool and part", payload.withPart(), lines);
    body("tool alone", payload.toolAlone(), lines);
    if (payload.toolAlone().inertia().equals(Inertia.POINT)) {
      lines.add("  tool/inertia is not told: the tool counts as a point.");
    }
    if (slanted(payload.withPart()) || slanted(payload.toolAlone())) {
      lines.add("  Ixy, Ixz, Iyz are elements of the matrix; a controller that asks for products");
      lines.add("  of inertia may want their negatives.");
    }
    lines.add(
        "  Load about the flange, standing: "
            + load(payload.standingForce(), payload.standingMoment()));
    lines.add(
        "  Load about the flange, moving:   "
            + load(
                result.peaks().flangeForce().orElseThrow(),
                result.peaks().flangeMoment().orElseThrow()));
    payload
        .use()
        .ifPresent(
            use ->
                lines.add(
                    "  Rated payload of the robot "
                        + Text.number(payload.rated().orElseThrow(), DIGITS)
                        + " kg: "
                        + Text.number(100 * use, 3)
                        + " % of it is taken."));
    result.scene().tool().flatMap(t -> t.flange()).ifPresent(f -> lines.add(flange(f)));
    return lines;
  }

  private static String load(double force, double moment) {
    return "at most " + up(force) + " N and " + up(moment) + " N m";
  }

  private static void body(String name, MassProperties body, List<String> lines) {
    Vec3 c = body.centreOfMass();
    double size = c.norm();
    lines.add(
        "  "
            + Text.left(name, 15)
            + Text.number(body.mass(), DIGITS)
            + " kg at "
            + millimetres(c.x(), size)
            + " "
            + millimetres(c.y(), size)
            + " "
            + millimetres(c.z(), size)
            + " mm");
    inertia("about its centre of mass", body.inertia(), lines);
    inertia("about the flange", Payload.aboutFlange(body), lines);
  }

  private static String millimetres(double v, double size) {
    return Math.abs(v) <= ROUNDING * size ? "0" : Text.number(1000 * v, DIGITS);
  }

  private static void inertia(String about, Inertia i, List<String> lines) {
    double size = largest(i);
    lines.add(
        "    "
            + Text.left(about, 26)
            + element("Ixx", i.xx(), size)
            + element("Iyy", i.yy(), size)
            + element("Izz", i.zz(), size).stripTrailing());
    if (slanted(i)) {
      lines.add(
          " ".repeat(30)
              + element("Ixy", i.xy(), size)
              + element("Ixz", i.xz(), size)
              + element("Iyz", i.yz(), size).stripTrailing());
    }
  }

  private static String element(String name, double v, double size) {
    String number = Math.abs(v) <= ROUNDING * size ? "0" : Text.number(v, DIGITS);
    return Text.left(name + " " + number, 16);
  }

  private static double largest(Inertia i) {
    return Math.max(Math.abs(i.xx()), Math.max(Math.abs(i.yy()), Math.abs(i.zz())));
  }

  private static boolean slanted(MassProperties body) {
    return slanted(body.inertia()) || slanted(Payload.aboutFlange(body));
  }

  private static boolean slanted(Inertia i) {
    double most = Math.max(Math.abs(i.xy()), Math.max(Math.abs(i.xz()), Math.abs(i.yz())));
    return most > ROUNDING * largest(i);
  }

  /** Four digits, never below the value: it is compared with what a robot bears. */
  private static String up(double v) {
    return v < 1e-9
        ? "0"
        : new java.math.BigDecimal(v)
            .round(new java.math.MathContext(DIGITS, java.math.RoundingMode.UP))
            .stripTrailingZeros()
            .toPlainString();
  }

  private static String flange(FlangePattern f) {
    return "  Flange "
        + f.designation()
        + ": "
        + f.holes()
        + " screws M"
        + Text.number(1000 * f.thread(), DIGITS)
        + " on a pitch circle of "
        + Text.number(1000 * f.pitchCircle(), DIGITS)
        + " mm.";
  }
}
