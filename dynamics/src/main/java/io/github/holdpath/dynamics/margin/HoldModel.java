package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.grip.PreloadBalance;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A grip made ready to be asked about loads: how it shares them, which limit is met first, how much
 * faster the motion may be played (theory, section 3). Immutable; each thread brings a {@link
 * Workspace} of its own.
 *
 * <p>Loads are required wrenches: on the part, about the grip frame's origin, in its axes.
 *
 * <p>Assumes a rigid part on elastic patches, even pressure, dry friction with one coefficient per
 * patch. Between the first slip and the last hold parts of the contact creep; the factor here does
 * not count on that.
 */
public final class HoldModel {
  /** Factor that stands for no limit. */
  public static final double NO_LIMIT = 1e4;

  private static final double CARRIED_TOLERANCE = 1e-8;

  /** A ledge pushes if its share is above this part of the load's size. */
  static final double PUSH_TOLERANCE = 1e-10;

  private static final double CAREFUL_TOLERANCE = 1e-12;

  /** Most ledges that can be judged: each set of pushing ledges has shares of its own. */
  public static final int MOST_LEDGES = 10;

  private final List<ContactPatch> patches;
  private final List<Drive> drives;
  private final int[] ledges;
  private final PatchLimits[] limits;
  private final ShareMatrix free;

  /**
   * From patches and drives in the grip frame.
   *
   * @throws IllegalArgumentException if the preload does not balance by itself, or there are no
   *     patches, or more than 10 ledges, or a drive names a patch that is not there
   */
  public HoldModel(List<ContactPatch> patches, List<Drive> drives) {
    this.patches = List.copyOf(patches);
    this.drives = List.copyOf(drives);
    if (this.patches.isEmpty()) {
      throw new IllegalArgumentException("a grip needs at least one patch");
    }
    this.ledges = IntStream.range(0, patches.size()).filter(i -> patches.get(i).ledge()).toArray();
    if (ledges.length > MOST_LEDGES) {
      throw new IllegalArgumentException(
          "at most " + MOST_LEDGES + " ledges can be judged, but there are " + ledges.length);
    }
    checkDrives();
    checkBalance();
    this.limits = this.patches.stream().map(PatchLimits::new).toArray(PatchLimits[]::new);
    this.free = matrix(0);
  }

  /** From a kind of grip. */
  public static HoldModel of(GripModel grip) {
    return new HoldModel(grip.patches(), grip.drives());
  }

  /** The patches, in their order. */
  public List<ContactPatch> patches() {
    return patches;
  }

  /** Memory for one thread. */
  public Workspace workspace() {
    return new Workspace(this);
  }

  /** Whether shares change with the load's direction, because ledges push only. */
  boolean hasLedges() {
    return ledges.length > 0;
  }

  private void checkDrives() {
    for (Drive drive : drives) {
      for (int patch : drive.patches()) {
        if (patch < 0 || patch >= patches.size()) {
          throw new IllegalArgumentException(
              "a drive names patch " + patch + ", but there are " + patches.size());
        }
      }
    }
  }

  private void checkBalance() {
    PreloadBalance.rest(patches)
        .ifPresent(
            rest -> {
              throw new IllegalArgumentException(
                  "the preload does not balance by itself: "
                      + rest.force().norm()
                      + " N and "
                      + rest.moment().norm()
                      + " N m are left over");
            });
  }

  private ShareMatrix matrix(int mask) {
    boolean[] standing = new boolean[patches.size()];
    for (int j = 0; j < ledges.length; j++) {
      standing[ledges[j]] = (mask & 1 << j) != 0;
    }
    return ShareMatrix.of(patches, drives, standing);
  }

  /**
   * Largest use of any failing limit, 1/H1: the grip holds a load while this is at most 1. Convex
   * in the load where there are no ledges. Allocates nothing (but for the first use of a set of
   * pushing ledges).
   *
   * @param w array with the load, read
   * @param at index of its first number
   * @param ws workspace; afterwards {@link Workspace#patch} names the patch
   * @return dimensionless, at least 0; infinite where the grip cannot carry the load at all
   */
  public double use(double[] w, int at, Workspace ws) {
    ShareMatrix m = ledges.length == 0 ? free : ws.matrixFor(pushingLedges(w, at, ws));
    return use(m, w, at, ws);
  }

