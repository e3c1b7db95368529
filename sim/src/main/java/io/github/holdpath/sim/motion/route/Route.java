package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * A planned route: steps from a start pose. It stops at every wait and grip step, at its end, and
 * after each move without a blend. Immutable; what was planned of it once is kept. Two routes are
 * equal if start, law, steps and override are.
 */
public final class Route implements MotionSource {
  private final Pose start;
  private final LawKind law;
  private final List<RouteStep> steps;
  private final double override;
  private final AtomicReference<@Nullable Motion> planned = new AtomicReference<>();

  /**
   * Takes the steps.
   *
   * @param start {@code X_WT} at time 0
   * @param law of every move
   * @param steps in order; at most one {@link RouteStep.Take}, and a {@link RouteStep.Release} only
   *     after it
   * @param override the share of full speed at which all moves are played, above 0 up to 1; a
   *     factor that each move's own {@link RouteStep.Move#override} already has in it
   */
  public Route(Pose start, LawKind law, List<? extends RouteStep> steps, double override) {
    if (!(override > 0 && override <= 1)) {
      throw new IllegalArgumentException("override must be above 0 up to 1, but was " + override);
    }
    this.start = start;
    this.law = law;
    this.steps = List.copyOf(steps);
    this.override = override;
  }

  /** A route without an override for all moves. */
  public Route(Pose start, LawKind law, List<? extends RouteStep> steps) {
    this(start, law, steps, 1);
  }

  /** {@code X_WT} at time 0. */
  public Pose start() {
    return start;
  }

  /** Law of every move. */
  public LawKind law() {
    return law;
  }

  /** Steps in order. */
  public List<RouteStep> steps() {
    return steps;
  }

  /** Share of full speed at which all moves are played, above 0 up to 1. */
  public double override() {
    return override;
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
   *     JointRoute#follow(io.github.holdpath.sim.robot.Robot, Pose, Route, JointStart)}
   */
  @Override
  public Motion motion() {
    Motion known = planned.get();
    if (known == null) {
      known = RouteMotion.plan(this);
      planned.set(known);
    }
    return known;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Route route
        && start.equals(route.start)
        && law == route.law
        && steps.equals(route.steps)
        && override == route.override;
  }

  @Override
  public int hashCode() {
    return Objects.hash(start, law, steps, override);
  }

  @Override
  public String toString() {
    return "Route[start=" + start + ", law=" + law + ", steps=" + steps + "]";
  }
}
