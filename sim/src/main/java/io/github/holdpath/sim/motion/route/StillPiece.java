package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.MotionPiece;

/** A time of standing still. */
final class StillPiece implements MotionPiece {
  private final double from;
  private final double to;
  private final int segment;
  private final double distance;
  private final double[] state;

  /**
   * Stands in a pose.
   *
   * @param from s
   * @param to s
   * @param segment index of the move before, 0 if there is none
   * @param distance that move covered, m or rad
   * @param pose {@code X_WT}
   */
  StillPiece(double from, double to, int segment, double distance, Pose pose) {
    this.from = from;
    this.to = to;
    this.segment = segment;
    this.distance = distance;
    this.state = MotionState.atRest(pose).toArray();
  }

  @Override
  public double from() {
    return from;
  }

  @Override
  public double to() {
    return to;
  }

  @Override
  public int segment() {
    return segment;
  }

  @Override
  public void state(double time, double[] out) {
    System.arraycopy(state, 0, out, 0, state.length);
  }

  @Override
  public double distance(double time) {
    return distance;
  }

  @Override
  public boolean still() {
    return true;
  }
}