  double use(ShareMatrix m, double[] w, int at, Workspace ws) {
    if (m.missing.length > 0 && !carries(m, w, at)) {
      ws.patch = -1;
      return Double.POSITIVE_INFINITY;
    }
    double w0 = w[at];
    double w1 = w[at + 1];
    double w2 = w[at + 2];
    double w3 = w[at + 3];
    double w4 = w[at + 4];
    double w5 = w[at + 5];
    if (!Double.isFinite(w0 + w1 + w2 + w3 + w4 + w5)) {
      throw new IllegalArgumentException(
          "a load must be finite, but was " + Arrays.toString(Arrays.copyOfRange(w, at, at + 6)));
    }
    double worst = 0;
    int patch = -1;
    double[] s = m.shares;
    for (int i = 0, k = 0; i < limits.length; i++, k += 36) {
      double u =
          limits[i].use(
              s[k] * w0
                  + s[k + 1] * w1
                  + s[k + 2] * w2
                  + s[k + 3] * w3
                  + s[k + 4] * w4
                  + s[k + 5] * w5,
              s[k + 6] * w0
                  + s[k + 7] * w1
                  + s[k + 8] * w2
                  + s[k + 9] * w3
                  + s[k + 10] * w4
                  + s[k + 11] * w5,
              s[k + 12] * w0
                  + s[k + 13] * w1
                  + s[k + 14] * w2
                  + s[k + 15] * w3
                  + s[k + 16] * w4
                  + s[k + 17] * w5,
              s[k + 18] * w0
                  + s[k + 19] * w1
                  + s[k + 20] * w2
                  + s[k + 21] * w3
                  + s[k + 22] * w4
                  + s[k + 23] * w5,
              s[k + 24] * w0
                  + s[k + 25] * w1
                  + s[k + 26] * w2
                  + s[k + 27] * w3
                  + s[k + 28] * w4
                  + s[k + 29] * w5,
              s[k + 30] * w0
                  + s[k + 31] * w1
                  + s[k + 32] * w2
                  + s[k + 33] * w3
                  + s[k + 34] * w4
                  + s[k + 35] * w5,
              worst);
      if (u > worst * (1 + PatchLimits.TIE)) {
        worst = u;
        patch = i;
      }
    }
    ws.patch = patch;
    return worst;
  }

  private static boolean carries(ShareMatrix m, double[] w, int at) {
    double rest = 0;
    for (int row = 0; row < m.missing.length; row += 6) {
      double r = 0;
      for (int k = 0; k < 6; k++) {
        r += m.missing[row + k] * w[at + k];
      }
      rest += r * r;
    }
    // Moments by the length with which the rest was scaled, or a moment on a far patch looks
    // carried.
    double size = 0;
    for (int k = 0; k < 6; k++) {
      double part = k < 3 ? w[at + k] : w[at + k] / m.length;
      size += part * part;
    }
    return rest <= CARRIED_TOLERANCE * CARRIED_TOLERANCE * size;
  }

  /**
   * Which ledges push under a load: none at first, then while any is wrong the first wrong one
   * changes, which always ends.
   *
   * @param w array with the load, read
   * @param at index of its first number
   * @param ws workspace
   * @return bit j set if ledge j, in the order of the patches, pushes
   * @see "Murty: Note on a Bard-type scheme for solving the complementarity problem, Opsearch 11,
   *     1974"
   */
  public int pushingLedges(double[] w, int at, Workspace ws) {
    double size = 0;
    for (int k = 0; k < 6; k++) {
      size += w[at + k] * w[at + k];
    }
    double tolerance = PUSH_TOLERANCE * Math.sqrt(size);
    int mask = 0;
    // It ends within one step for each set of ledges where every set carries all loads. Where one
    // leaves a direction free it may go round, and no set is right.
    for (int steps = 1 << ledges.length; steps > 0; steps--) {
      ShareMatrix m = ws.matrixFor(mask);
      int wrong = -1;
      for (int j = 0; j < ledges.length && wrong < 0; j++) {
        double push = push(m, j, w, at);
        boolean stands = (mask & 1 << j) != 0;
        if (stands ? push < -tolerance : push > tolerance) {
          wrong = j;
        }
      }
      if (wrong < 0) {
        return mask;
      }
      mask ^= 1 << wrong;
    }
    return mask;
  }

