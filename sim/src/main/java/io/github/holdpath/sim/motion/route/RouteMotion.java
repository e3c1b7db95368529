package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import java.util.List;
import java.util.Optional;

/**
 * The motion that a route asks for: one law from stop to stop, with the waits between (theory,
 * sections 5.5 and 5.14). One piece for each phase of a law and one for each wait that takes time;
 * each piece lies in one move. Immutable.
 */
public final class RouteMotion implements Motion {
  private final List<MotionPiece> pieces;
  private final List<MotionSegment> segments;
  private final double duration;
  private final double heldFrom;
  private final double heldTo;

  RouteMotion(
      List<MotionPiece> pieces,
      List<MotionSegment> segments,
      double duration,
      double heldFrom,
      double heldTo) {
    this.pieces = List.copyOf(pieces);
    this.segments = List.copyOf(segments);
    this.duration = duration;
    this.heldFrom = heldFrom;
    this.heldTo = heldTo;
  }

  /**
   * Plans a route. The part is held from the end of the take's pause to the start of the release's,
   * to the end without a release, and all along without a take.
   *
   * @throws IllegalArgumentException naming the step, if a move goes along the joints, which {@link
   *     JointRoute#follow} plans, or goes nowhere or turns by half a turn, a blend does not fit
   *     (see {@link RouteCorners}) or is at a stop, a limit that its law needs is missing, a pause
   *     is negative or not finite, or takes and releases are not at most one of each in this order
   */
  public static RouteMotion plan(Route route) {
    RouteBuilder builder = new RouteBuilder(route, Optional.empty());
    for (RouteStep step : route.steps()) {
      add(step, builder);
    }
    return builder.build();
  }

  static void add(RouteStep step, RouteBuilder builder) {
    try {
      builder.add(step);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(step.pointer() + ": " + e.getMessage(), e);
    }
  }

  @Override
  public List<MotionPiece> pieces() {
    return pieces;
  }

  @Override
  public List<MotionSegment> segments() {
    return segments;
  }

  @Override
  public double duration() {
    return duration;
  }

  @Override
  public double heldFrom() {
    return heldFrom;
  }

  @Override
  public double heldTo() {
    return heldTo;
  }

  /** Empty: a planned route is exact. */
  @Override
  public List<String> notes() {
    return List.of();
  }
}
