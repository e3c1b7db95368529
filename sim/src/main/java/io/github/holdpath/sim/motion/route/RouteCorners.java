package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.path.ChainFault;
import io.github.holdpath.sim.path.ChainFaults;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
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
   * All corners of a route that cannot be rounded as told, in order. Corners between stops with a
   * move along the joints among them wait for the robot, as {@link JointRoute#follow} has it.
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

  /** What stands in the way of a blend and what to write instead. */
  public static String words(ChainFault fault) {
    if (!(fault.largestZone() > 0)) {
      return fault.message() + "; take the blend out";
    }
    String fits =
        BigDecimal.valueOf(fault.largestZone() * 1000)
            .round(new MathContext(10)) // 500 mm may come out half a digit below
            .round(new MathContext(4, RoundingMode.DOWN))
            .stripTrailingZeros()
            .toPlainString();
    return fault.message() + "; write \"" + fits + " mm\" or less";
  }

  private static void look(Route route, Stretch stretch, List<Fault> faults) {
    // Where a move goes along the joints corners are looked at with the robot.
    if (stretch.moves().size() > 1
        && !stretch.joints()
        && Chains.of(stretch) instanceof ChainFaults chain) {
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
