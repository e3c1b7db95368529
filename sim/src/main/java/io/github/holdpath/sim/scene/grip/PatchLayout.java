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
import java.util.Set;

/** Names and places of cups or magnet faces: in a grid, on a ring, or one by one. */
final class PatchLayout {
  private final Values all;
  private final String word;
  private final Faults faults;

  /**
   * Begins.
   *
   * @param all fields of all cups or faces
   * @param word for one of them, {@code cup} or {@code face}
   */
  PatchLayout(Values all, String word, Faults faults) {
    this.all = all;
    this.word = word;
    this.faults = faults;
  }

  /**
   * One cup or face.
   *
   * @param name as shown to the user
   * @param at its middle, grip frame, m
   * @param own its fields in a list; those of all in a grid or on a ring
   * @param all fields of all
   */
  record Spot(String name, Vec3 at, Values own, Values all) {
    /** Where a field of this cup or face is written: by itself, or else for all. */
    Values holder(String field) {
      return own.isThere(field) ? own : all;
    }
  }

  /** All of them, those switched off too; empty after some faults. */
  List<Spot> spots() {
    if (all.isThere("list")) {
      return list();
    }
    boolean grid = all.isThere("grid");
    if (!grid && all.isThere("spacing")) {
      faults.add(all.place("spacing"), "belongs to a grid; take it out");
    }
    List<Vec3> places = grid ? grid() : ring();
    double[] n = all.numbers("grid");
    int ny = n == null ? 1 : (int) n[1];
    List<Spot> spots = new ArrayList<>();
    for (int k = 0; k < places.size(); k++) {
      String name = grid ? word + " " + (k / ny + 1) + "," + (k % ny + 1) : word + " " + (k + 1);
      spots.add(new Spot(name, places.get(k), all, all));
    }
    return spots;
  }

  private List<Vec3> grid() {
    double[] n = all.numbers("grid");
    if (n == null) {
      return List.of();
    }
    boolean single = n[0] * n[1] == 1;
    Optional<Amount> spacing = all.amount("spacing");
    if (!single && !all.isThere("spacing")) {
      faults.add(
          all.place("spacing"),
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

  private List<Vec3> ring() {
    Optional<Values> ring = all.group("ring");
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

  private List<Spot> list() {
    List<Spot> spots = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    int number = 0;
    for (Values one : all.groups("list")) {
      number++;
      String name = one.text("name").orElse(word + " " + number);
      if (!seen.add(name)) {
        faults.add(
            one.place("name"),
            "another " + word + " is called \"" + name + "\" already; give each its own name");
      }
      one.amount("at")
          .ifPresent(at -> spots.add(new Spot(name, new Vec3(at.get(0), at.get(1), 0), one, all)));
    }
    return spots;
  }

  /** Those that pull; empty after a fault. */
  List<Spot> switchedOn(List<Spot> spots) {
    List<String> off = all.items("off", String.class);
    List<String> names = spots.stream().map(Spot::name).toList();
    int before = faults.count();
    for (String name : off) {
      if (!names.contains(name)) {
        faults.add(
            all.place("off"),
            "there is no "
                + word
                + " \""
                + name
                + "\"; "
                + NearestName.hint(name, names)
                + word
                + "s: "
                + String.join("; ", names.subList(0, Math.min(12, names.size()))));
      }
    }
    List<Spot> on = spots.stream().filter(s -> !off.contains(s.name())).toList();
    if (on.isEmpty() && faults.count() == before) {
      faults.add(all.place("off"), "every " + word + " is switched off; leave at least one on");
    }
    return faults.count() == before ? on : List.of();
  }
}
