package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Whole-grip factor H2: the largest factor on a load for which any contact wrenches inside the
 * limits balance it and keep the drives' relations (theory, eqs. 3.12 and 3.13). A cone programme,
 * solved by {@link ConeSolver}. Between the first-slip factor and this one parts of the contact
 * creep, but the part may be kept: a bound on the drop, not a factor to design by.
 *
 * @see "Lobo, Vandenberghe, Boyd, Lebret: Applications of second-order cone programming, Linear
 *     Algebra and its Applications 284, 1998"
 */
public final class WholeGrip {
  private static final double RANK_TOLERANCE = 1e-10;
  private static final double SPAN_TOLERANCE = 1e-8;

  /** A factor so near the cap is at the cap. */
  private static final double CAP_TOLERANCE = 1e-6;

  /** A factor below this is none: the grip cannot carry the load at all. */
  private static final double NOTHING = 1e-7;

  private static final double LEDGE_START = 0.05;

  /** Gap of the bounds where many loads are compared. */
  private static final double QUICK = 1e-8;

  /** Gap where one number is wanted: the last digits that rounding leaves. */
  private static final double FINE = 1e-13;

  private final ConePatch[] patches;
  private final double force;
  private final double length;

  /** Middle of the patches, about which moments balance: the same wherever the frame lies. */
  private final Vec3 centre;

  private final double[][] columns;
  private final double[] basis;
  private final double[] right;
  private final boolean crushedAtRest;
  private final int relations;
  private final int rank;

  /**
   * A grip with plain limits.
   *
   * @param patches all patches
   * @param drives relations of the contact forces along the closing directions
   * @param closures of self-locking fingers: the same relation with each force per stiffness
   */
  public WholeGrip(List<ContactPatch> patches, List<Drive> drives, List<Drive> closures) {
    this(patches, drives, closures, ConePatch.Limits.PLAIN);
  }

  /** From a kind of grip. */
  public static WholeGrip of(GripModel grip) {
    return new WholeGrip(grip.patches(), grip.drives(), grip.closures());
  }

  WholeGrip(
      List<ContactPatch> patches,
      List<Drive> drives,
      List<Drive> closures,
      ConePatch.Limits limits) {
    force = patches.stream().mapToDouble(ContactPatch::preload).max().orElse(0);
    if (!(force > 0)) {
      throw new IllegalArgumentException("a grip needs at least one patch with a preload");
    }
    crushedAtRest = patches.stream().anyMatch(p -> p.preload() > p.maxNormal());
    centre = centre(patches);
    length =
        Math.sqrt(
            patches.stream()
                .mapToDouble(p -> fromCentre(p).dot(fromCentre(p)) + p.shape().torsion())
                .average()
                .orElseThrow());
    this.patches =
        patches.stream()
            .map(p -> new ConePatch(p, limits, force, length, LEDGE_START))
            .toArray(ConePatch[]::new);
    relations = 6 + drives.size() + closures.size();
    double[][] whole = new double[patches.size()][];
    double[] preload = new double[relations];
    for (int i = 0; i < whole.length; i++) {
      whole[i] = columns(i, patches, drives, closures);
      double n = patches.get(i).preload() / force;
      for (int r = 0; r < relations; r++) {
        preload[r] += whole[i][r * 6 + 2] * n;
      }
    }
    basis = basis(whole);
    rank = basis.length / relations;
    columns = new double[whole.length][];
    for (int i = 0; i < whole.length; i++) {
      columns[i] = reduced(whole[i], this.patches[i]);
    }
    right = new double[rank];
    project(preload, right, 0);
  }

  private static Vec3 centre(List<ContactPatch> patches) {
    Vec3 sum = Vec3.ZERO;
    for (ContactPatch p : patches) {
      sum = sum.plus(p.pose().position());
    }
    return sum.times(1.0 / patches.size());
  }

  private Vec3 fromCentre(ContactPatch patch) {
    return patch.pose().position().minus(centre);
  }

  /** Relations x 6: what a contact wrench in patch axes gives to balance and drives. */
  private double[] columns(
      int index, List<ContactPatch> patches, List<Drive> drives, List<Drive> closures) {
    ContactPatch patch = patches.get(index);
    double[] m = new double[relations * 6];
    for (int k = 0; k < 6; k++) {
      double[] unit = new double[6];
      // A unit of moment is force times length.
      unit[k] = k < 3 ? 1 : length;
      Pose pose = new Pose(fromCentre(patch), patch.pose().rotation());
      double[] w = Wrench.of(unit, 0).seenFrom(pose).toArray();
      for (int r = 0; r < 6; r++) {
        m[r * 6 + k] = r < 3 ? w[r] : w[r] / length;
      }
    }
    double stiffest = patches.stream().mapToDouble(p -> p.stiffness().normal()).max().orElseThrow();
    for (int d = 0; d < drives.size(); d++) {
      closing(m, 6 + d, index, patch, drives.get(d), 1);
    }
    for (int d = 0; d < closures.size(); d++) {
      double weight = stiffest / patch.stiffness().normal();
      closing(m, 6 + drives.size() + d, index, patch, closures.get(d), weight);
    }
    return m;
  }

  private static void closing(
      double[] m, int row, int index, ContactPatch patch, Drive drive, double weight) {
    int at = drive.patches().indexOf(index);
    if (at < 0) {
      return;
    }
    Vec3 b = patch.pose().rotation().rotateBack(drive.directions().get(at));
    m[row * 6] = weight * b.x();
    m[row * 6 + 1] = weight * b.y();
    m[row * 6 + 2] = weight * b.z();
  }

