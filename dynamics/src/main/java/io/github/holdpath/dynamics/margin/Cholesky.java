package io.github.holdpath.dynamics.margin;

/** Cholesky factors of small matrices in place, row-major, lower half. */
final class Cholesky {
  private static final double LEAST_PIVOT = 1e-15;

  private Cholesky() {}

  /**
   * Lower factor of a symmetric positive definite matrix; its diagonal holds the reciprocals. A
   * pivot that rounding has eaten is held at a small part of its diagonal; the refinement of the
   * step makes up for it.
   */
  static void factorise(double[] m, int n) {
    for (int j = 0; j < n; j++) {
      double least = LEAST_PIVOT * m[j * n + j];
      double pivot = m[j * n + j];
      for (int k = 0; k < j; k++) {
        pivot -= m[j * n + k] * m[j * n + k];
      }
      double per = 1 / Math.sqrt(Math.max(pivot, least));
      m[j * n + j] = per;
      for (int i = j + 1; i < n; i++) {
        double sum = m[i * n + j];
        for (int k = 0; k < j; k++) {
          sum -= m[i * n + k] * m[j * n + k];
        }
        m[i * n + j] = sum * per;
      }
    }
  }

  /** Solves {@code L L' x = v} in place. */
  static void solve(double[] l, int n, double[] v) {
    solveLower(l, n, v);
    for (int i = n - 1; i >= 0; i--) {
      double sum = v[i];
      for (int k = i + 1; k < n; k++) {
        sum -= l[k * n + i] * v[k];
      }
      v[i] = sum * l[i * n + i];
    }
  }

  /** Solves {@code L x = v} in place. */
  static void solveLower(double[] l, int n, double[] v) {
    for (int i = 0; i < n; i++) {
      double sum = v[i];
      for (int k = 0; k < i; k++) {
        sum -= l[i * n + k] * v[k];
      }
      v[i] = sum * l[i * n + i];
    }
  }

  /** Solves {@code L X = V} in place for V of {@code n} rows and {@code columns} columns. */
  static void solveLowerRows(double[] l, int n, double[] v, int columns) {
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        double f = l[i * n + k];
        for (int c = 0; c < columns; c++) {
          v[i * columns + c] -= f * v[k * columns + c];
        }
      }
      double per = l[i * n + i];
      for (int c = 0; c < columns; c++) {
        v[i * columns + c] *= per;
      }
    }
  }
}
