package io.github.holdpath.sim.scene.route;

import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteCorners;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Looks whether the blends of a route fit. */
final class BlendBuilder {
  private final Faults faults;
  private final Map<String, Values> moves = new HashMap<>();
  private Optional<Values> open = Optional.empty();
  private boolean openTurns;

  BlendBuilder(Faults faults) {
    this.faults = faults;
  }

  /**
   * A move of the route.
   *
   * @param turns whether it only turns in place
   */
  void move(Values step, boolean turns) {
    moves.put(step.place().pointer(), step);
    if (open.isPresent() && openTurns && turns) {
      faults.add(
          open.get().place("blend"),
          "both moves only turn in place, where a zone has no length; take it out to stop here");
    }
    open = Optional.of(step).filter(s -> s.isThere("blend"));
    openTurns = turns;
  }

  /** A step at which the path stops, or the end of the route. */
  void stop(String why) {
    open.ifPresent(
        step ->
            faults.add(
                step.place("blend"),
                "the path stops behind this move, for " + why + "; take the blend out"));
    open = Optional.empty();
  }

  /** Notes every blend that does not fit. */
  void check(Route route) {
    for (RouteCorners.Fault corner : RouteCorners.faults(route)) {
      Values move = moves.get(corner.pointer());
      if (move != null) {
        faults.add(move.place("blend"), RouteCorners.words(corner.fault()));
      }
    }
  }
}
