package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import java.util.Arrays;
import java.util.List;

/**
 * A motion that remembers where it was looked at on a first pass, for others that look at the same
 * times: a state may take the kinematics of a whole arm. To a bit the same states. A workspace, for
 * one thread.
 */
final class RememberedMotion implements Motion {
  /** Most states that a piece remembers: 16 MB. */
  private static final int MOST = 100_000;

  private final Motion motion;
  private final List<MotionPiece> pieces;

  RememberedMotion(Motion motion) {
    this.motion = motion;
    pieces = motion.pieces().stream().map(p -> (MotionPiece) new Piece(p)).toList();
  }

  @Override
  public List<MotionPiece> pieces() {
    return pieces;
  }

  @Override
  public List<MotionSegment> segments() {
    return motion.segments();
  }

  @Override
  public double duration() {
    return motion.duration();
  }

  @Override
  public double heldFrom() {
    return motion.heldFrom();
  }

  @Override
  public double heldTo() {
    return motion.heldTo();
  }

  @Override
  public List<String> notes() {
    return motion.notes();
  }

  /** Keeps states while their times ascend; looks them up by the place after the last hit. */
  private static final class Piece implements MotionPiece {
    private final MotionPiece inner;
    private double[] times = new double[64];
    private double[] states = new double[64 * MotionState.SIZE];
    private int size;
    private int next;

    Piece(MotionPiece inner) {
      this.inner = inner;
    }

    @Override
    public void state(double time, double[] out) {
      int known = next < size && times[next] == time ? next : find(time);
      if (known >= 0) {
        System.arraycopy(states, known * MotionState.SIZE, out, 0, MotionState.SIZE);
        next = known + 1;
        return;
      }
      inner.state(time, out);
      if (size < MOST && (size == 0 || time > times[size - 1])) {
        keep(time, out);
      }
    }

    private int find(double time) {
      return size == 0 || time > times[size - 1] ? -1 : Arrays.binarySearch(times, 0, size, time);
    }

    private void keep(double time, double[] state) {
      if (size == times.length) {
        times = Arrays.copyOf(times, 2 * size);
        states = Arrays.copyOf(states, 2 * states.length);
      }
      times[size] = time;
      System.arraycopy(state, 0, states, size * MotionState.SIZE, MotionState.SIZE);
      size++;
    }

    @Override
    public double from() {
      return inner.from();
    }

    @Override
    public double to() {
      return inner.to();
    }

    @Override
    public int segment() {
      return inner.segment();
    }

    @Override
    public double distance(double time) {
      return inner.distance(time);
    }

    @Override
    public boolean still() {
      return inner.still();
    }
  }
}
