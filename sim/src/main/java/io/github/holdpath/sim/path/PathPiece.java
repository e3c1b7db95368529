package io.github.holdpath.sim.path;

/**
 * A stretch of a curve as part of a chain.
 *
 * @param curve that it lies on
 * @param from where it begins on the curve, in the curve's parameter
 * @param to where it ends on the curve
 * @param start where it begins on the chain, in the chain's parameter
 * @param move index from 0 of the move it belongs to
 * @param bounds largest derivatives on it
 */
public record PathPiece(
    PathCurve curve, double from, double to, double start, int move, CurveBounds bounds) {
  /** Refuses stretches without length. */
  public PathPiece {
    if (!(from < to)) {
      throw new IllegalArgumentException("to must be above from " + from + ", but was " + to);
    }
  }

  /** Length, m, or rad where the chain only turns. */
  public double length() {
    return to - from;
  }

  /** Where it ends on the chain. */
  public double end() {
    return start + to - from;
  }

  /** Whether it is half of a blend. */
  public boolean blend() {
    return curve instanceof BlendPath;
  }
}
