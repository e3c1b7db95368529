package io.github.holdpath.sim.motion.recorded;

/**
 * Solves {@code A x = b} for a symmetric positive definite matrix that is zero away from its
 * diagonal, in time and memory that grow with its size alone. The dense library the project uses
 * has no such form.
 */
final class BandedCholesky {
  private final int size;
  private final int band;
  private final int width;
  private final double[] lower;

  /**
   * A matrix of zeros.
   *
   * @param size rows
   * @param band number of diagonals below the main one
   */
  BandedCholesky(int size, int band) {
    this.size = size;
    this.band = band;
    this.width = band + 1;
    this.lower = new double[size * width];
  }

  /** Adds to the entry in row i and column j of the lower half, {@code i - band <= j <= i}. */
  void add(int i, int j, double value) {
    lower[i * width + band - (i - j)] += value;
  }

  /**
   * Overwrites the matrix by its factor L, {@code A = L L^T}.
   *
   * @throws IllegalArgumentException if the matrix is not positive definite
   */
  void factor() {
    for (int i = 0; i < size; i++) {
      for (int j = Math.max(0, i - band); j <= i; j++) {
        double s = get(i, j) - dotBefore(i, j);
        if (j < i) {
          set(i, j, s / get(j, j));
        } else if (s > 0) {
          set(i, i, Math.sqrt(s));
        } else {
          throw new IllegalArgumentException("matrix must be positive definite, row " + i);
        }
      }
    }
  }

  private double dotBefore(int i, int j) {
    double s = 0;
    for (int k = Math.max(0, i - band); k < j; k++) {
      s += get(i, k) * get(j, k);
    }
    return s;
  }

  /**
   * Solves for several right sides at once; call {@link #factor} first.
   *
   * @param b right sides side by side, {@code b[i * count + d]}; overwritten by the solution
   * @param count number of right sides
   */
  void solve(double[] b, int count) {
    for (int i = 0; i < size; i++) {
      for (int k = Math.max(0, i - band); k < i; k++) {
        subtract(b, i, k, count, get(i, k));
      }
      divide(b, i, count, get(i, i));
    }
    for (int i = size - 1; i >= 0; i--) {
      for (int k = i + 1; k <= Math.min(size - 1, i + band); k++) {
        subtract(b, i, k, count, get(k, i));
      }
      divide(b, i, count, get(i, i));
    }
  }

  private static void subtract(double[] b, int i, int k, int count, double factor) {
    for (int d = 0; d < count; d++) {
      b[i * count + d] -= factor * b[k * count + d];
    }
  }

  private static void divide(double[] b, int i, int count, double by) {
    for (int d = 0; d < count; d++) {
      b[i * count + d] /= by;
    }
  }

  private double get(int i, int j) {
    return lower[i * width + band - (i - j)];
  }

  private void set(int i, int j, double value) {
    lower[i * width + band - (i - j)] = value;
  }
}
