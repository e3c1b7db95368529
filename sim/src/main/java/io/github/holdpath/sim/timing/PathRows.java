package io.github.holdpath.sim.timing;

/**
 * Limits along a path, by a parameter s from 0 to {@link #length}. With the acceleration {@code u =
 * s''} and the squared rate {@code x = s'^2}, every row k at the place s is {@code a_k u + b_k x <=
 * c_k}, and {@code x} is at most a cap (theory, eq. 5.51).
 *
 * <p>A path consists of pieces within which the rows are smooth functions of s; where they jump or
 * bend sharply, a new piece begins. At the place where two pieces meet both are asked.
 */
public interface PathRows {
  /** Where the parameter ends, at least 0; m or rad or a bare number, as the path has it. */
  double length();

  /** How many rows there are, the same everywhere. */
  int rows();

  /** How many pieces there are, at least 1. */
  int pieces();

  /**
   * Where a piece begins, in the unit of s.
   *
   * @param piece 0 to {@code pieces() - 1}; piece 0 begins at 0
   */
  double start(int piece);

  /**
   * Writes the rows at a place. Allocates nothing.
   *
   * @param piece the piece to which the place belongs
   * @param s the place, within the piece
   * @param a receives the factors of u, finite
   * @param b receives the factors of x, finite
   * @param c receives the bounds, of the unit of the limited quantity; infinite where there is none
   * @param offset index of row 0 in the three arrays; the others follow
   * @return the largest permitted x, 1/s^2 in the unit of the path; infinite where there is none
   */
  double at(int piece, double s, double[] a, double[] b, double[] c, int offset);

  /** What a row limits, for reports; as "joint 3 acceleration". */
  String name(int row);

  /**
   * What sets the cap at a place, for reports; as "joint 2 speed".
   *
   * @param piece the piece to which the place belongs
   * @param s the place, within the piece
   */
  String capName(int piece, double s);
}
