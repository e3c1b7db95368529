package io.github.holdpath.dynamics.margin;

/**
 * One limit of one patch under a load.
 *
 * @param mode what happens when it is met
 * @param failing whether meeting it fails the grip; opening of a pad does not
 * @param label short name for texts, as {@code slip} or {@code tip about x}
 * @param reserve what the limit offers when the part is weightless: mu N0 in N, N0 rho in N m, N0
 *     in N, N_max - N0 in N
 * @param demand what one times the load takes of it, same unit; the limit is met at reserve/demand
 */
public record LimitUse(
    FailureMode mode, boolean failing, String label, double reserve, double demand) {
  /**
   * Factor on the load at which this limit is met, {@link HoldModel#NO_LIMIT} at most; 0 where the
   * preload alone passes it.
   */
  public double factor() {
    if (reserve < 0) {
      return 0;
    }
    if (!(demand > 0)) {
      return HoldModel.NO_LIMIT;
    }
    return Math.min(HoldModel.NO_LIMIT, reserve / demand);
  }
}
