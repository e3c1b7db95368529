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
 * @param override the share of full speed at which all moves are played, above 0 up to 1; a factor
 *     that each move's own {@link RouteStep.Move#override} already has in it
 */
public record Route(Pose start, LawKind law, List<RouteStep> steps, double override)
    implements MotionSource {
  /** Copies the steps; refuses an override out of range. */
  public Route {
    steps = List.copyOf(steps);
    if (!(override > 0 && override <= 1)) {
      throw new IllegalArgumentException("override must be above 0 up to 1, but was " + override);
    }
  }

  /** A route without an override for all moves. */
  public Route(Pose start, LawKind law, List<RouteStep> steps) {
    this(start, law, steps, 1);
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
