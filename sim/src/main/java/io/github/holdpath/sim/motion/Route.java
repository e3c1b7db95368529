package io.github.holdpath.sim.motion;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;

/**
 * A planned route: steps from a start pose. It stops at every wait and grip step, at its end, and
 * after each move without a blend.
 *
 * @param start {@code X_WT} at time 0
 * @param law of every move
 * @param steps in order; at most one {@link RouteStep.Take}, and a {@link RouteStep.Release} only
 *     after it
 */
public record Route(Pose start, LawKind law, List<RouteStep> steps) implements MotionSource {
  /** Copies the steps. */
  public Route {
    steps = List.copyOf(steps);
  }

  @Override
  public Motion motion() {
    return RouteMotion.plan(this);
  }
}