  static double push(ShareMatrix m, int ledge, double[] w, int at) {
    double push = 0;
    for (int k = 0; k < 6; k++) {
      push += m.pushes[6 * ledge + k] * w[at + k];
    }
    return push;
  }

  int ledgeCount() {
    return ledges.length;
  }

  /** First-slip factor H1 of a load with mode and patch. */
  public FirstSlip firstSlip(Wrench load) {
    return firstSlip(load, workspace());
  }

  /** As {@link #firstSlip(Wrench)}, with the caller's workspace. */
  public FirstSlip firstSlip(Wrench load, Workspace ws) {
    double[] w = load.toArray();
    double use = use(w, 0, ws);
    int patch = ws.patch;
    if (Double.isInfinite(use) && patch < 0) {
      return new FirstSlip(0, FailureMode.FLOATS, -1, "");
    }
    if (use <= 1 / NO_LIMIT) {
      return new FirstSlip(NO_LIMIT, FailureMode.NONE, -1, "");
    }
    Wrench share = shares(load, ws).get(patch);
    return new FirstSlip(1 / use, limits[patch].firstMode(share), patch, patches.get(patch).name());
  }

  /**
   * Factor on the load at which the first pad begins to lift at an edge, or the first lip to peel;
   * {@link #NO_LIMIT} at most, 0 where the grip cannot carry the load at all.
   */
  public double opening(Wrench load) {
    if (!uncarried(load).equals(Wrench.ZERO)) {
      return 0;
    }
    double least = NO_LIMIT;
    List<List<LimitUse>> all = limits(load);
    for (List<LimitUse> patch : all) {
      for (LimitUse l : patch) {
        if (!l.failing() || l.mode() == FailureMode.PEEL) {
          least = Math.min(least, l.factor());
        }
      }
    }
    return least;
  }

  /**
   * Careful factor H1e, at most H1: slip taken about the pressure centre of patches that carry a
   * tilting moment too, where the plain rule is up to a third too hopeful.
   *
   * @return factor with the patch that slips first, or the plain one where that comes first
   */
  public FirstSlip careful(Wrench load) {
    Workspace ws = workspace();
    FirstSlip plain = firstSlip(load, ws);
    double[] share = flatShares(load.toArray(), 0, ws);
    double least = plain.factor();
    int patch = plain.patch();
    for (int i = 0; i < limits.length; i++) {
      if (least > 0 && !limits[i].holdsCarefully(share, 6 * i, least)) {
        least = carefulCrossing(limits[i], share, 6 * i, least);
        patch = i;
      }
    }
    return patch == plain.patch() && least == plain.factor()
        ? plain
        : new FirstSlip(least, FailureMode.SLIP, patch, patches.get(patch).name());
  }

  /**
   * Whether the slip limits about the pressure centres hold a multiple of a load; cheaper than
   * {@link #careful}, and without allocation.
   *
   * @param w array with the load, read
   * @param at index of its first number
   * @param factor on the load
   * @param ws workspace
   */
  public boolean holdsCarefully(double[] w, int at, double factor, Workspace ws) {
    double[] share = flatShares(w, at, ws);
    for (int i = 0; i < limits.length; i++) {
      if (!limits[i].holdsCarefully(share, 6 * i, factor)) {
        return false;
      }
    }
    return true;
  }

