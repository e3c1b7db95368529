package io.github.holdpath.sim.motion;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.path.ChainFault;
import io.github.holdpath.sim.path.ChainFaults;
import java.util.ArrayList;
import java.util.List;

/** Looks at the corners of a route that are to be rounded, before its motion is planned. */
public final class RouteCorners {
  private RouteCorners() {}

  /**
   * A corner that cannot be rounded.
   *
   * @param pointer place in the scene file of the move that ends there
   * @param fault what stands in the way
   */
  public record Fault(String pointer, ChainFault fault) {}

  /**
   * All corners of a route that cannot be rounded as told, in order.
   *
   * @throws IllegalArgumentException if a move has no path, or a blend at a stop
   */
  public static List<Fault> faults(Route route) {
    List<Fault> faults = new ArrayList<>();
    List<RouteStep.Move> open = new ArrayList<>();
    Pose at = route.start();
    Pose from = at;
    for (RouteStep step : route.steps()) {
      if (step instanceof RouteStep.Move move) {
        open.add(move);
        at = move.target();
        if (move.blend() == 0) {
          look(route, new Stretch(from, open), faults);
          open.clear();
          from = at;
        }
      } else {
        requireStopped(open);
      }
    }
    requireStopped(open);
    return faults;
  }

  private static void look(Route route, Stretch stretch, List<Fault> faults) {
    if (stretch.moves().size() > 1 && route.chain(stretch) instanceof ChainFaults chain) {
      for (ChainFault fault : chain.faults()) {
        faults.add(new Fault(stretch.moves().get(fault.corner()).pointer(), fault));
      }
    }
  }

  /** Refuses to stop behind a move with a blend. */
  static void requireStopped(List<RouteStep.Move> open) {
    if (!open.isEmpty()) {
      throw new IllegalArgumentException(
          open.get(open.size() - 1).pointer()
              + ": the path stops behind this move, so it must not have a blend");
    }
  }
}
