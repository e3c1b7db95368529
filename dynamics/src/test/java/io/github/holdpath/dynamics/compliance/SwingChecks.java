package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.OutsideCheck;
import io.github.holdpath.dynamics.Reference;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Outside checks of the swing of a part on its grip, for the verification page. */
public final class SwingChecks {
  private static final String GROUP = "Swing of a part on its grip";
  private static final String TEXTBOOK = "any text on vibration";
  private static final String SECOND = "independent program in another language";

  /** Half the last of six printed digits. */
  private static final double SIX = 5e-6;

  private SwingChecks() {}

  /** All of them. */
  public static List<OutsideCheck> all() {
    List<OutsideCheck> list = new ArrayList<>();
    add(list, "step, largest per final", SwingCases.overshoot(0, 0), 2);
    add(list, "step, 5 % of damping", SwingCases.overshoot(0.05, 0), 1.85876);
    add(list, "ramp of 0.06 s at 7 Hz", SwingCases.overshoot(0, 0.06), 1.73407);
    add(list, "the same, 5 % of damping", SwingCases.overshoot(0.05, 0.06), 1.63054);
    double[] push = {0.22, 5, 5};
    double[] brake = {0.22, -5, -5};
    add(list, "left of a pulse of 5 m/s^2 for 0.22 s, m/s^2", SwingCases.left(push), 9.92115);
    add(list, "left of one each way, m/s^2", SwingCases.left(push, brake), 19.6858);
    add(
        list,
        "the same with ramps of 0.05 s, m/s^2",
        SwingCases.left(
            new double[] {0.05, 0, 5},
            new double[] {0.17, 5, 5},
            new double[] {0.05, 5, -5},
            new double[] {0.17, -5, -5},
            new double[] {0.05, -5, 0}),
        15.9521);
    sets(list);
    return list;
  }

  private static void add(List<OutsideCheck> list, String what, double ours, double theirs) {
    list.add(OutsideCheck.of(GROUP, what, TEXTBOOK, ours, theirs, SIX));
  }

  private static void sets(List<OutsideCheck> list) {
    double one = 0;
    for (JsonNode c : SwingCases.masses().toList()) {
      double[] ours = SwingCases.peakAndResidual(c);
      double peak = c.get("expect").get("peak").doubleValue();
      double left = c.get("expect").get("residual").doubleValue();
      one = Math.max(one, Math.abs(ours[0] - peak) / peak);
      one = Math.max(one, Math.abs(ours[1] - left) / peak);
    }
    int masses = (int) SwingCases.masses().count();
    list.add(OutsideCheck.set(GROUP, "one mass: peak and what is left", SECOND, masses, one, 1e-5));
    double frequency = 0;
    double peak = 0;
    for (JsonNode c : SwingCases.bodies().toList()) {
      frequency = Math.max(frequency, most(c, "frequencies", SwingCases.frequencies(c)));
      peak = Math.max(peak, most(c, "peak", SwingCases.peaks(c)));
    }
    int bodies = (int) SwingCases.bodies().count();
    list.add(
        OutsideCheck.set(
            GROUP, "body on cups, six axes: frequencies", SECOND, bodies, frequency, 1e-9));
    list.add(OutsideCheck.set(GROUP, "the same: peaks carried", SECOND, bodies, peak, 1e-4));
  }

  private static double most(JsonNode c, String key, double[] ours) {
    double[] theirs = Reference.numbers(c.get("expect").get(key));
    double most = 0;
    for (int k = 0; k < theirs.length; k++) {
      most = Math.max(most, Math.abs(ours[k] - theirs[k]) / Math.abs(theirs[k]));
    }
    return most;
  }
}
