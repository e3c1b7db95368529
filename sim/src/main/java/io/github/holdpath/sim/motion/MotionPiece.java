package io.github.holdpath.sim.motion;

import java.util.Optional;

/** A stretch of time in which the motion is smooth. */
public interface MotionPiece {
  /** Start, s. */
  double from();

  /** End, s, not before {@link #from}. */
  double to();

  /**
   * Segment it belongs to, counted from 1; 0 before the first move. A wait belongs to the move
   * before it.
   */
  int segment();

  /**
   * Motion state at a time inside this piece, ends included. Allocates nothing.
   *
   * @param time s
   * @param out flat form of {@link io.github.holdpath.dynamics.spatial.MotionState}, overwritten
   */
  void state(double time, double[] out);

  /** Path length since the start of the segment, m (rad where it only turns). */
  double distance(double time);

  /** Whether the motion stands still all through this piece. */
  boolean still();

  /** The law by which it runs along its path; empty where it stands still or was recorded. */
  default Optional<LawStretch> law() {
    return Optional.empty();
  }
}
