package io.github.holdpath.sim.timing;

import java.util.Arrays;

/** Rows already asked for, one after the other, so that no place is asked twice. */
final class RowStore {
  double[] a = new double[0];
  double[] b = new double[0];
  double[] c = new double[0];
  double[] cap = new double[0];
  int rows;
  private int used;

  /** Forgets all places; memory is kept. */
  void clear(int rowCount) {
    rows = rowCount;
    used = 0;
  }

  /**
   * Asks for the rows of a place.
   *
   * @param most what a cap is cut to, so that infinite ones can be computed with
   * @return number of the place, from 0
   */
  int add(PathRows path, int piece, double s, double most) {
    int from = used * rows;
    if (used == cap.length) {
      int places = Math.max(64, 2 * used);
      cap = Arrays.copyOf(cap, places);
    }
    if (from + rows > a.length) {
      int size = Math.max(from + rows, cap.length * rows);
      a = Arrays.copyOf(a, size);
      b = Arrays.copyOf(b, size);
      c = Arrays.copyOf(c, size);
    }
    double top = path.at(piece, s, a, b, c, from);
    double sum = 0;
    for (int k = from; k < from + rows; k++) {
      // 0 times a finite number is 0, times any other it is NaN.
      sum += 0 * a[k] + 0 * b[k] + (c[k] > Double.NEGATIVE_INFINITY ? 0 : Double.NaN);
    }
    if (!(sum == 0 && top >= 0)) {
      throw new IllegalArgumentException(
          "path must give finite factors, bounds above minus infinity and a cap of at least 0, but"
              + " did not at s = "
              + s);
    }
    cap[used] = Math.min(top, most);
    return used++;
  }
}
