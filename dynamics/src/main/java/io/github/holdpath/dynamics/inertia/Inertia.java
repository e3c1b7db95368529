package io.github.holdpath.dynamics.inertia;

import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Rotational inertia of a body about its centre of mass, in stated axes. The off-diagonal numbers
 * are elements of the matrix (negative products of inertia), as in URDF.
 *
 * @param xx kg m^2
 * @param yy kg m^2
 * @param zz kg m^2
 * @param xy kg m^2
 * @param xz kg m^2
 * @param yz kg m^2
 */
public record Inertia(double xx, double yy, double zz, double xy, double xz, double yz) {
  /** A point mass. */
  public static final Inertia POINT = new Inertia(0, 0, 0, 0, 0, 0);

  /** Solid box of uniform density, edges along the axes: {@code m (b^2 + c^2)/12}. */
  public static Inertia solidBox(double mass, Vec3 size) {
    double x2 = size.x() * size.x();
    double y2 = size.y() * size.y();
    double z2 = size.z() * size.z();
    double k = mass / 12;
    return new Inertia(k * (y2 + z2), k * (x2 + z2), k * (x2 + y2), 0, 0, 0);
  }

  /** Solid sphere of uniform density: {@code 2/5 m r^2}. */
  public static Inertia solidSphere(double mass, double radius) {
    double i = 0.4 * mass * radius * radius;
    return new Inertia(i, i, i, 0, 0, 0);
  }

  /**
   * Tube of uniform density; a solid cylinder with inner radius 0.
   *
   * @param mass kg
   * @param outer outer radius, m
   * @param inner inner radius, m
   * @param length m
   * @param axis 0, 1 or 2: along x, y or z
   */
  public static Inertia tube(double mass, double outer, double inner, double length, int axis) {
    double r2 = outer * outer + inner * inner;
    double along = mass * r2 / 2;
    double across = mass * (3 * r2 + length * length) / 12;
    return new Inertia(
        axis == 0 ? along : across,
        axis == 1 ? along : across,
        axis == 2 ? along : across,
        0,
        0,
        0);
  }

  /**
   * What keeps these numbers from being a physical body: a number that is not finite, a negative
   * principal moment, or one above the sum of the other two.
   *
   * @return one clause in words, empty when the body is possible; a point (all zero) is possible
   */
  public String fault() {
    if (equals(POINT)) {
      return "";
    }
    if (!finite()) {
      return "must be finite, but was " + this;
    }
    double[] p = principal();
    double tolerance = 1e-9 * Math.abs(p[2]);
    if (p[0] < -tolerance) {
      return "has a negative principal moment (" + (float) p[0] + " kg*m^2)";
    }
    if (p[2] > p[0] + p[1] + tolerance) {
      return "breaks the triangle rule: its largest principal moment "
          + (float) p[2]
          + " kg*m^2 is above the sum of the other two, "
          + (float) (p[0] + p[1])
          + " kg*m^2";
    }
    return "";
  }

  /**
   * Principal moments in rising order, kg m^2, each right to rounding of the largest. A closed
   * solution of the cubic would lose half the digits where two are alike, as for every rod.
   *
   * @throws IllegalArgumentException if a number is not finite
   */
  public double[] principal() {
    if (!finite()) {
      throw new IllegalArgumentException("inertia must be finite, but was " + this);
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(3, false, true);
    DMatrixRMaj matrix = new DMatrixRMaj(3, 3, true, xx, xy, xz, xy, yy, yz, xz, yz, zz);
    if (!eigen.decompose(matrix)) {
      throw new IllegalArgumentException("principal moments cannot be found for " + this);
    }
    double[] moments = new double[3];
    for (int i = 0; i < 3; i++) {
      moments[i] = eigen.getEigenvalue(i).getReal();
    }
    Arrays.sort(moments);
    return moments;
  }

  private boolean finite() {
    return Double.isFinite(xx)
        && Double.isFinite(yy)
        && Double.isFinite(zz)
        && Double.isFinite(xy)
        && Double.isFinite(xz)
        && Double.isFinite(yz);
  }

  /** Sum of two inertias about the same point in the same axes. */
  public Inertia plus(Inertia o) {
    return new Inertia(xx + o.xx, yy + o.yy, zz + o.zz, xy + o.xy, xz + o.xz, yz + o.yz);
  }

  /** The addition of Steiner's theorem for a mass {@code r} away from the point of reference. */
  public static Inertia ofPointAt(double mass, Vec3 r) {
    return new Inertia(
        mass * (r.y() * r.y() + r.z() * r.z()),
        mass * (r.x() * r.x() + r.z() * r.z()),
        mass * (r.x() * r.x() + r.y() * r.y()),
        -mass * r.x() * r.y(),
        -mass * r.x() * r.z(),
        -mass * r.y() * r.z());
  }

  /** This inertia, given in axes B, in axes A: {@code R I R^T}. */
  public Inertia rotated(Quaternion rotation) {
    Vec3 ex = rotation.rotateBack(new Vec3(1, 0, 0));
    Vec3 ey = rotation.rotateBack(new Vec3(0, 1, 0));
    Vec3 ez = rotation.rotateBack(new Vec3(0, 0, 1));
    return new Inertia(
        ex.dot(times(ex)),
        ey.dot(times(ey)),
        ez.dot(times(ez)),
        ex.dot(times(ey)),
        ex.dot(times(ez)),
        ey.dot(times(ez)));
  }

  /** Matrix times vector. */
  public Vec3 times(Vec3 v) {
    return new Vec3(
        xx * v.x() + xy * v.y() + xz * v.z(),
        xy * v.x() + yy * v.y() + yz * v.z(),
        xz * v.x() + yz * v.y() + zz * v.z());
  }
}
