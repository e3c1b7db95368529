package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * A grip as springs between the part and the tool (theory, eqs. 3.1 and 3.2): each patch a spring
 * of six stiffnesses, drives that move without resistance. Turns are scaled by a length, so that
 * all unknowns are of one size.
 */
public final class GripSprings {
  private GripSprings() {}

  /** A length that makes moments and forces of one size: mean reach of the patches, m. */
  public static double length(List<ContactPatch> patches) {
    double sum = 0;
    for (ContactPatch patch : patches) {
      Vec3 p = patch.pose().position();
      sum += p.dot(p) + patch.shape().torsion();
    }
    return Math.sqrt(sum / patches.size());
  }

  /**
   * Displacement of a contact in patch axes per unknown.
   *
   * @param index of the patch, as the drives name it
   * @param patch whose displacement
   * @param drives all drives
   * @param length by which turns are scaled, m
   * @return 6 rows; columns shift of the part (m), turn times length (m), travel of each drive (m)
   */
  public static DMatrixRMaj displacements(
      int index, ContactPatch patch, List<Drive> drives, double length) {
    double[] r = patch.pose().rotation().toMatrix();
    Vec3 p = patch.pose().position();
    DMatrixRMaj g = new DMatrixRMaj(6, 6 + drives.size());
    for (int axis = 0; axis < 3; axis++) {
      Vec3 e = new Vec3(r[axis], r[3 + axis], r[6 + axis]);
      Vec3 pe = p.cross(e);
      double[] row = {e.x(), e.y(), e.z(), pe.x(), pe.y(), pe.z()};
      for (int k = 0; k < 3; k++) {
        g.set(axis, k, row[k]);
        g.set(axis, 3 + k, row[3 + k] / length);
        g.set(3 + axis, 3 + k, row[k] / length);
      }
      for (int d = 0; d < drives.size(); d++) {
        int at = drives.get(d).patches().indexOf(index);
        if (at >= 0) {
          g.set(axis, 6 + d, e.dot(drives.get(d).directions().get(at)));
        }
      }
    }
    return g;
  }

  /** Stiffness of a patch in its axes, N/m and N m; a ledge pushes along its normal alone. */
  public static DMatrixRMaj stiffness(ContactPatch patch) {
    double kn = patch.stiffness().normal();
    if (patch.ledge()) {
      return CommonOps_DDRM.diag(0, 0, kn, 0, 0, 0);
    }
    double ks = patch.stiffness().shear();
    PatchShape s = patch.shape();
    return CommonOps_DDRM.diag(ks, ks, kn, kn * s.tiltX(), kn * s.tiltY(), ks * s.torsion());
  }

  /**
   * Stiffness of the whole grip.
   *
   * @param patches all patches
   * @param drives all drives
   * @param standing which ledges push, by index of the patch
   * @param length by which turns are scaled, m
   * @return square, of the part's six unknowns and one for each drive, N/m
   */
  public static DMatrixRMaj sum(
      List<ContactPatch> patches, List<Drive> drives, boolean[] standing, double length) {
    int size = 6 + drives.size();
    DMatrixRMaj sum = new DMatrixRMaj(size, size);
    DMatrixRMaj kg = new DMatrixRMaj(6, size);
    for (int i = 0; i < patches.size(); i++) {
      if (!patches.get(i).ledge() || standing[i]) {
        DMatrixRMaj g = displacements(i, patches.get(i), drives, length);
        CommonOps_DDRM.mult(stiffness(patches.get(i)), g, kg);
        CommonOps_DDRM.multAddTransA(g, kg, sum);
      }
    }
    return sum;
  }
}
