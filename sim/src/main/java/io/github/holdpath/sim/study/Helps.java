package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.DesignInput;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * What would help most: the derivative of the least factor by each design input, at the instant
 * where the factor is least. There the instant itself need not be differentiated: at a least value
 * its own shift does not count (envelope theorem). The factor is a closed form, whose derivative is
 * taken as a central difference.
 */
final class Helps {
  private static final double STEP = 1e-5;

  /** Gains below this part of the factor are not worth a line. */
  private static final double LEAST = 1e-3;

  private Helps() {}

  /** Inputs that help, the best first. */
  static List<Help> of(GripModel grip, Worst worst) {
    List<Help> list = new ArrayList<>();
    double factor = worst.first().factor();
    if (worst.first().unlimited() || factor == 0) {
      return list;
    }
    Wrench load = worst.load().total();
    for (DesignInput input : grip.designInputs()) {
      add(list, factor, input.label(), f -> factor(grip, input.on(grip.patches(), f), load));
    }
    add(
        list,
        factor,
        "acceleration there",
        f ->
            factor(
                grip, grip.patches(), worst.load().gravity().plus(worst.load().motion().times(f))));
    list.sort(Comparator.comparingDouble(Help::gain).reversed());
    return list;
  }

  private static double factor(GripModel grip, List<ContactPatch> patches, Wrench load) {
    return new HoldModel(patches, grip.drives()).firstSlip(load).factor();
  }

  private static void add(
      List<Help> list, double factor, String label, DoubleUnaryOperator factorOf) {
    double slope =
        (factorOf.applyAsDouble(1 + STEP) - factorOf.applyAsDouble(1 - STEP)) / (2 * STEP);
    double gain = Help.CHANGE * Math.abs(slope);
    if (gain > LEAST * factor && gain < HoldModel.NO_LIMIT) {
      list.add(new Help(label, slope > 0, gain));
    }
  }
}
