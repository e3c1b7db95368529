package io.github.holdpath.sim.study;

import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;

/** Sample times of a motion: a grid of whole steps, and both ends of every piece. */
final class Sampler {
  private static final double SAME_INSTANT = 1e-9;

  private Sampler() {}

  /** What is done at a sample. */
  @FunctionalInterface
  interface Visit {
    /**
     * One sample.
     *
     * @param piece the smooth stretch it belongs to
     * @param time s, inside the piece
     */
    void at(MotionPiece piece, double time);
  }

  /** Visits every sample in order; where pieces meet, both sides. */
  static void visit(Motion motion, double step, Visit visit) {
    for (MotionPiece piece : motion.pieces()) {
      visitPiece(piece, piece.from(), piece.to(), step, visit);
    }
  }

  /** Visits the samples of one piece between two times. */
  static void visitPiece(MotionPiece piece, double from, double to, double step, Visit visit) {
    visit.at(piece, from);
    for (long i = (long) Math.floor(from / step) + 1; i * step < to - SAME_INSTANT; i++) {
      double time = i * step;
      if (time > from + SAME_INSTANT) {
        visit.at(piece, time);
      }
    }
    if (to > from) {
      visit.at(piece, to);
    }
  }
}
