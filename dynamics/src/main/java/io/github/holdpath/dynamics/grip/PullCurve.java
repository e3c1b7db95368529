package io.github.holdpath.dynamics.grip;

import java.util.List;
import java.util.Optional;

/**
 * Pull of a magnet's face by air gap and thickness of the sheet, from the rows of a data sheet.
 * Between the rows it follows the magnetic flux, to which the square root of the pull is
 * proportional (Maxwell's stress, {@code P = B^2 A/(2 mu_0)}), so that it does not promise more
 * than the rows carry:
 *
 * <ul>
 *   <li>over the gap, {@code 1/sqrt(P)} is linear: exact where the gap is one resistance in a row
 *       with the rest of the circuit, and below the truth where the pull falls off exponentially,
 *       as under faces with many poles. A straight line in P or in its logarithm lies above both;
 *   <li>over the thickness, {@code sqrt(P)} is linear: exact for a thin sheet full of flux, and
 *       below the truth where more thickness helps less and less;
 *   <li>nothing is extrapolated upwards: a gap below all rows counts as the least of them, a sheet
 *       above all rows as the thickest.
 * </ul>
 *
 * @param rows of the data sheet, at least one
 */
public record PullCurve(List<Row> rows) {
  /**
   * One row.
   *
   * @param gap between face and sheet, m, not negative
   * @param thickness of the sheet, m, positive
   * @param pull N, positive
   */
  public record Row(double gap, double thickness, double pull) {}

  /** Copies the rows; refuses none and such as contradict each other. */
  public PullCurve {
    rows = List.copyOf(rows);
    for (Row r : rows) {
      if (!(r.gap >= 0 && r.thickness > 0 && r.pull > 0 && Double.isFinite(r.pull))) {
        throw new IllegalArgumentException("no magnet has the row " + r);
      }
    }
    if (rows.isEmpty() || contradiction(rows).isPresent()) {
      throw new IllegalArgumentException("a pull curve needs rows that agree, but has " + rows);
    }
  }

  /**
   * Two rows that cannot both be right: the same gap and thickness twice, or more pull at a gap
   * that is no smaller on a sheet that is no thicker.
   *
   * @param higher index of the row that pulls too much, or the second of two alike
   * @param lower index of the other
   */
  public record Contradiction(int higher, int lower) {}

  /** The first contradiction in a list of rows, if any. */
  public static Optional<Contradiction> contradiction(List<Row> rows) {
    for (int i = 0; i < rows.size(); i++) {
      Row a = rows.get(i);
      for (int j = 0; j < rows.size(); j++) {
        Row b = rows.get(j);
        boolean alike = j < i && a.gap == b.gap && a.thickness == b.thickness;
        if (alike || (a.gap >= b.gap && a.thickness <= b.thickness && a.pull > b.pull)) {
          return Optional.of(new Contradiction(i, j));
        }
      }
    }
    return Optional.empty();
  }

  /** The thinnest sheet of the rows, m; a thinner one is not covered. */
  public double leastThickness() {
    return rows.stream().mapToDouble(Row::thickness).min().orElseThrow();
  }

  /** The widest gap that is covered for a sheet, m. */
  public double mostGap(double thickness) {
    return Math.min(mostGapAt(below(thickness)), mostGapAt(above(thickness)));
  }

  private double mostGapAt(double tabulated) {
    return at(tabulated).get(at(tabulated).size() - 1).gap;
  }

  /**
   * The pull.
   *
   * @param gap m, at most {@link #mostGap}
   * @param thickness m, at least {@link #leastThickness}
   * @return N
   */
  public double pull(double gap, double thickness) {
    if (!(gap >= 0) || !(thickness >= leastThickness()) || gap > mostGap(thickness)) {
      throw new IllegalArgumentException(
          "the rows do not cover a gap of " + gap + " m and a sheet of " + thickness + " m");
    }
    double below = below(thickness);
    double above = above(thickness);
    double thin = Math.sqrt(overGap(at(below), gap));
    if (below == above) {
      return thin * thin;
    }
    double thick = Math.sqrt(overGap(at(above), gap));
    double root = thin + (thick - thin) * (thickness - below) / (above - below);
    return root * root;
  }

  private static double overGap(List<Row> byGap, double gap) {
    Row before = byGap.get(0);
    for (Row row : byGap) {
      if (row.gap >= gap) {
        if (row == before || row.gap == gap) {
          return row.pull;
        }
        double u = (gap - before.gap) / (row.gap - before.gap);
        double root = (1 - u) / Math.sqrt(before.pull) + u / Math.sqrt(row.pull);
        return 1 / (root * root);
      }
      before = row;
    }
    throw new IllegalArgumentException("the rows do not cover a gap of " + gap + " m");
  }

  /** The rows of one thickness by rising gap. */
  private List<Row> at(double thickness) {
    return rows.stream()
        .filter(r -> r.thickness == thickness)
        .sorted((a, b) -> Double.compare(a.gap, b.gap))
        .toList();
  }

  private double below(double thickness) {
    return rows.stream()
        .mapToDouble(Row::thickness)
        .filter(t -> t <= thickness)
        .max()
        .orElseGet(this::leastThickness);
  }

  /** The next thickness upwards; the thickest row for a sheet above all. */
  private double above(double thickness) {
    return rows.stream()
        .mapToDouble(Row::thickness)
        .filter(t -> t >= thickness)
        .min()
        .orElseGet(() -> below(thickness));
  }
}
