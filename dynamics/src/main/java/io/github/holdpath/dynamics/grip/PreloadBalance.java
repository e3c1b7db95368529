package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import java.util.Optional;

/** Whether the forces that a grip is given leave a weightless part alone (theory, section 2). */
public final class PreloadBalance {
  private static final double TOLERANCE = 1e-9;

  private PreloadBalance() {}

  /**
   * What preload and pull of all patches leave over.
   *
   * @return wrench on the part about the grip frame's origin, in its axes; empty where it vanishes
   *     against the largest of its terms
   */
  public static Optional<Wrench> rest(List<ContactPatch> patches) {
    Wrench sum = Wrench.ZERO;
    double largest = 0;
    for (ContactPatch p : patches) {
      double net = p.preload() - p.pull();
      Wrench own = new Wrench(new Vec3(0, 0, net), Vec3.ZERO);
      sum = sum.plus(own.seenFrom(p.pose()));
      largest = Math.max(largest, Math.abs(net) * (1 + p.pose().position().norm()));
    }
    double rest = Math.max(sum.force().norm(), sum.moment().norm());
    return rest > TOLERANCE * largest ? Optional.of(sum) : Optional.empty();
  }
}
