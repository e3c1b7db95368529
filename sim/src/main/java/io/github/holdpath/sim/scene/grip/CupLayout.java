package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.Amount;
import io.github.holdpath.sim.scene.quantity.NearestName;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Names and places of suction cups. */
final class CupLayout {
  private CupLayout() {}

  /**
   * One cup.
   *
   * @param name as shown to the user
   * @param at middle of its lip, grip frame, m
   * @param diameter of the lip, m
   * @param pull of its own, N
   */
  record Spot(String name, Vec3 at, double diameter, OptionalDouble pull) {}

  /** All cups, those switched off too; empty after a fault. */
  static List<Spot> spots(Values cups, Faults faults) {
    if (cups.isThere("list")) {
      return list(cups, faults);
    }
    if (!cups.isThere("diameter")) {
      faults.add(
          cups.place("diameter"),
          "is missing: effective diameter of each lip; for example \"50 mm\"");
    }
    OptionalDouble diameter = cups.number("diameter");
    boolean grid = cups.isThere("grid");
    if (!grid && cups.isThere("spacing")) {
      faults.add(cups.place("spacing"), "belongs to a grid; take it out");
    }
    List<Vec3> places = grid ? grid(cups, faults) : ring(cups);
    if (diameter.isEmpty()) {
      return List.of();
    }
    double[] n = cups.numbers("grid");
    List<Spot> spots = new ArrayList<>();
    for (int k = 0; k < places.size(); k++) {
      int ny = n == null ? 1 : (int) n[1];
      String name = grid ? "cup " + (k / ny + 1) + "," + (k % ny + 1) : "cup " + (k + 1);
      spots.add(new Spot(name, places.get(k), diameter.getAsDouble(), OptionalDouble.empty()));
    }
    return spots;
  }

  private static List<Vec3> grid(Values cups, Faults faults) {
    double[] n = cups.numbers("grid");
    if (n == null) {
      return List.of();
    }
    boolean single = n[0] * n[1] == 1;
    Optional<Amount> spacing = cups.amount("spacing");
    if (!single && !cups.isThere("spacing")) {
      faults.add(
          cups.place("spacing"),
          "is missing: distance between the rows of the grid along x and along y; for example"
              + " \"220 120 mm\"");
    }
    if (!single && spacing.isEmpty()) {
      return List.of();
    }
    double dx = spacing.map(s -> s.get(0)).orElse(0.0);
    double dy = spacing.map(s -> s.get(1)).orElse(0.0);
    List<Vec3> places = new ArrayList<>();
    for (int i = 0; i < n[0]; i++) {
      for (int j = 0; j < n[1]; j++) {
        places.add(new Vec3((i - (n[0] - 1) / 2) * dx, (j - (n[1] - 1) / 2) * dy, 0));
      }
    }
    return places;
  }

  private static List<Vec3> ring(Values cups) {
    Optional<Values> ring = cups.group("ring");
    if (ring.isEmpty()
        || ring.get().number("count").isEmpty()
        || ring.get().number("diameter").isEmpty()) {
      return List.of();
    }
    int count = (int) ring.get().number("count").getAsDouble();
    double radius = ring.get().number("diameter").getAsDouble() / 2;
    List<Vec3> places = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      double angle = 2 * Math.PI * k / count;
      places.add(new Vec3(radius * Math.cos(angle), radius * Math.sin(angle), 0));
    }
    return places;
  }

  private static List<Spot> list(Values cups, Faults faults) {
    List<Spot> spots = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    int number = 0;
    for (Values cup : cups.groups("list")) {
      number++;
      String name = cup.text("name").orElse("cup " + number);
      if (!seen.add(name)) {
        faults.add(
            cup.place("name"),
            "another cup is called \"" + name + "\" already; give each its own name");
      }
      if (!cup.isThere("diameter") && !cups.isThere("diameter")) {
        faults.add(
            cup.place("diameter"),
            "is missing: effective diameter of the lip, here or for all cups; for example"
                + " \"50 mm\"");
      }
      OptionalDouble own = cup.number("diameter");
      OptionalDouble diameter = cup.isThere("diameter") ? own : cups.number("diameter");
      Optional<Amount> at = cup.amount("at");
      if (at.isPresent() && diameter.isPresent()) {
        Vec3 place = new Vec3(at.get().get(0), at.get().get(1), 0);
        spots.add(new Spot(name, place, diameter.getAsDouble(), cup.number("pull")));
      }
    }
    return spots;
  }

  /** The cups that pull; empty after a fault. */
  static List<Spot> switchedOn(Values cups, List<Spot> spots, Faults faults) {
    List<String> off = cups.items("off", String.class);
    List<String> names = spots.stream().map(Spot::name).toList();
    int before = faults.count();
    for (String name : off) {
      if (!names.contains(name)) {
        faults.add(
            cups.place("off"),
            "there is no cup \""
                + name
                + "\"; "
                + NearestName.hint(name, names)
                + "cups: "
                + String.join("; ", names.subList(0, Math.min(12, names.size()))));
      }
    }
    List<Spot> on = spots.stream().filter(s -> !off.contains(s.name())).toList();
    if (on.isEmpty() && faults.count() == before) {
      faults.add(cups.place("off"), "every cup is switched off; leave at least one on");
    }
    return faults.count() == before ? on : List.of();
  }
}
