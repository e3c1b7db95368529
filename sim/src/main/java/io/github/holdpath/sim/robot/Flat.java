package io.github.holdpath.sim.robot;

/** Vector formulas on flat arrays, for loops that must not allocate. */
final class Flat {
  private Flat() {}

  /** {@code out += s * (a x b)}; out is neither a nor b. */
  static void addCross(double s, double[] a, double[] b, double[] out) {
    out[0] += s * (a[1] * b[2] - a[2] * b[1]);
    out[1] += s * (a[2] * b[0] - a[0] * b[2]);
    out[2] += s * (a[0] * b[1] - a[1] * b[0]);
  }

  /** {@code out = a x b}; out is neither a nor b. */
  static void cross(double[] a, double[] b, double[] out) {
    out[0] = a[1] * b[2] - a[2] * b[1];
    out[1] = a[2] * b[0] - a[0] * b[2];
    out[2] = a[0] * b[1] - a[1] * b[0];
  }

  /** {@code out += a x (b x c)}, as {@code b (a.c) - c (a.b)}; out is none of them. */
  static void addDoubleCross(double[] a, double[] b, double[] c, double[] out) {
    add(dot(a, c), b, out);
    add(-dot(a, b), c, out);
  }

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** {@code out += s * a}. */
  static void add(double s, double[] a, double[] out) {
    out[0] += s * a[0];
    out[1] += s * a[1];
    out[2] += s * a[2];
  }

  static void copy(double[] a, double[] out) {
    out[0] = a[0];
    out[1] = a[1];
    out[2] = a[2];
  }

  static void minus(double[] a, double[] b, double[] out) {
    out[0] = a[0] - b[0];
    out[1] = a[1] - b[1];
    out[2] = a[2] - b[2];
  }

  /** {@code out = M v} of a row-major matrix of 9 numbers; out is not v. */
  static void times(double[] m, double[] v, double[] out) {
    out[0] = m[0] * v[0] + m[1] * v[1] + m[2] * v[2];
    out[1] = m[3] * v[0] + m[4] * v[1] + m[5] * v[2];
    out[2] = m[6] * v[0] + m[7] * v[1] + m[8] * v[2];
  }

  /** {@code out = M^T v} of a row-major matrix of 9 numbers; out is not v. */
  static void timesTransposed(double[] m, double[] v, double[] out) {
    out[0] = m[0] * v[0] + m[3] * v[1] + m[6] * v[2];
    out[1] = m[1] * v[0] + m[4] * v[1] + m[7] * v[2];
    out[2] = m[2] * v[0] + m[5] * v[1] + m[8] * v[2];
  }

  /** {@code out = a b} of quaternions (w, x, y, z); out is neither a nor b. */
  static void quaternionTimes(double[] a, double[] b, double[] out) {
    out[0] = a[0] * b[0] - a[1] * b[1] - a[2] * b[2] - a[3] * b[3];
    out[1] = a[0] * b[1] + a[1] * b[0] + a[2] * b[3] - a[3] * b[2];
    out[2] = a[0] * b[2] - a[1] * b[3] + a[2] * b[0] + a[3] * b[1];
    out[3] = a[0] * b[3] + a[1] * b[2] - a[2] * b[1] + a[3] * b[0];
  }
}
