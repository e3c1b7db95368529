package io.github.holdpath.dynamics.margin;

/**
 * Sums over the rows of a balance. A rigid part has six, so that six are written out: loops as
 * short as these cost more than their products. Drives add rows and take the loop.
 */
final class Rows {
  private static final int SIX = 6;

  private Rows() {}

  /** Sum of products of {@code n} numbers of a from {@code at} and of b. */
  static double dot(double[] a, int at, double[] b, int n) {
    if (n == SIX) {
      return a[at] * b[0]
          + a[at + 1] * b[1]
          + a[at + 2] * b[2]
          + a[at + 3] * b[3]
          + a[at + 4] * b[4]
          + a[at + 5] * b[5];
    }
    double sum = 0;
    for (int r = 0; r < n; r++) {
      sum += a[at + r] * b[r];
    }
    return sum;
  }

  /** Adds {@code factor} times {@code n} numbers of a from {@code at}. */
  static void add(double[] to, double factor, double[] a, int at, int n) {
    add(to, 0, factor, a, at, n);
  }

  /** The same to the numbers from {@code place}. */
  static void add(double[] to, int place, double factor, double[] a, int at, int n) {
    if (n == SIX) {
      to[place] += factor * a[at];
      to[place + 1] += factor * a[at + 1];
      to[place + 2] += factor * a[at + 2];
      to[place + 3] += factor * a[at + 3];
      to[place + 4] += factor * a[at + 4];
      to[place + 5] += factor * a[at + 5];
      return;
    }
    for (int r = 0; r < n; r++) {
      to[place + r] += factor * a[at + r];
    }
  }

  /** Adds {@code factor v v'} to the lower half of a row-major matrix; v from {@code at}. */
  static void addSquare(double[] m, double factor, double[] v, int at, int n) {
    if (n == SIX) {
      addSix(m, factor, v[at], v[at + 1], v[at + 2], v[at + 3], v[at + 4], v[at + 5]);
      return;
    }
    for (int i = 0; i < n; i++) {
      double f = factor * v[at + i];
      for (int j = 0; j <= i; j++) {
        m[i * n + j] += f * v[at + j];
      }
    }
  }

  private static void addSix(
      double[] m, double factor, double a, double b, double c, double d, double e, double f) {
    m[0] += factor * a * a;
    double x = factor * b;
    m[6] += x * a;
    m[7] += x * b;
    x = factor * c;
    m[12] += x * a;
    m[13] += x * b;
    m[14] += x * c;
    x = factor * d;
    m[18] += x * a;
    m[19] += x * b;
    m[20] += x * c;
    m[21] += x * d;
    x = factor * e;
    m[24] += x * a;
    m[25] += x * b;
    m[26] += x * c;
    m[27] += x * d;
    m[28] += x * e;
    x = factor * f;
    m[30] += x * a;
    m[31] += x * b;
    m[32] += x * c;
    m[33] += x * d;
    m[34] += x * e;
    m[35] += x * f;
  }
}
