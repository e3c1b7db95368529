package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Bodies on cups against an independent program, {@code reference/README.md}. */
class SixAxesValidationTest {
  /** Tolerance that the file states for peaks. */
  private static final double PEAK = 1e-4;

  /** Eleven printed digits; both programs work in doubles. */
  private static final double FREQUENCY = 1e-9;

  private static final int SAMPLES = 4000;

  static Stream<JsonNode> bodies() {
    return Reference.rows("grip-dynamics.json", "sixAxes");
  }

  @Test
  void allFourAreThere() {
    assertEquals(4, bodies().count());
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

  @ParameterizedTest
  @MethodSource("bodies")
  void frequenciesAgree(JsonNode c) {
    double[] expected = Reference.numbers(c.get("expect").get("frequencies"));
    List<SwingMode> modes = modes(c).modes();
    for (int m = 0; m < 6; m++) {
      assertEquals(expected[m], modes.get(m).frequency(), FREQUENCY * expected[m]);
    }
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void peaksAgree(JsonNode c) {
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
        int axis = k;
        peak[k] =
            Math.max(
                peak[k],
                Crest.of(
                    s -> {
                      response.at(s);
                      return Math.abs(response.wrench()[axis]);
                    },
                    SAMPLES));
      }
      response.leave();
    }
    double[] expected = Reference.numbers(c.get("expect").get("peak"));
    for (int k = 0; k < 6; k++) {
      assertEquals(expected[k], peak[k], PEAK * expected[k], "component " + k);
    }
  }
}