  /** Orthonormal basis of what the patches can give: rows of {@link #relations} numbers. */
  private double[] basis(double[][] whole) {
    DMatrixRMaj gram = new DMatrixRMaj(relations, relations);
    for (int i = 0; i < whole.length; i++) {
      for (int r = 0; r < relations; r++) {
        for (int c = 0; c < relations; c++) {
          double sum = 0;
          for (int k = 0; k < 6; k++) {
            if (patches[i].unknown(k) >= 0) {
              sum += whole[i][r * 6 + k] * whole[i][c * 6 + k];
            }
          }
          gram.add(r, c, sum);
        }
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen =
        DecompositionFactory_DDRM.eig(relations, true, true);
    if (!eigen.decompose(gram)) {
      throw new IllegalStateException("the grip's relations could not be decomposed");
    }
    double largest = 0;
    for (int k = 0; k < relations; k++) {
      largest = Math.max(largest, eigen.getEigenvalue(k).getReal());
    }
    double[] rows = new double[relations * relations];
    int count = 0;
    for (int k = 0; k < relations; k++) {
      if (eigen.getEigenvalue(k).getReal() > RANK_TOLERANCE * largest) {
        System.arraycopy(eigen.getEigenVector(k).data, 0, rows, relations * count++, relations);
      }
    }
    return Arrays.copyOf(rows, relations * count);
  }

  private void project(double[] v, double[] to, int at) {
    for (int r = 0; r < rank; r++) {
      double sum = 0;
      for (int k = 0; k < relations; k++) {
        sum += basis[r * relations + k] * v[k];
      }
      to[at + r] = sum;
    }
  }

  /** What each unknown of the patch gives: rank numbers an unknown. */
  private double[] reduced(double[] whole, ConePatch patch) {
    double[] m = new double[patch.size * rank];
    double[] column = new double[relations];
    for (int k = 0; k < 6; k++) {
      int at = patch.unknown(k);
      if (at >= 0) {
        for (int r = 0; r < relations; r++) {
          column[r] = whole[r * 6 + k];
        }
        project(column, m, at * rank);
      }
    }
    return m;
  }

  /** Memory of one thread for questions to this grip. */
  public Workspace workspace() {
    return new Workspace(this);
  }

  /**
   * Whole-grip factor of a load, to the last digits that rounding leaves.
   *
   * @param load required wrench on the part, about the grip frame's origin, in its axes
   * @param scale a factor of the same size, as the first-slip factor; positive
   * @return both bounds; 0 where the preload alone crushes the part or nothing carries the load
   */
  public WholeGripFactor factor(Wrench load, double scale) {
    Workspace ws = workspace();
    double factor = fineFactor(load.toArray(), 0, scale, ws);
    return new WholeGripFactor(factor, ws.upper, ws.steps);
  }

  /**
   * Whole-grip factor of a load to 1e-8 of itself, without a new object.
   *
   * @param load array with the required wrench, N and N m
   * @param at index of its first number
   * @param scale a factor of the same size, as the first-slip factor; positive
   * @param ws of this grip; holds the upper bound afterwards
   * @return largest factor for which contact wrenches were found
   */
  public double factor(double[] load, int at, double scale, Workspace ws) {
    return factor(load, at, scale, QUICK, ws);
  }

  /** The same to the last digits that rounding leaves: half as many steps again. */
  public double fineFactor(double[] load, int at, double scale, Workspace ws) {
    return factor(load, at, scale, FINE, ws);
  }

  private double factor(double[] load, int at, double scale, double fine, Workspace ws) {
    if (!(scale > 0) || !Double.isFinite(scale)) {
      throw new IllegalArgumentException("scale must be positive, but was " + scale);
    }
    if (crushedAtRest) {
      return ws.nothing();
    }
    double size = 0;
    double fx = load[at];
    double fy = load[at + 1];
    double fz = load[at + 2];
    ws.whole[0] = fx;
    ws.whole[1] = fy;
    ws.whole[2] = fz;
    ws.whole[3] = load[at + 3] - (centre.y() * fz - centre.z() * fy);
    ws.whole[4] = load[at + 4] - (centre.z() * fx - centre.x() * fz);
    ws.whole[5] = load[at + 5] - (centre.x() * fy - centre.y() * fx);
    for (int r = 0; r < 6; r++) {
      ws.whole[r] *= scale / (r < 3 ? force : force * length);
      size += ws.whole[r] * ws.whole[r];
    }
    project(ws.whole, ws.load, 0);
    double inside = 0;
    for (double v : ws.load) {
      inside += v * v;
    }
    if (size - inside > SPAN_TOLERANCE * size) {
      return ws.nothing();
    }
    ws.solver.solve(ws.load, HoldModel.NO_LIMIT / scale, fine);
    ws.upper = Math.min(HoldModel.NO_LIMIT, ws.solver.high() * scale);
    if (ws.upper < NOTHING) {
      return ws.nothing();
    }
    ws.steps = ws.solver.steps();
    double factor = ws.solver.low() * scale;
    return factor > HoldModel.NO_LIMIT * (1 - CAP_TOLERANCE) ? HoldModel.NO_LIMIT : factor;
  }

  /** Memory of one thread for the questions to one {@link WholeGrip}. */
  public static final class Workspace {
    private final ConeSolver solver;
    private final double[] whole;
    private final double[] load;
    private double upper;
    private int steps;

    private Workspace(WholeGrip owner) {
      solver = new ConeSolver(owner.patches, owner.columns, owner.right);
      whole = new double[owner.relations];
      load = new double[owner.rank];
    }

    private double nothing() {
      upper = 0;
      steps = 0;
      return 0;
    }

    /** Factor beyond which nothing holds the load that was asked for last. */
    public double upper() {
      return upper;
    }

    /** Steps of the solver for the load that was asked for last. */
    public int steps() {
      return steps;
    }
  }
}
