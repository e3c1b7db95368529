package io.github.holdpath.sim.robot;

/**
 * Inverse of a Jacobian of six drives, by Gauss and Jordan's elimination with row pivots: an order
 * cheaper than {@link SingularValues}, and as exact while the matrix is far from singular. A
 * workspace; nothing allocates.
 *
 * @see "Golub, Van Loan: Matrix Computations, 4th ed. 2013, sections 2.3 and 3.4 (from memory)"
 */
final class SquareInverse {
  /** Rows and columns. */
  static final int N = 6;

  private final double[] a = new double[N * N];
  private final double[] inverse = new double[N * N];
  private double bound = Double.POSITIVE_INFINITY;

  /**
   * Inverts.
   *
   * @param matrix row-major, N by N
   * @return false if it has no inverse; then {@link #solve} is of no use
   */
  boolean of(double[] matrix) {
    System.arraycopy(matrix, 0, a, 0, N * N);
    double size = norm2(a);
    for (int i = 0; i < N; i++) {
      for (int k = 0; k < N; k++) {
        inverse[i * N + k] = i == k ? 1 : 0;
      }
    }
    bound = Double.POSITIVE_INFINITY;
    for (int c = 0; c < N; c++) {
      int pivot = pivot(c);
      double head = a[pivot * N + c];
      if (!(Math.abs(head) > 0)) {
        return false;
      }
      swap(a, pivot, c);
      swap(inverse, pivot, c);
      clear(c, 1 / head);
    }
    bound = Math.sqrt(size * norm2(inverse));
    return Double.isFinite(bound);
  }

  private int pivot(int c) {
    int best = c;
    for (int r = c + 1; r < N; r++) {
      best = Math.abs(a[r * N + c]) > Math.abs(a[best * N + c]) ? r : best;
    }
    return best;
  }

  private static void swap(double[] m, int x, int y) {
    for (int k = 0; x != y && k < N; k++) {
      double kept = m[x * N + k];
      m[x * N + k] = m[y * N + k];
      m[y * N + k] = kept;
    }
  }

  /** Makes row c begin with 1 and takes it from all others. */
  private void clear(int c, double scale) {
    for (int k = 0; k < N; k++) {
      a[c * N + k] *= scale;
      inverse[c * N + k] *= scale;
    }
    for (int r = 0; r < N; r++) {
      double share = a[r * N + c];
      if (r != c && share != 0) {
        for (int k = 0; k < N; k++) {
          a[r * N + k] -= share * a[c * N + k];
          inverse[r * N + k] -= share * inverse[c * N + k];
        }
      }
    }
  }

  private static double norm2(double[] m) {
    double sum = 0;
    for (double x : m) {
      sum += x * x;
    }
    return sum;
  }

  /**
   * At least the matrix's condition, greatest by least singular value: the product of both
   * Frobenius norms, which are no less than the greatest singular values of matrix and inverse.
   */
  double bound() {
    return bound;
  }

  /** The solution x of {@code A x = y}, both N numbers. */
  void solve(double[] y, double[] x) {
    for (int r = 0; r < N; r++) {
      double sum = 0;
      for (int k = 0; k < N; k++) {
        sum += inverse[r * N + k] * y[k];
      }
      x[r] = sum;
    }
  }
}
