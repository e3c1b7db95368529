package io.github.holdpath.dynamics.spatial;

/**
 * A vector of three numbers; unit and frame are those of its use.
 *
 * @param x first component
 * @param y second component
 * @param z third component
 */
public record Vec3(double x, double y, double z) {
  /** The zero vector. */
  public static final Vec3 ZERO = new Vec3(0, 0, 0);

  /** Refuses components that are not finite. */
  public Vec3 {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(
          "components must be finite, but were " + x + ", " + y + ", " + z);
    }
  }

  /** Sum of this and {@code o}. */
  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  /** This less {@code o}. */
  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  /** This times the number {@code s}. */
  public Vec3 times(double s) {
    return new Vec3(x * s, y * s, z * s);
  }

  /** Scalar product. */
  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  /** Vector product {@code this x o}. */
  public Vec3 cross(Vec3 o) {
    return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  /** Euclidean length. */
  public double norm() {
    return Math.sqrt(x * x + y * y + z * z);
  }

  /**
   * The vector of length 1 in this direction.
   *
   * @throws IllegalArgumentException for the zero vector
   */
  public Vec3 unit() {
    double n = norm();
    if (!(n > 0)) {
      throw new IllegalArgumentException("the zero vector has no direction");
    }
    return times(1 / n);
  }
}
