package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.Reference;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** The swings of {@code reference/grip-dynamics.json} and of texts on vibration, computed by us. */
final class SwingCases {
  private static final int SAMPLES = 4000;

  private SwingCases() {}

  static Stream<JsonNode> masses() {
    return Reference.rows("grip-dynamics.json", "oneMass");
  }

  static Stream<JsonNode> bodies() {
    return Reference.rows("grip-dynamics.json", "sixAxes");
  }

  /** Largest pull of one mass, and what it still swings by at the end. */
  static double[] peakAndResidual(JsonNode c) {
    double[] knots = Reference.numbers(c.get("knots"));
    double frequency = c.get("frequency").doubleValue();
    Oscillator mass = new Oscillator(2 * Math.PI * frequency, c.get("zeta").doubleValue());
    mass.rest(0);
    double peak = 0;
    double last = 0;
    for (int i = 0; i + 1 < knots.length; i++) {
      double[] a = Reference.numbers(c.get("accel").get(i));
      peak = Math.max(peak, crest(mass, knots[i + 1] - knots[i], a[0], a[1], 0));
      mass.leave();
      last = a[1];
    }
    double residual = crest(mass, 1 / frequency, last, last, last);
    // The peak may come after the last knot, where the last acceleration goes on.
    return new double[] {Math.max(peak, last == 0 ? residual : 0), residual};
  }

  private static double crest(Oscillator mass, double length, double from, double to, double less) {
    mass.enter(length, new double[] {from, to - from, 0, 0, 0, 0});
    return Crest.of(s -> Math.abs(mass.at(s) - less), SAMPLES);
  }

  /** Largest pull per mass at 7 Hz when 1 m/s^2 sets in within a ramp, or at once. */
  static double overshoot(double zeta, double ramp) {
    Oscillator mass = new Oscillator(2 * Math.PI * 7, zeta);
    mass.rest(0);
    double peak = 0;
    if (ramp > 0) {
      peak = crest(mass, ramp, 0, 1, 0);
      mass.leave();
    }
    return Math.max(peak, crest(mass, 0.3, 1, 1, 0));
  }

  /** What is left at 7 Hz of stretches {length, acceleration at their start, at their end}. */
  static double left(double[]... stretches) {
    Oscillator mass = new Oscillator(2 * Math.PI * 7, 0);
    mass.rest(0);
    for (double[] s : stretches) {
      mass.enter(s[0], new double[] {s[1], s[2] - s[1], 0, 0, 0, 0});
      mass.leave();
    }
    return crest(mass, 1, 0, 0, 0);
  }

  private static GripModes modes(JsonNode c) {
    List<ContactPatch> cups = new ArrayList<>();
    for (JsonNode p : c.get("cups")) {
      cups.add(
          new ContactPatch(
              "cup",
              new Pose(Reference.vector(p.get("at")), Quaternion.IDENTITY),
              new PatchShape.Ring(p.get("a").doubleValue()),
              0.5,
              50,
              50,
              new PatchStiffness(p.get("kn").doubleValue(), p.get("ks").doubleValue()),
              Double.POSITIVE_INFINITY,
              Double.POSITIVE_INFINITY,
              false));
    }
    JsonNode b = c.get("body");
    double[] i = Reference.numbers(b.get("I"));
    MassProperties body =
        new MassProperties(
            b.get("m").doubleValue(),
            Reference.vector(b.get("com")),
            new Inertia(i[0], i[1], i[2], 0, 0, 0));
    GripStiffness k = GripStiffness.of(cups, List.of(), new boolean[cups.size()]);
    return GripModes.of(k, body, AirLoad.NONE);
  }

  /** Frequencies of a body on its cups, Hz, the slowest first. */
  static double[] frequencies(JsonNode c) {
    return modes(c).modes().stream().mapToDouble(SwingMode::frequency).toArray();
  }

  /** Largest of each component that the cups carry. */
  static double[] peaks(JsonNode c) {
    GripResponse response = new GripResponse(modes(c), c.get("zeta").doubleValue());
    double[] knots = Reference.numbers(c.get("knots"));
    double[] peak = new double[6];
    response.rest(Reference.numbers(c.get("loads").get(0)));
    for (int i = 0; i < knots.length; i++) {
      boolean tail = i == knots.length - 1;
      double[] from = Reference.numbers(c.get("loads").get(i));
      double[] to = tail ? from : Reference.numbers(c.get("loads").get(i + 1));
      double[] load = new double[36];
      for (int k = 0; k < 6; k++) {
        load[6 * k] = from[k];
        load[6 * k + 1] = to[k] - from[k];
      }
      response.enter(tail ? c.get("tail").doubleValue() : knots[i + 1] - knots[i], load);
      for (int k = 0; k < 6; k++) {
        peak[k] = Math.max(peak[k], crest(response, k));
      }
      response.leave();
    }
    return peak;
  }

  private static double crest(GripResponse response, int axis) {
    return Crest.of(
        s -> {
          response.at(s);
          return Math.abs(response.wrench()[axis]);
        },
        SAMPLES);
  }
}
