package io.github.holdpath.dynamics.margin;

/**
 * First-slip factor H1 of one load: by how much the load may grow, in proportion, until the first
 * patch meets a failing limit.
 *
 * @param factor dimensionless; {@link HoldModel#NO_LIMIT} stands for no limit
 * @param mode how the first patch fails
 * @param patch index of that patch, -1 where no single patch is meant
 * @param patchName its name, empty where no single patch is meant
 */
public record FirstSlip(double factor, FailureMode mode, int patch, String patchName) {
  /** Whether the load may grow without end. */
  public boolean unlimited() {
    return factor >= HoldModel.NO_LIMIT;
  }
}
