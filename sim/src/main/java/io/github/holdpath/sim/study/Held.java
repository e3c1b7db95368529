package io.github.holdpath.sim.study;

import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;

/**
 * When the part counts as held. Where a stretch ends at the very instant of taking or releasing,
 * the accelerations of its end are not the part's.
 */
final class Held {
  private final double from;
  private final double to;

  Held(Motion motion) {
    this.from = motion.heldFrom();
    this.to = Math.max(motion.heldFrom(), motion.heldTo());
  }

  /** Start of the held part of a piece, s. */
  double from(MotionPiece piece) {
    return Math.max(piece.from(), from);
  }

  /** End of the held part of a piece, s; before its start where the piece is not held. */
  double to(MotionPiece piece) {
    return Math.min(piece.to(), to);
  }

  /** Whether the part is held in a piece, for longer than an instant unless it is never longer. */
  boolean in(MotionPiece piece) {
    double start = from(piece);
    double end = to(piece);
    return start < end || (start == end && from == to);
  }

  /** Whether the part is held in a piece at a time inside it. */
  boolean at(MotionPiece piece, double time) {
    return in(piece) && time >= from && time <= to;
  }
}
