package io.github.holdpath.sim.scene;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A quantity that has been read.
 *
 * @param values in SI; a fraction for percents
 * @param percent whether it was written as a percentage
 * @param text as written
 */
record Amount(List<Double> values, boolean percent, String text) {
  /** Copies the list. */
  Amount {
    values = List.copyOf(values);
  }

  double first() {
    return values.get(0);
  }

  double get(int i) {
    return values.get(i);
  }

  Vec3 vector() {
    return new Vec3(values.get(0), values.get(1), values.get(2));
  }
}
