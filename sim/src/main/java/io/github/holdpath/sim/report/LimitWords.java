package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.LimitUse;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The formulas of a patch's limits, for {@code explain}. */
final class LimitWords {
  private static final String GRIP = "mu N0 / (G - mu n), G what fx, fy and mz ask of friction";
  private static final String NO_LIMIT = "no limit";
  private static final Map<String, String> FORMULAS = formulas();

  private LimitWords() {}

  private static Map<String, String> formulas() {
    Map<String, String> map = new LinkedHashMap<>();
    map.put("slip", GRIP);
    map.put("twist", GRIP);
    map.put("peel", "N0 k / (hypot(mx, my) - k n), k half the radius of the lip");
    map.put("tip", "N0 k / (hypot(mx, my) - k n), k the radius of the pad");
    map.put("tip about x", "N0 k / (|mx| - k n), k half the pad along its y");
    map.put("tip about y", "N0 k / (|my| - k n), k half the pad along its x");
    map.put("release", "N0 / -n");
    map.put("crush", "(Nmax - N0) / n, Nmax the largest normal force permitted");
    map.put("crush at the edge", "(pmax A - N0) / (n + |mx|/kx + |my|/ky)");
    map.put("opens at an edge", "N0 / (|mx|/kx + |my|/ky - n), kx and ky as in the theory");
    return Map.copyOf(map);
  }

  /** A line for each kind of limit that occurs, in the order of its first occurrence. */
  static List<String> legend(List<List<LimitUse>> limits) {
    Set<String> labels = new LinkedHashSet<>();
    limits.forEach(patch -> patch.forEach(limit -> labels.add(limit.label())));
    List<String> lines = new ArrayList<>();
    for (String label : labels) {
      lines.add("  " + Text.left(label, 18) + FORMULAS.getOrDefault(label, ""));
    }
    return lines;
  }

  /** How near a patch is to peeling or tipping, with its numbers put in. */
  static List<String> tilt(ContactPatch patch, Wrench share) {
    PatchShape shape = patch.shape();
    Vec3 moment = share.moment();
    double n = share.force().z();
    List<String> lines = new ArrayList<>();
    if (shape.round()) {
      double lever = shape.sealed() ? shape.kernX() : shape.edgeX();
      double tilting = Math.hypot(moment.x(), moment.y());
      lines.add(tilt(shape.sealed() ? "peel" : "tip", "hypot(mx, my)", lever, patch, tilting, n));
      return lines;
    }
    if (Double.isFinite(shape.edgeX())) {
      lines.add(tilt("tip about x", "|mx|", shape.edgeX(), patch, Math.abs(moment.x()), n));
    }
    lines.add(tilt("tip about y", "|my|", shape.edgeY(), patch, Math.abs(moment.y()), n));
    return lines;
  }

  private static String tilt(
      String label, String symbol, double lever, ContactPatch patch, double tilting, double n) {
    double reserve = lever * patch.preload();
    double demand = tilting - lever * n;
    return "  "
        + label
        + " at k = "
        + ExplainReport.figure(lever)
        + " m: N0 k / ("
        + symbol
        + " - k n)\n    = "
        + quotient(reserve, demand);
  }

  /** How near a patch that is pulled is to letting go. */
  static Optional<String> release(ContactPatch patch, Wrench share) {
    double pulled = -share.force().z();
    if (quotient(patch.preload(), pulled).equals(NO_LIMIT)) {
      return Optional.empty();
    }
    return Optional.of("  release: N0 / -n = " + quotient(patch.preload(), pulled));
  }

  /** A reserve by a demand with its result; far beyond any use there is no limit. */
  static String quotient(double reserve, double demand) {
    if (!(demand > 0) || reserve / demand >= HoldModel.NO_LIMIT) {
      return NO_LIMIT;
    }
    return number(reserve) + " / " + number(demand) + " = " + number(reserve / demand);
  }

  private static String number(double v) {
    return Text.number(v, 6);
  }
}
