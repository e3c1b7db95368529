package io.github.holdpath.sim.motion;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.Optional;

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

  /** The first move along the joints of the robot; only a robot makes a motion of it. */
  public Optional<RouteStep.Move> firstJointMove() {
    return steps.stream()
        .filter(RouteStep.Move.class::isInstance)
        .map(RouteStep.Move.class::cast)
        .filter(move -> move.shape() instanceof MoveShape.Joints)
        .findFirst();
  }

  /**
   * The motion, if it needs no robot.
   *
   * @throws IllegalArgumentException if a move goes along the joints: see {@link
   *     JointTrack#follow(io.github.holdpath.sim.robot.Robot, Pose, Route, JointStart)}
   */
  @Override
  public Motion motion() {
    return RouteMotion.plan(this);
  }
}
