package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Size of a cup or magnet face: a diameter, or two sides.
 *
 * @param a diameter, or side along x, m
 * @param b diameter, or side along y, m
 * @param round whether it is a diameter
 */
record SpotSize(double a, double b, boolean round) {
  /**
   * Sizes in the order of the cups or faces.
   *
   * @param missing what to say of a size that is nowhere written
   * @return empty after a fault
   */
  static List<SpotSize> of(List<PatchLayout.Spot> spots, String missing, Faults faults) {
    List<SpotSize> sizes = new ArrayList<>();
    for (PatchLayout.Spot spot : spots) {
      boolean alike = spot.own() == spot.all() && !sizes.isEmpty();
      Optional<SpotSize> size =
          alike ? Optional.of(sizes.get(0)) : of(holder(spot), spot.own(), missing, faults);
      if (size.isPresent()) {
        sizes.add(size.get());
      } else if (spot.own() == spot.all()) {
        break;
      }
    }
    return sizes.size() == spots.size() ? sizes : List.of();
  }

  private static Values holder(PatchLayout.Spot spot) {
    Values own = spot.own();
    return own.isThere("diameter") || own.isThere("size") ? own : spot.all();
  }

  private static Optional<SpotSize> of(Values holder, Values own, String missing, Faults faults) {
    if (holder.isThere("diameter") && holder.isThere("size")) {
      faults.add(
          holder.place("size"), "only one of diameter, size may be given; keep one of the two");
      return Optional.empty();
    }
    if (holder.isThere("size")) {
      Optional<Amount> sides = holder.amount("size");
      return sides.map(s -> new SpotSize(s.get(0), s.get(1), false));
    }
    if (!holder.isThere("diameter")) {
      faults.add(own.place("diameter"), missing);
    }
    return holder.amount("diameter").map(d -> new SpotSize(d.first(), d.first(), true));
  }
}
