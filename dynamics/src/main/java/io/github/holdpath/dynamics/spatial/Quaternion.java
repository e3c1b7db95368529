package io.github.holdpath.dynamics.spatial;

/**
 * A rotation as a unit quaternion (Hamilton's convention, scalar first). {@code q_WT} turns
 * components in T into components in W.
 *
 * @param w scalar part, dimensionless
 * @param x first vector part, dimensionless
 * @param y second vector part, dimensionless
 * @param z third vector part, dimensionless
 */
public record Quaternion(double w, double x, double y, double z) {
  /** No rotation. */
  public static final Quaternion IDENTITY = new Quaternion(1, 0, 0, 0);

  private static final double UNIT_TOLERANCE = 1e-6;

  /**
   * Scales to unit length.
   *
   * @throws IllegalArgumentException if the length differs from 1 by more than 1e-6
   */
  public Quaternion {
    double n = Math.sqrt(w * w + x * x + y * y + z * z);
    if (!(Math.abs(n - 1) <= UNIT_TOLERANCE)) {
      throw new IllegalArgumentException("quaternion must have length 1, but has " + n);
    }
    w /= n;
    x /= n;
    y /= n;
    z /= n;
  }

  /**
   * Rotation by fixed-axis angles about X, then Y, then Z, as URDF uses.
   *
   * @param roll about x, rad
   * @param pitch about y, rad
   * @param yaw about z, rad
   */
  public static Quaternion ofRpy(double roll, double pitch, double yaw) {
    double cr = Math.cos(roll / 2);
    double sr = Math.sin(roll / 2);
    double cp = Math.cos(pitch / 2);
    double sp = Math.sin(pitch / 2);
    double cy = Math.cos(yaw / 2);
    double sy = Math.sin(yaw / 2);
    return new Quaternion(
        cr * cp * cy + sr * sp * sy,
        sr * cp * cy - cr * sp * sy,
        cr * sp * cy + sr * cp * sy,
        cr * cp * sy - sr * sp * cy);
  }

  /**
   * Rotation about an axis.
   *
   * @param axis unit vector
   * @param angle rad
   */
  public static Quaternion ofAxisAngle(Vec3 axis, double angle) {
    double s = Math.sin(angle / 2);
    return new Quaternion(Math.cos(angle / 2), axis.x() * s, axis.y() * s, axis.z() * s);
  }

  /**
   * Rotation whose third axis points along {@code z} and whose first axis is {@code x} laid into
   * the plane square to it.
   *
   * @param z direction of the new z axis, not zero
   * @param x wanted direction of the new x axis, not parallel to z
   * @throws IllegalArgumentException if the two are parallel
   */
  public static Quaternion ofAxes(Vec3 z, Vec3 x) {
    Vec3 ez = z.unit();
    Vec3 inPlane = x.minus(ez.times(ez.dot(x)));
    if (inPlane.norm() < 1e-9 * x.norm()) {
      throw new IllegalArgumentException("x axis must not be parallel to z axis");
    }
    Vec3 ex = inPlane.unit();
    Vec3 ey = ez.cross(ex);
    return ofMatrix(
        new double[] {ex.x(), ey.x(), ez.x(), ex.y(), ey.y(), ez.y(), ex.z(), ey.z(), ez.z()});
  }

  /** From a row-major rotation matrix of 9 numbers. */
  static Quaternion ofMatrix(double[] r) {
    double trace = r[0] + r[4] + r[8];
    if (trace > 0) {
      double s = 2 * Math.sqrt(1 + trace);
      return new Quaternion(s / 4, (r[7] - r[5]) / s, (r[2] - r[6]) / s, (r[3] - r[1]) / s);
    }
    if (r[0] >= r[4] && r[0] >= r[8]) {
      double s = 2 * Math.sqrt(1 + r[0] - r[4] - r[8]);
      return new Quaternion((r[7] - r[5]) / s, s / 4, (r[1] + r[3]) / s, (r[2] + r[6]) / s);
    }
    if (r[4] >= r[8]) {
      double s = 2 * Math.sqrt(1 + r[4] - r[0] - r[8]);
      return new Quaternion((r[2] - r[6]) / s, (r[1] + r[3]) / s, s / 4, (r[5] + r[7]) / s);
    }
    double s = 2 * Math.sqrt(1 + r[8] - r[0] - r[4]);
    return new Quaternion((r[3] - r[1]) / s, (r[2] + r[6]) / s, (r[5] + r[7]) / s, s / 4);
  }

  /** This rotation after {@code o}: {@code q_AC = q_AB.times(q_BC)}. */
  public Quaternion times(Quaternion o) {
    return new Quaternion(
        w * o.w - x * o.x - y * o.y - z * o.z,
        w * o.x + x * o.w + y * o.z - z * o.y,
        w * o.y - x * o.z + y * o.w + z * o.x,
        w * o.z + x * o.y - y * o.x + z * o.w);
  }

  /** The rotation back. */
  public Quaternion inverse() {
    return new Quaternion(w, -x, -y, -z);
  }

  /** The same rotation with every part of opposite sign. */
  public Quaternion negated() {
    return new Quaternion(-w, -x, -y, -z);
  }

  /** Scalar product of the four parts; negative when the two lie in opposite halves. */
  public double dot(Quaternion o) {
    return w * o.w + x * o.x + y * o.y + z * o.z;
  }

  /** Turns a vector: {@code v_W = q_WT.rotate(v_T)}. */
  public Vec3 rotate(Vec3 v) {
    Vec3 u = new Vec3(x, y, z);
    Vec3 t = u.cross(v).times(2);
    return v.plus(t.times(w)).plus(u.cross(t));
  }

  /** Turns a vector back: {@code v_T = q_WT.rotateBack(v_W)}. */
  public Vec3 rotateBack(Vec3 v) {
    return inverse().rotate(v);
  }

  /**
   * Rotation vector (axis times angle) of the shortest turn, of length 0 to pi.
   *
   * @return rad, in either of the frames that the rotation joins
   */
  public Vec3 rotationVector() {
    double s = w < 0 ? -1 : 1;
    double n = Math.sqrt(x * x + y * y + z * z);
    if (n < 1e-12) {
      return new Vec3(2 * s * x, 2 * s * y, 2 * s * z);
    }
    double k = s * 2 * Math.atan2(n, Math.abs(w)) / n;
    return new Vec3(k * x, k * y, k * z);
  }

  /** Angle of the shortest turn from this rotation to {@code o}, rad, 0 to pi. */
  public double angleTo(Quaternion o) {
    return inverse().times(o).rotationVector().norm();
  }

  /** Row-major rotation matrix of 9 numbers. */
  public double[] toMatrix() {
    double[] r = new double[9];
    Kernels.rotationMatrix(w, x, y, z, r);
    return r;
  }
}
