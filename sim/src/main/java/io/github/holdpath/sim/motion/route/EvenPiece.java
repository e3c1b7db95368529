package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.MotionPiece;

/**
 * A piece of a chain passed at an even speed, to see what its joints do by the way.
 *
 * @param path states of the chain
 * @param index of the piece
 * @param start where it begins on the chain
 * @param end where it ends
 */
record EvenPiece(ChainStates path, int index, double start, double end) implements MotionPiece {
  /** Samples 1 ms apart are then 400, s. */
  private static final double DURATION = 0.4;

  /** Speed along the chain, 1/s. */
  double rate() {
    return (end - start) / DURATION;
  }

  /** Place on the chain at a time (s). */
  double way(double time) {
    return time >= DURATION ? end : Math.min(end, start + rate() * time);
  }

  @Override
  public double from() {
    return 0;
  }

  @Override
  public double to() {
    return DURATION;
  }

  @Override
  public int segment() {
    return 0;
  }

  @Override
  public void state(double time, double[] out) {
    path.state(index, way(time), rate(), 0, out);
  }

  @Override
  public double distance(double time) {
    return way(time) - start;
  }

  @Override
  public boolean still() {
    return false;
  }
}
