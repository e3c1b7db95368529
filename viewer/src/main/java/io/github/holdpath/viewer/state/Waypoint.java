package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.recorded.Recording;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.FactorTrace;
import java.util.ArrayList;
import java.util.List;

/**
 * A place that the scene tells, with the names of all moves that end there.
 *
 * @param place origin of the grip frame, world axes, m
 * @param label names, the first one first
 */
public record Waypoint(Vec3 place, String label) {
  /** Places nearer than this are one, m. */
  private static final double SAME = 1e-6;

  /** Those of a scene; of a recording its two ends. */
  static List<Waypoint> of(Scene scene, Motion motion, FactorTrace trace) {
    List<Waypoint> all = new ArrayList<>();
    if (scene.motion() instanceof Recording || motion.segments().isEmpty()) {
      add(all, trace.position(0), "start");
      add(all, trace.position(trace.size() - 1), "end");
      return all;
    }
    if (scene.motion() instanceof Route route) {
      add(all, route.start().position(), "start");
      int move = 0;
      for (RouteStep step : route.steps()) {
        if (step instanceof RouteStep.Move m) {
          move++;
          add(all, m.target().position(), m.name().isEmpty() ? "move " + move : m.name());
        }
      }
    }
    return all;
  }

  private static void add(List<Waypoint> all, Vec3 place, String name) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).place.minus(place).norm() < SAME) {
        all.set(i, new Waypoint(all.get(i).place, all.get(i).label + ", " + name));
        return;
      }
    }
    all.add(new Waypoint(place, name));
  }
}
