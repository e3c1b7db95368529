package io.github.holdpath.sim.scene;

import io.github.holdpath.sim.scene.quantity.Dimension;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.Optional;
import java.util.OptionalDouble;

/** Values with units outside scene files. */
public final class Units {
  private Units() {}

  /**
   * A time with its unit, as {@code 5ms} or {@code 1.23 s}.
   *
   * @return s, not negative; empty if the text is not one time
   */
  public static OptionalDouble seconds(String text) {
    Optional<Quantity> q = Quantity.parse(text).quantity();
    if (q.isEmpty()
        || q.get().numbers().size() != 1
        || !q.get().unitFault(Dimension.TIME).isEmpty()) {
      return OptionalDouble.empty();
    }
    double seconds = q.get().toSi(Dimension.TIME)[0];
    return seconds >= 0 ? OptionalDouble.of(seconds) : OptionalDouble.empty();
  }
}
