package io.github.holdpath.dynamics.spatial;

/** Small formulas on flat arrays for loops that must not allocate. */
public final class Kernels {
  private Kernels() {}

  /**
   * Rotation matrix of a unit quaternion.
   *
   * @param w scalar part
   * @param x first vector part
   * @param y second vector part
   * @param z third vector part
   * @param r row-major matrix of 9 numbers, overwritten
   */
  public static void rotationMatrix(double w, double x, double y, double z, double[] r) {
    r[0] = 1 - 2 * (y * y + z * z);
    r[1] = 2 * (x * y - w * z);
    r[2] = 2 * (x * z + w * y);
    r[3] = 2 * (x * y + w * z);
    r[4] = 1 - 2 * (x * x + z * z);
    r[5] = 2 * (y * z - w * x);
    r[6] = 2 * (x * z - w * y);
    r[7] = 2 * (y * z + w * x);
    r[8] = 1 - 2 * (x * x + y * y);
  }
}
