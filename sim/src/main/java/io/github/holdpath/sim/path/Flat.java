package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Vec3;

/** Vector formulas at places of flat arrays, for loops that must not allocate. */
public final class Flat {
  private Flat() {}

  static void put(double x, double y, double z, double[] out, int at) {
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }

  /** Scalar product of the three numbers at i of a and at j of b. */
  static double dot(double[] a, int i, double[] b, int j) {
    return a[i] * b[j] + a[i + 1] * b[j + 1] + a[i + 2] * b[j + 2];
  }

  /** Length of the vector of the three numbers at i. */
  public static double norm(double[] a, int i) {
    return Math.sqrt(dot(a, i, a, i));
  }

  static Vec3 vec(double[] a, int i) {
    return new Vec3(a[i], a[i + 1], a[i + 2]);
  }

  /** Angle of two vectors of a flat array, rad, exact near 0 and pi too. */
  static double angle(Vec3 a, Vec3 b) {
    return Math.atan2(a.cross(b).norm(), a.dot(b));
  }

  /**
   * {@code out += k v q} of a vector v, as a quaternion without scalar part, and a quaternion q.
   */
  static void addTurned(double k, double[] v, int i, double[] q, int j, double[] out, int at) {
    double x = k * v[i];
    double y = k * v[i + 1];
    double z = k * v[i + 2];
    double qw = q[j];
    double qx = q[j + 1];
    double qy = q[j + 2];
    double qz = q[j + 3];
    out[at] -= x * qx + y * qy + z * qz;
    out[at + 1] += x * qw + y * qz - z * qy;
    out[at + 2] += y * qw + z * qx - x * qz;
    out[at + 3] += z * qw + x * qy - y * qx;
  }

  /** {@code out += k Im(a conj(b))} of two quaternions; the vector part alone. */
  static void addImaginary(double k, double[] a, int i, double[] b, int j, double[] out, int at) {
    double aw = k * a[i];
    double ax = k * a[i + 1];
    double ay = k * a[i + 2];
    double az = k * a[i + 3];
    double bw = b[j];
    double bx = b[j + 1];
    double by = b[j + 2];
    double bz = b[j + 3];
    out[at] += ax * bw - aw * bx - ay * bz + az * by;
    out[at + 1] += ay * bw - aw * by - az * bx + ax * bz;
    out[at + 2] += az * bw - aw * bz - ax * by + ay * bx;
  }

  /** Scalar product of two quaternions. */
  static double dot4(double[] a, int i, double[] b, int j) {
    return a[i] * b[j] + dot(a, i + 1, b, j + 1);
  }
}
