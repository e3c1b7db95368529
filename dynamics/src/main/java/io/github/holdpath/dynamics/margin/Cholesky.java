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
    if (n == 3) {
      solveThree(l, v);
      return;
    }
    solveLower(l, n, v);
    for (int i = n - 1; i >= 0; i--) {
      double sum = v[i];
      for (int k = i + 1; k < n; k++) {
        sum -= l[k * n + i] * v[k];
      }
      v[i] = sum * l[i * n + i];
    }
  }

  /** The same for the three roots of a round patch, written out: a loop would cost more. */
  private static void solveThree(double[] l, double[] v) {
    double a = v[0] * l[0];
    double b = (v[1] - l[3] * a) * l[4];
    double c = (v[2] - l[6] * a - l[7] * b) * l[8] * l[8];
    b = (b - l[7] * c) * l[4];
    v[0] = (a - l[3] * b - l[6] * c) * l[0];
    v[1] = b;
    v[2] = c;
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
        Rows.add(v, i * columns, -l[i * n + k], v, k * columns, columns);
      }
      double per = l[i * n + i];
      for (int c = 0; c < columns; c++) {
        v[i * columns + c] *= per;
      }
    }
  }
}
