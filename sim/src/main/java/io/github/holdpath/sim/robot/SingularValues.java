package io.github.holdpath.sim.robot;

import java.util.Arrays;

/**
 * Singular values of a Jacobian and the solutions that they give, by rotating its columns (where it
 * is wider than high, its rows) square to each other. A workspace; nothing allocates (theory, eq.
 * 8.12).
 *
 * @see "Hestenes: Inversion of matrices by biorthogonalization, J. SIAM 6, 1958 (from memory)"
 */
final class SingularValues {
  private static final int ROWS = 6;
  private static final int MOST_SWEEPS = 30;

  /** Cosine below which two columns count as square to each other. */
  private static final double SQUARE = 1e-15;

  /** How often the turns of the matrix before are gone on from, before rounding in them counts. */
  private static final int MOST_KEPT = 100;

  private final int n;
  private final boolean wide;
  private final int count;
  private final int height;
  private final double[][] b;
  private final double[][] v;
  private final double[] norm2;
  private int kept = MOST_KEPT;

  /**
   * For matrices of 6 rows.
   *
   * @param n number of columns
   */
  SingularValues(int n) {
    this.n = n;
    wide = n > ROWS;
    count = Math.min(n, ROWS);
    height = Math.max(n, ROWS);
    b = new double[count][height];
    v = new double[count][count];
    norm2 = new double[count];
  }

  /**
   * Takes a matrix apart. It begins with the turns of the matrix before: along a path the next is
   * much alike, and few are left to make.
   *
   * @param a row-major, 6 rows by n
   */
  void of(double[] a) {
    kept++;
    if (kept > MOST_KEPT) {
      kept = 0;
      for (int c = 0; c < count; c++) {
        Arrays.fill(v[c], 0);
        v[c][c] = 1;
      }
    }
    for (int c = 0; c < count; c++) {
      for (int r = 0; r < height; r++) {
        double sum = 0;
        for (int k = 0; k < count; k++) {
          sum += v[c][k] * (wide ? a[k * n + r] : a[r * n + k]);
        }
        b[c][r] = sum;
      }
    }
    for (int c = 0; c < count; c++) {
      norm2[c] = dot(b[c], b[c]);
    }
    boolean turned = true;
    for (int sweep = 0; turned && sweep < MOST_SWEEPS; sweep++) {
      turned = false;
      for (int i = 0; i < count - 1; i++) {
        for (int j = i + 1; j < count; j++) {
          turned |= square(i, j);
        }
      }
    }
    for (int c = 0; c < count; c++) {
      if (!Double.isFinite(norm2[c])) {
        kept = MOST_KEPT;
      }
    }
  }

  /** Rotates two columns square to each other; false if they are already. */
  private boolean square(int i, int j) {
    double ij = dot(b[i], b[j]);
    double ii = norm2[i];
    double jj = norm2[j];
    if (Math.abs(ij) <= SQUARE * Math.sqrt(ii * jj)) {
      return false;
    }
    double z = (jj - ii) / (2 * ij);
    double t = Math.copySign(1 / (Math.abs(z) + Math.sqrt(1 + z * z)), z);
    double c = 1 / Math.sqrt(1 + t * t);
    rotate(b[i], b[j], c, c * t);
    rotate(v[i], v[j], c, c * t);
    norm2[i] = dot(b[i], b[i]);
    norm2[j] = dot(b[j], b[j]);
    return true;
  }

  private static void rotate(double[] x, double[] y, double c, double s) {
    for (int k = 0; k < x.length; k++) {
      double xk = x[k];
      x[k] = c * xk - s * y[k];
      y[k] = s * xk + c * y[k];
    }
  }

  private static double dot(double[] x, double[] y) {
    double sum = 0;
    for (int k = 0; k < x.length; k++) {
      sum += x[k] * y[k];
    }
    return sum;
  }

  /** Least singular value. */
  double least() {
    double least = Double.POSITIVE_INFINITY;
    for (double x : norm2) {
      least = Math.min(least, x);
    }
    return Math.sqrt(least);
  }

  /** Greatest singular value. */
  double greatest() {
    double greatest = 0;
    for (double x : norm2) {
      greatest = Math.max(greatest, x);
    }
    return Math.sqrt(greatest);
  }

  /**
   * The shortest x of those that come nearest to {@code A x = y}, each part damped by {@code
   * sigma^2 / (sigma^2 + damping)}; parts without a singular value are left out.
   *
   * @param y 6 numbers
   * @param damping not negative; 0 for none
   * @param x n numbers, overwritten
   */
  void solve(double[] y, double damping, double[] x) {
    Arrays.fill(x, 0);
    double floor = 1e-28 * greatest() * greatest();
    for (int c = 0; c < count; c++) {
      if (norm2[c] <= floor) {
        continue;
      }
      double share = dot(wide ? v[c] : b[c], y) / (norm2[c] + damping);
      double[] along = wide ? b[c] : v[c];
      for (int k = 0; k < n; k++) {
        x[k] += share * along[k];
      }
    }
  }
}