  private static double carefulCrossing(PatchLimits limit, double[] share, int at, double high) {
    double low = 0;
    while (high - low > CAREFUL_TOLERANCE * high) {
      double mid = low + (high - low) / 2;
      if (limit.holdsCarefully(share, at, mid)) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return low;
  }

  /**
   * What each patch puts on the part because of a load, besides its preload, in patch axes. They
   * balance the load but for what is {@link #uncarried}.
   */
  public List<Wrench> shares(Wrench load) {
    return shares(load, workspace());
  }

  private List<Wrench> shares(Wrench load, Workspace ws) {
    double[] w = load.toArray();
    ShareMatrix m = ws.matrixFor(pushingLedges(w, 0, ws));
    double[] flat = flatShares(load.minus(lost(m, w)).toArray(), 0, ws);
    List<Wrench> shares = new ArrayList<>();
    for (int i = 0; i < limits.length; i++) {
      shares.add(Wrench.of(flat, 6 * i));
    }
    return shares;
  }

  /** Shares of all patches, 6 numbers each, in the workspace. */
  private double[] flatShares(double[] w, int at, Workspace ws) {
    double[] m = ws.matrixFor(pushingLedges(w, at, ws)).shares;
    for (int row = 0; row < ws.share.length; row++) {
      double sum = 0;
      for (int k = 0; k < 6; k++) {
        sum += m[6 * row + k] * w[at + k];
      }
      ws.share[row] = sum;
    }
    return ws.share;
  }

  /**
   * How the grip gives under a load: the shift of the part against the tool, then the travel of
   * each drive. The share of a patch at p is its stiffness times {@code shift + turn x p}, in patch
   * axes.
   *
   * @return shift along x, y, z of the grip frame in m, turn about x, y, z in rad, travel of each
   *     drive in m; in units of load per stiffness where no stiffness was given
   */
  public double[] give(Wrench load) {
    double[] w = load.toArray();
    Workspace ws = workspace();
    ShareMatrix m = ws.matrixFor(pushingLedges(w, 0, ws));
    w = load.minus(lost(m, w)).toArray();
    double[] give = new double[6 + drives.size()];
    for (int row = 0; row < give.length; row++) {
      for (int k = 0; k < 6; k++) {
        give[row] += m.shifts[6 * row + k] * w[k];
      }
    }
    return give;
  }

  /** Every limit of every patch under a load, in the order of the patches. */
  public List<List<LimitUse>> limits(Wrench load) {
    List<Wrench> shares = shares(load);
    List<List<LimitUse>> all = new ArrayList<>();
    for (int i = 0; i < limits.length; i++) {
      all.add(limits[i].all(shares.get(i)));
    }
    return all;
  }

  /**
   * The part of a load that nothing in the grip can carry: the least that has to go before it
   * carries the rest; zero where it carries all. About the grip frame's origin, in its axes.
   */
  public Wrench uncarried(Wrench load) {
    double[] w = load.toArray();
    Workspace ws = workspace();
    ShareMatrix m = ws.matrixFor(pushingLedges(w, 0, ws));
    return lost(m, w);
  }

  private static Wrench lost(ShareMatrix m, double[] w) {
    if (m.missing.length == 0 || carries(m, w, 0)) {
      return Wrench.ZERO;
    }
    double[] lost = new double[6];
    for (int row = 0; row < 6; row++) {
      for (int k = 0; k < 6; k++) {
        lost[row] += m.lost[6 * row + k] * w[k];
      }
    }
    return Wrench.of(lost, 0);
  }

  /** Memory of one thread for the questions to one {@link HoldModel}. */
  public static final class Workspace {
    private final HoldModel owner;
    private final ShareMatrix[] matrices;
    private final double[] share;

    /** Patch that the last {@link HoldModel#use} found worst; -1 where none is meant. */
    int patch = -1;

    private Workspace(HoldModel owner) {
      this.owner = owner;
      this.matrices = new ShareMatrix[1 << owner.ledges.length];
      this.matrices[0] = owner.free;
      this.share = new double[6 * owner.limits.length];
    }

    /** Patch that the last use found worst, -1 where none is meant. */
    public int patch() {
      return patch;
    }

    @SuppressWarnings("NullAway") // entries are filled on first use
    ShareMatrix matrixFor(int mask) {
      if (matrices[mask] == null) {
        matrices[mask] = owner.matrix(mask);
      }
      return matrices[mask];
    }
  }
}
