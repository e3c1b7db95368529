package io.github.holdpath.dynamics.load;

import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.Kernels;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;

/**
 * Newton and Euler for a part carried by the grip frame T (theory, eqs. 1.1 to 1.5).
 *
 * <p>The required wrench {@code F_part_T} is what the grip must put on the part, about T's origin,
 * in T's axes. It splits exactly into a gravity part and a motion part; the same path played k
 * times as fast needs {@code gravity + k^2 motion}. The model has no state and may be shared by
 * threads.
 *
 * @see "Lynch, Park: Modern Robotics, Cambridge University Press, 2017, chapter 8"
 */
public final class LoadModel {
  /** Length of the flat result: gravity part, then motion part. */
  public static final int SIZE = 12;

  private final double mass;
  private final double cx;
  private final double cy;
  private final double cz;
  private final MassProperties body;
  private final double gx;
  private final double gy;
  private final double gz;
  private final AirLoad air;

  /**
   * Load model of one body.
   *
   * @param body mass properties in T
   * @param gravity in world axes, m/s^2
   * @param air what the air adds
   */
  public LoadModel(MassProperties body, Vec3 gravity, AirLoad air) {
    this.body = body;
    this.mass = body.mass();
    this.cx = body.centreOfMass().x();
    this.cy = body.centreOfMass().y();
    this.cz = body.centreOfMass().z();
    this.gx = gravity.x();
    this.gy = gravity.y();
    this.gz = gravity.z();
    this.air = air;
  }

  /** Required wrench at one instant. */
  public RequiredWrench required(MotionState state) {
    double[] out = new double[SIZE];
    required(state.toArray(), out, new double[9]);
    return new RequiredWrench(Wrench.of(out, 0), Wrench.of(out, 6));
  }

  /**
   * Required wrench without allocation.
   *
   * @param s flat motion state, read
   * @param out gravity wrench (6), then motion wrench (6), overwritten
   * @param r scratch of 9 numbers, left with the row-major matrix {@code R_WT}
   */
  public void required(double[] s, double[] out, double[] r) {
    Kernels.rotationMatrix(s[3], s[4], s[5], s[6], r);
    // Everything is turned into T once; there centre of mass and inertia are constant.
    double wx = r[0] * s[10] + r[3] * s[11] + r[6] * s[12];
    double wy = r[1] * s[10] + r[4] * s[11] + r[7] * s[12];
    double wz = r[2] * s[10] + r[5] * s[11] + r[8] * s[12];
    double ax = r[0] * s[13] + r[3] * s[14] + r[6] * s[15];
    double ay = r[1] * s[13] + r[4] * s[14] + r[7] * s[15];
    double az = r[2] * s[13] + r[5] * s[14] + r[8] * s[15];
    double ex = r[0] * s[16] + r[3] * s[17] + r[6] * s[18];
    double ey = r[1] * s[16] + r[4] * s[17] + r[7] * s[18];
    double ez = r[2] * s[16] + r[5] * s[17] + r[8] * s[18];

    // (1.1) acceleration of the centre of mass
    double wc = wx * cx + wy * cy + wz * cz;
    double ww = wx * wx + wy * wy + wz * wz;
    double acx = ax + ey * cz - ez * cy + wx * wc - cx * ww;
    double acy = ay + ez * cx - ex * cz + wy * wc - cy * ww;
    double acz = az + ex * cy - ey * cx + wz * wc - cz * ww;

    // (1.2) force of the motion, with air
    double fx = mass * acx;
    double fy = mass * acy;
    double fz = mass * acz;
    if (air.dragArea() > 0) {
      double vx = r[0] * s[7] + r[3] * s[8] + r[6] * s[9] + wy * cz - wz * cy;
      double vy = r[1] * s[7] + r[4] * s[8] + r[7] * s[9] + wz * cx - wx * cz;
      double vz = r[2] * s[7] + r[5] * s[8] + r[8] * s[9] + wx * cy - wy * cx;
      double k = 0.5 * air.density() * air.dragArea() * Math.sqrt(vx * vx + vy * vy + vz * vz);
      fx += k * vx;
      fy += k * vy;
      fz += k * vz;
    }
    if (air.addedMass() > 0) {
      Vec3 n = air.normal();
      double k = air.addedMass() * (n.x() * acx + n.y() * acy + n.z() * acz);
      fx += k * n.x();
      fy += k * n.y();
      fz += k * n.z();
    }

    // gravity part
    double hx = -mass * (r[0] * gx + r[3] * gy + r[6] * gz);
    double hy = -mass * (r[1] * gx + r[4] * gy + r[7] * gz);
    double hz = -mass * (r[2] * gx + r[5] * gy + r[8] * gz);
    out[0] = hx;
    out[1] = hy;
    out[2] = hz;
    out[3] = cy * hz - cz * hy;
    out[4] = cz * hx - cx * hz;
    out[5] = cx * hy - cy * hx;

    // (1.3) moment about T's origin
    var i = body.inertia();
    double lx = i.xx() * wx + i.xy() * wy + i.xz() * wz;
    double ly = i.xy() * wx + i.yy() * wy + i.yz() * wz;
    double lz = i.xz() * wx + i.yz() * wy + i.zz() * wz;
    out[6] = fx;
    out[7] = fy;
    out[8] = fz;
    out[9] = i.xx() * ex + i.xy() * ey + i.xz() * ez + wy * lz - wz * ly + cy * fz - cz * fy;
    out[10] = i.xy() * ex + i.yy() * ey + i.yz() * ez + wz * lx - wx * lz + cz * fx - cx * fz;
    out[11] = i.xz() * ex + i.yz() * ey + i.zz() * ez + wx * ly - wy * lx + cx * fy - cy * fx;
  }
}
