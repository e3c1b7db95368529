package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.Locale;
import java.util.Optional;

/**
 * Samples that pass by the plain factor and do not by the careful one (theory, eqs. 3.9 to 3.11).
 */
final class CarefulLook {
  private final HoldModel hold;
  private final double safety;
  private final HoldModel.Workspace ws;
  private Optional<FirstSlip> least = Optional.empty();
  private double when;

  CarefulLook(HoldModel hold, double safety) {
    this.hold = hold;
    this.safety = safety;
    this.ws = hold.workspace();
  }

  /**
   * Looks at one sample.
   *
   * @param time s
   * @param load required wrench, 6 numbers
   * @param use of the plain limits, 1/H1
   */
  void look(double time, double[] load, double use) {
    if (use * safety > 1 || hold.holdsCarefully(load, 0, safety, ws)) {
      return;
    }
    FirstSlip careful = hold.careful(Wrench.of(load, 0));
    if (least.isEmpty() || careful.factor() < least.get().factor()) {
      least = Optional.of(careful);
      when = time;
    }
  }

  /** A sentence on the least careful factor below the required safety, if there is one. */
  Optional<String> warning() {
    return least.map(
        slip ->
            String.format(
                Locale.ROOT,
                "Taken with care, with the pressure off the middle of a tilted contact, %s slips at"
                    + " factor %.3f at %.3f s, below the required %s; leave that much more in hand.",
                slip.patchName(),
                slip.factor(),
                when,
                safety));
  }
}
