package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * How a grip shares a load among its patches for one set of pushing ledges (theory, eqs. 3.1 to
 * 3.3): the part is rigid, patches are springs, drives move without resistance. Everything is
 * linear in the load, so one matrix does for all loads.
 */
final class ShareMatrix {
  private static final double RANK_TOLERANCE = 1e-11;

  /** Patch wrench per load: for each patch 6 rows of 6 numbers. */
  final double[] shares;

  /** What each ledge pushes, or would push if it stood, per load: a row of 6 numbers each. */
  final double[] pushes;

  /**
   * Rows of 6 numbers that are zero for every load that the grip can carry; empty if it carries
   * all.
   */
  final double[] missing;

  /**
   * The least part of a load that has to go before the grip can carry the rest: 6 rows of 6
   * numbers; empty if it carries all.
   */
  final double[] lost;

  /** Shift of the part (m, rad) and travel of the drives (m) per load: 6 + drives rows of 6. */
  final double[] shifts;

  /** Length that makes moments and forces of one size, m. */
  final double length;

  private ShareMatrix(
      double[] shares,
      double[] pushes,
      double[] missing,
      double[] lost,
      double[] shifts,
      double length) {
    this.length = length;
    this.lost = lost;
    this.shifts = shifts;
    this.shares = shares;
    this.pushes = pushes;
    this.missing = missing;
  }

  /**
   * Share matrix of a grip.
   *
   * @param patches all patches
   * @param drives all drives
   * @param standing which ledges push, by index of the patch
   */
  static ShareMatrix of(List<ContactPatch> patches, List<Drive> drives, boolean[] standing) {
    int size = 6 + drives.size();
    double length = lengthScale(patches);
    DMatrixRMaj[] g = new DMatrixRMaj[patches.size()];
    DMatrixRMaj stiffness = new DMatrixRMaj(size, size);
    DMatrixRMaj kg = new DMatrixRMaj(6, size);
    for (int i = 0; i < g.length; i++) {
      g[i] = displacements(i, patches.get(i), drives, length);
      if (!patches.get(i).ledge() || standing[i]) {
        CommonOps_DDRM.mult(stiffnessMatrix(patches.get(i)), g[i], kg);
        CommonOps_DDRM.multAddTransA(g[i], kg, stiffness);
      }
    }
    DMatrixRMaj inverse = new DMatrixRMaj(size, size);
    DMatrixRMaj rest = new DMatrixRMaj(size, size);
    boolean whole = pseudoInverse(stiffness, inverse, rest);

    // x = A^+ [force; moment/length; 0], so the first six columns do, the moment's scaled.
    DMatrixRMaj response = loadColumns(inverse, length);
    double[] shares = new double[36 * g.length];
    double[] pushes = new double[6 * (int) patches.stream().filter(ContactPatch::ledge).count()];
    DMatrixRMaj moved = new DMatrixRMaj(6, 6);
    DMatrixRMaj share = new DMatrixRMaj(6, 6);
    int ledge = 0;
    for (int i = 0; i < g.length; i++) {
      ContactPatch patch = patches.get(i);
      CommonOps_DDRM.mult(g[i], response, moved);
      CommonOps_DDRM.mult(stiffnessMatrix(patch), moved, share);
      if (patch.ledge()) {
        System.arraycopy(share.data, 12, pushes, 6 * ledge++, 6);
      }
      if (!patch.ledge() || standing[i]) {
        System.arraycopy(share.data, 0, shares, 36 * i, 36);
      }
    }
    double[] shifts = response.data.clone();
    for (int k = 18; k < 36; k++) {
      shifts[k] /= length;
    }
    double[] missing = whole ? new double[0] : loadColumns(rest, length).data.clone();
    double[] lost = whole ? new double[0] : lost(rest, length);
    return new ShareMatrix(shares, pushes, missing, lost, shifts, length);
  }

  /** (6 x 6+drives) displacement of the contact in patch axes per part twist and drive travel. */
  private static DMatrixRMaj displacements(
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

  private static DMatrixRMaj stiffnessMatrix(ContactPatch patch) {
    double kn = patch.stiffness().normal();
    if (patch.ledge()) {
      return CommonOps_DDRM.diag(0, 0, kn, 0, 0, 0);
    }
    double ks = patch.stiffness().shear();
    PatchShape s = patch.shape();
    return CommonOps_DDRM.diag(ks, ks, kn, kn * s.tiltX(), kn * s.tiltY(), ks * s.torsion());
  }

  /** Writes A^+ and I - A A^+; returns whether A has full rank. */
  private static boolean pseudoInverse(DMatrixRMaj a, DMatrixRMaj inverse, DMatrixRMaj rest) {
    int n = a.numRows;
    SingularValueDecomposition_F64<DMatrixRMaj> svd =
        DecompositionFactory_DDRM.svd(n, n, true, true, false);
    if (!svd.decompose(a.copy())) {
      throw new IllegalStateException("the grip's stiffness could not be decomposed");
    }
    DMatrixRMaj u = svd.getU(null, false);
    DMatrixRMaj v = svd.getV(null, false);
    double[] w = svd.getSingularValues();
    double largest = 0;
    for (double s : w) {
      largest = Math.max(largest, s);
    }
    boolean whole = true;
    for (int k = 0; k < n; k++) {
      boolean carried = w[k] > RANK_TOLERANCE * largest;
      whole &= carried;
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          if (carried) {
            inverse.add(i, j, v.get(i, k) * u.get(j, k) / w[k]);
          } else {
            rest.add(i, j, u.get(i, k) * u.get(j, k));
          }
        }
      }
    }
    return whole;
  }

  /**
   * Projects a load onto what the grip cannot carry. Its first six rows alone count: the drives'
   * relations take no load away.
   */
  private static double[] lost(DMatrixRMaj rest, double length) {
    DMatrixRMaj block = CommonOps_DDRM.extract(rest, 0, 6, 0, 6);
    DMatrixRMaj projection = new DMatrixRMaj(6, 6);
    pseudoInverse(block, new DMatrixRMaj(6, 6), projection);
    double[] lost = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int k = 0; k < 6; k++) {
        double scale = (i < 3 ? 1 : length) / (k < 3 ? 1 : length);
        lost[6 * i + k] = ((i == k ? 1 : 0) - projection.get(i, k)) * scale;
      }
    }
    return lost;
  }

  private static DMatrixRMaj loadColumns(DMatrixRMaj m, double length) {
    DMatrixRMaj columns = CommonOps_DDRM.extract(m, 0, m.numRows, 0, 6);
    for (int i = 0; i < m.numRows; i++) {
      for (int k = 3; k < 6; k++) {
        columns.set(i, k, columns.get(i, k) / length);
      }
    }
    return columns;
  }

  /** A length that makes moments and forces of one size: mean reach of the patches. */
  private static double lengthScale(List<ContactPatch> patches) {
    double sum = 0;
    for (ContactPatch patch : patches) {
      Vec3 p = patch.pose().position();
      sum += p.dot(p) + patch.shape().torsion();
    }
    return Math.sqrt(sum / patches.size());
  }
}
