package io.github.holdpath.sim.timing;

/**
 * How finely a path is cut into cells.
 *
 * @param firstCells cells to begin with, spread evenly, at least one for each piece of the path
 * @param mostCells where refining ends; the result then says what error is left
 * @param tolerance part of the duration, by estimate, that the result may be above the optimum;
 *     infinite where the first cells are final
 * @param between whether the limits are also kept between the ends of the cells
 */
public record TimingGoal(int firstCells, int mostCells, double tolerance, boolean between) {
  /**
   * Refuses goals without cells or without tolerance.
   *
   * @throws IllegalArgumentException naming the value
   */
  public TimingGoal {
    if (firstCells < 1 || mostCells < firstCells) {
      throw new IllegalArgumentException(
          "cells must be at least 1 and not fall, but were " + firstCells + " to " + mostCells);
    }
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException("tolerance must be positive, but was " + tolerance);
    }
  }

  /**
   * Cells where they are needed, limits kept everywhere. The usual choice. It begins with 64 even
   * cells: with fewer a bend between two looks can be missed by the estimate.
   *
   * @param tolerance part of the duration, as 1e-3; it is met by estimate, not by proof
   */
  public static TimingGoal adaptive(double tolerance) {
    return new TimingGoal(64, 20_000, tolerance, true);
  }

  /**
   * A fixed number of even cells, limits at their ends alone: for studies of the method. Between
   * the ends limits may be broken.
   *
   * @param cells how many
   */
  public static TimingGoal even(int cells) {
    return new TimingGoal(cells, cells, Double.POSITIVE_INFINITY, false);
  }
}
