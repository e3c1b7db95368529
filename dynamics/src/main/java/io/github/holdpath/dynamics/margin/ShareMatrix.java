package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.GripSprings;
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
    double length = GripSprings.length(patches);
    DMatrixRMaj stiffness = GripSprings.sum(patches, drives, standing, length);
    DMatrixRMaj inverse = new DMatrixRMaj(size, size);
    DMatrixRMaj rest = new DMatrixRMaj(size, size);
    boolean whole = pseudoInverse(stiffness, inverse, rest);

    // x = A^+ [force; moment/length; 0], so the first six columns do, the moment's scaled.
    DMatrixRMaj response = loadColumns(inverse, length);
    double[] shares = new double[36 * patches.size()];
    double[] pushes = new double[6 * (int) patches.stream().filter(ContactPatch::ledge).count()];
    DMatrixRMaj moved = new DMatrixRMaj(6, 6);
    DMatrixRMaj share = new DMatrixRMaj(6, 6);
    int ledge = 0;
    for (int i = 0; i < patches.size(); i++) {
      ContactPatch patch = patches.get(i);
      DMatrixRMaj g = GripSprings.displacements(i, patch, drives, length);
      CommonOps_DDRM.mult(g, response, moved);
      CommonOps_DDRM.mult(GripSprings.stiffness(patch), moved, share);
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
}
