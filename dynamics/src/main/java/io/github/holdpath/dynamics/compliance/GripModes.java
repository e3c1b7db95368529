package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The six ways in which a part swings on its grip, softest first (theory, eqs. 7.3 to 7.5).
 *
 * <p>Solved as {@code M psi = K psi / w^2} with {@code psi^T K psi = 1}: the stiffness can always
 * be factorised, while the mass of a part without inertia about an axis cannot. A mode that moves
 * no mass then has an infinite frequency and follows the load at once. Immutable.
 */
public final class GripModes {
  /** A mode with less than this part of the largest {@code 1/w^2} moves no mass. */
  private static final double MASSLESS = 1e-13;

  private final double[] omega = new double[6];

  /** Shift and turn per modal load, a row of 6 for each mode. */
  final double[] shapes = new double[36];

  /** Wrench per modal load, a row of 6 for each mode. */
  final double[] wrenches = new double[36];

  private final List<SwingMode> modes = new ArrayList<>();

  private GripModes(double[] k, MassProperties body, AirLoad air) {
    DMatrixRMaj stiffness = new DMatrixRMaj(6, 6, true, k);
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(6, true);
    DMatrixRMaj lower = stiffness.copy();
    if (!cholesky.decompose(lower)) {
      throw new IllegalStateException("the grip's stiffness could not be factorised");
    }
    lower = cholesky.getT(null);
    DMatrixRMaj inverse = new DMatrixRMaj(6, 6);
    CommonOps_DDRM.invert(lower, inverse);
    DMatrixRMaj half = new DMatrixRMaj(6, 6);
    DMatrixRMaj reduced = new DMatrixRMaj(6, 6);
    CommonOps_DDRM.mult(inverse, MassMatrix.of(body, air), half);
    CommonOps_DDRM.multTransB(half, inverse, reduced);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (reduced.get(i, j) + reduced.get(j, i)) / 2;
        reduced.set(i, j, mean);
        reduced.set(j, i, mean);
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(6, true, true);
    if (!eigen.decompose(reduced)) {
      throw new IllegalStateException("the grip's modes could not be found");
    }
    int[] order =
        IntStream.range(0, 6)
            .boxed()
            .sorted(Comparator.comparing(i -> -eigen.getEigenvalue(i).getReal()))
            .mapToInt(Integer::intValue)
            .toArray();
    double largest = eigen.getEigenvalue(order[0]).getReal();
    DMatrixRMaj shape = new DMatrixRMaj(6, 1);
    DMatrixRMaj wrench = new DMatrixRMaj(6, 1);
    for (int m = 0; m < 6; m++) {
      double perSquare = eigen.getEigenvalue(order[m]).getReal();
      omega[m] =
          perSquare > MASSLESS * largest ? 1 / Math.sqrt(perSquare) : Double.POSITIVE_INFINITY;
      DMatrixRMaj y = eigen.getEigenVector(order[m]);
      CommonOps_DDRM.multTransA(inverse, y, shape);
      CommonOps_DDRM.mult(lower, y, wrench);
      double sign = sign(wrench);
      for (int i = 0; i < 6; i++) {
        shapes[6 * m + i] = sign * shape.get(i, 0);
        wrenches[6 * m + i] = sign * wrench.get(i, 0);
      }
      modes.add(mode(m, body));
    }
  }

  /**
   * Modes of a part on a grip.
   *
   * @param stiffness of the grip
   * @param body mass properties in the grip frame
   * @param air of which the added mass counts
   * @throws IllegalArgumentException naming the direction, if the grip has no stiffness in one
   */
  public static GripModes of(GripStiffness stiffness, MassProperties body, AirLoad air) {
    stiffness
        .freeDirection()
        .ifPresent(
            direction -> {
              throw new IllegalArgumentException(
                  "the grip must have stiffness in every direction, but has none " + direction);
            });
    return new GripModes(stiffness.matrix(), body, air);
  }

  /** One of the two signs, always the same for the same grip. */
  private static double sign(DMatrixRMaj v) {
    double largest = 0;
    for (double x : v.data) {
      largest = Math.abs(x) > Math.abs(largest) * (1 + 1e-6) ? x : largest;
    }
    return largest < 0 ? -1 : 1;
  }

  private SwingMode mode(int m, MassProperties body) {
    Vec3 shift = new Vec3(shapes[6 * m], shapes[6 * m + 1], shapes[6 * m + 2]);
    Vec3 turn = new Vec3(shapes[6 * m + 3], shapes[6 * m + 4], shapes[6 * m + 5]);
    Vec3 centre = shift.plus(turn.cross(body.centreOfMass()));
    Vec3 spin = body.inertia().times(turn);
    double mass = body.mass();
    double[] shares = {
      mass * centre.x() * centre.x(),
      mass * centre.y() * centre.y(),
      mass * centre.z() * centre.z(),
      Math.max(0, turn.x() * spin.x()),
      Math.max(0, turn.y() * spin.y()),
      Math.max(0, turn.z() * spin.z())
    };
    if (Double.isInfinite(omega[m])) {
      shares =
          new double[] {0, 0, 0, turn.x() * turn.x(), turn.y() * turn.y(), turn.z() * turn.z()};
    }
    return new SwingMode(omega[m] / (2 * Math.PI), shift, turn, DirectionWords.of(shares));
  }

  /** The modes, softest first. */
  public List<SwingMode> modes() {
    return List.copyOf(modes);
  }

  /** Undamped angular frequency of a mode, rad/s; infinite where it moves no mass. */
  public double omega(int mode) {
    return omega[mode];
  }

  /** What a mode's unit does at a point of the part that is given in the grip frame, m. */
  public Vec3 shiftAt(int mode, Vec3 point) {
    SwingMode m = modes.get(mode);
    return m.shift().plus(m.turn().cross(point));
  }

  /**
   * Where a point of the part comes to rest under a load, from where it is without load.
   *
   * @param load required wrench, six numbers, read
   * @param at index of its first number
   * @param step distance between its numbers
   * @param point in the grip frame
   * @return m, grip frame
   */
  public Vec3 restAt(double[] load, int at, int step, Vec3 point) {
    Vec3 sum = Vec3.ZERO;
    for (int m = 0; m < 6; m++) {
      double modal = 0;
      for (int i = 0; i < 6; i++) {
        modal += shapes[6 * m + i] * load[at + step * i];
      }
      sum = sum.minus(shiftAt(m, point).times(modal));
    }
    return sum;
  }
}
