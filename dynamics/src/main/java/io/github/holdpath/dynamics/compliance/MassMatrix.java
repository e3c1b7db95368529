package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Vec3;
import org.ejml.data.DMatrixRMaj;

/**
 * Mass of a rigid part about the grip frame's origin, with the air that a flat part carries along
 * its normal (theory, eq. 7.1).
 */
final class MassMatrix {
  private MassMatrix() {}

  /** {@code [[m 1, -m c^], [m c^, I - m c^ c^]]}, kg, kg m and kg m^2, plus the carried air. */
  static DMatrixRMaj of(MassProperties body, AirLoad air) {
    DMatrixRMaj mass = new DMatrixRMaj(6, 6);
    Vec3 c = body.centreOfMass();
    for (Vec3 axis : new Vec3[] {new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1)}) {
      addPoint(mass, body.mass(), axis, c);
    }
    addPoint(mass, air.addedMass(), air.normal(), c);
    var i = body.inertia();
    double[] rows = {i.xx(), i.xy(), i.xz(), i.xy(), i.yy(), i.yz(), i.xz(), i.yz(), i.zz()};
    for (int k = 0; k < 9; k++) {
      mass.add(3 + k / 3, 3 + k % 3, rows[k]);
    }
    return mass;
  }

  /** A mass at a point that is felt along one direction only. */
  private static void addPoint(DMatrixRMaj mass, double m, Vec3 along, Vec3 at) {
    Vec3 arm = at.cross(along);
    double[] u = {along.x(), along.y(), along.z(), arm.x(), arm.y(), arm.z()};
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        mass.add(i, j, m * u[i] * u[j]);
      }
    }
  }
}
