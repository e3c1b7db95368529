package io.github.holdpath.sim.scene.quantity;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A quantity that has been read.
 *
 * @param values in SI; a fraction for percents
 * @param percent whether it was written as a percentage
 * @param text as written
 */
public record Amount(List<Double> values, boolean percent, String text) {
  /** Copies the list. */
  public Amount {
    values = List.copyOf(values);
  }

  /** The first value, SI. */
  public double first() {
    return values.get(0);
  }

  /** One of the values, from 0, SI. */
  public double get(int i) {
    return values.get(i);
  }

  /** The first three values as a vector, SI. */
  public Vec3 vector() {
    return new Vec3(values.get(0), values.get(1), values.get(2));
  }
}
