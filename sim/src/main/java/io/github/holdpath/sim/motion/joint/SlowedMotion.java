package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.KnownJoints;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A motion of which some stretches, from stop to stop, are played slower: the same path, k times as
 * fast, so speed times k, acceleration times k squared, jerk times k cubed (theory, eq. 8.25).
 * Immutable.
 */
public final class SlowedMotion implements Motion {
  private final Motion inner;
  private final double[] factors;

  /** By the index of the move. */
  private final double[] moves;

  private final List<MotionPiece> pieces;
  private final List<MotionSegment> segments;
  private final List<String> notes;

  /**
   * Slows.
   *
   * @param inner motion to play
   * @param factors k of each piece, above 0, at most 1; equal within a stretch
   * @param notes a sentence for each stretch that is slowed
   */
  SlowedMotion(Motion inner, double[] factors, List<String> notes) {
    this.inner = inner;
    this.factors = factors.clone();
    this.moves = new double[inner.segments().size() + 1];
    Arrays.fill(moves, 1);
    List<MotionPiece> slower = new ArrayList<>();
    double time = 0;
    for (int i = 0; i < factors.length; i++) {
      MotionPiece piece = inner.pieces().get(i);
      double end = time + (piece.to() - piece.from()) / factors[i];
      slower.add(slower(piece, factors[i], time, end));
      if (!piece.still()) {
        moves[piece.segment()] = factors[i];
      }
      time = end;
    }
    this.pieces = List.copyOf(slower);
    this.segments = inner.segments().stream().map(this::slowed).toList();
    List<String> all = new ArrayList<>(inner.notes());
    all.addAll(notes);
    this.notes = List.copyOf(all);
  }

  private static MotionPiece slower(MotionPiece piece, double k, double from, double to) {
    SlowedPiece slower = new SlowedPiece(piece, k, from, to);
    return piece instanceof JointedPiece known
        ? new KnownJoints(slower, known.alongPath(), slower.joints(known))
        : slower;
  }

  private MotionSegment slowed(MotionSegment s) {
    double k = factor(s.index());
    return new MotionSegment(
        s.index(),
        s.pointer(),
        s.name(),
        later(s.from()),
        later(s.to()),
        s.length(),
        s.turn(),
        k * s.peakSpeed(),
        k * k * s.peakAcceleration(),
        k * k * k * s.peakJerk(),
        k * s.peakTurnSpeed(),
        k * k * s.peakTurnAcceleration(),
        k * k * k * s.peakTurnJerk());
  }

  /** The instant at which what was at a time is now, s. */
  private double later(double time) {
    int low = 0;
    int high = factors.length - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (time <= inner.pieces().get(middle).to()) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    MotionPiece piece = inner.pieces().get(low);
    MotionPiece slower = pieces.get(low);
    return time >= piece.to() ? slower.to() : slower.from() + (time - piece.from()) / factors[low];
  }

  /** The share of its own speed at which a move is played, above 0, at most 1. */
  public double factor(int segment) {
    return moves[segment];
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
    return pieces.get(pieces.size() - 1).to();
  }

  @Override
  public double heldFrom() {
    return later(inner.heldFrom());
  }

  @Override
  public double heldTo() {
    return later(inner.heldTo());
  }

  @Override
  public List<String> notes() {
    return notes;
  }
}
