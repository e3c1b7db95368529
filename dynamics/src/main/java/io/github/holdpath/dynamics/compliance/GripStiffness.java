package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.GripSprings;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Stiffness of a grip against a shift and a turn of the part (theory, eq. 7.2): the patches'
 * springs, less what gives way because the drives move without resistance. Immutable.
 */
public final class GripStiffness {
  /** A direction with less than this part of the largest stiffness has none. */
  private static final double RANK_TOLERANCE = 1e-11;

  private final double[] matrix;
  private final Optional<String> free;

  private GripStiffness(double[] matrix, Optional<String> free) {
    this.matrix = matrix;
    this.free = free;
  }

  /**
   * Stiffness for one set of pushing ledges.
   *
   * @param patches all patches, their stiffness in N/m
   * @param drives all drives; their moving parts count as without mass
   * @param standing which ledges push, by index of the patch
   */
  public static GripStiffness of(
      List<ContactPatch> patches, List<Drive> drives, boolean[] standing) {
    double length = GripSprings.length(patches);
    DMatrixRMaj scaled = withoutDrives(GripSprings.sum(patches, drives, standing, length));
    double[] k = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        // Both halves of a symmetric matrix, so that rounding does not part them.
        double mean = (scaled.get(i, j) + scaled.get(j, i)) / 2;
        k[6 * i + j] = mean * (i < 3 ? 1 : length) * (j < 3 ? 1 : length);
      }
    }
    return new GripStiffness(k, free(scaled));
  }

  private static DMatrixRMaj withoutDrives(DMatrixRMaj whole) {
    int n = whole.numRows;
    DMatrixRMaj part = CommonOps_DDRM.extract(whole, 0, 6, 0, 6);
    if (n == 6) {
      return part;
    }
    DMatrixRMaj drives = CommonOps_DDRM.extract(whole, 6, n, 6, n);
    DMatrixRMaj across = CommonOps_DDRM.extract(whole, 6, n, 0, 6);
    var solver = LinearSolverFactory_DDRM.symmPosDef(n - 6);
    if (!solver.setA(drives.copy())) {
      throw new IllegalArgumentException("each drive must move patches of its own");
    }
    DMatrixRMaj travel = new DMatrixRMaj(n - 6, 6);
    solver.solve(across, travel);
    CommonOps_DDRM.multAddTransA(-1, across, travel, part);
    return part;
  }

  private static Optional<String> free(DMatrixRMaj scaled) {
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(6, true, true);
    if (!eigen.decompose(scaled.copy())) {
      throw new IllegalStateException("the grip's stiffness could not be decomposed");
    }
    int softest = 0;
    double largest = 0;
    for (int k = 0; k < 6; k++) {
      double value = eigen.getEigenvalue(k).getReal();
      largest = Math.max(largest, value);
      softest = value < eigen.getEigenvalue(softest).getReal() ? k : softest;
    }
    if (eigen.getEigenvalue(softest).getReal() > RANK_TOLERANCE * largest) {
      return Optional.empty();
    }
    double[] share = eigen.getEigenVector(softest).data.clone();
    for (int k = 0; k < 6; k++) {
      share[k] *= share[k];
    }
    return Optional.of(DirectionWords.of(share));
  }

  /**
   * The direction in which the grip has no stiffness, as {@code along y} or {@code about z} of the
   * grip frame; empty where it has stiffness in all.
   */
  public Optional<String> freeDirection() {
    return free;
  }

  /**
   * The 36 numbers of the symmetric matrix, about the grip frame's origin in its axes: force and
   * moment per shift and turn, N/m, N and N m.
   */
  public double[] matrix() {
    return Arrays.copyOf(matrix, matrix.length);
  }
}
