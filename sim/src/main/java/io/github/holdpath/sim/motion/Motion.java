package io.github.holdpath.sim.motion;

import java.util.List;

/**
 * Motion of the grip frame T in the world, as a chain of pieces inside which everything is smooth.
 * Where two pieces meet, acceleration may jump: each side is a sample of its own piece.
 */
public interface Motion {
  /** Pieces in order of time without gaps; the first begins at 0. */
  List<MotionPiece> pieces();

  /** Moves in order; a recording is one. */
  List<MotionSegment> segments();

  /** End of the last piece, s. */
  double duration();

  /** Instant from which the part counts as held, s; not below {@link #heldTo} if never held. */
  double heldFrom();

  /** Instant until which the part counts as held, s. */
  double heldTo();

  /** What a user must know about how this motion was got, one sentence each; may be empty. */
  List<String> notes();
}
