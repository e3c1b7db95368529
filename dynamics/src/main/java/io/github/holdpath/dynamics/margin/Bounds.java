package io.github.holdpath.dynamics.margin;

/**
 * What the steps of a {@link ConeSolver} prove about its largest x, from both sides and whatever
 * rounding does to the steps (theory, section 3).
 *
 * <p>From above: multipliers y of the balance whose weights A'y no patch can meet with a negative
 * sum give {@code x <= right'y} once {@code load'y = -1}. Where a patch misses this by a little, so
 * much of a fixed twist that presses all patches is added to y as mends it: spare is concave and
 * grows in proportion, so that of a sum is at least the sum. A patch with a largest normal force
 * pays for what it misses instead.
 */
final class Bounds {
  /** Where no twist presses all patches, y counts if its residual is below this. */
  private static final double MISSED = 1e-7;

  /** What is left to spare to each patch by a twist that presses all; empty without one. */
  private final double[] press;

  private double low;
  private double high;

  /**
   * For one grip.
   *
   * @param press what a twist that presses all patches leaves each to spare, or empty
   */
  Bounds(double[] press) {
    this.press = press;
  }

  void reset() {
    low = 0;
    high = Double.POSITIVE_INFINITY;
  }

  /** Largest x for which unknowns were found. */
  double low() {
    return Math.min(low, high);
  }

  /** An x beyond which there are none. */
  double high() {
    return high;
  }

  void offerLow(double x) {
    low = Math.max(low, x);
  }

  /**
   * Looks at multipliers of the balance.
   *
   * @param blocks with what y leaves each patch to spare
   * @param missed residual of y and the limits' multipliers
   * @return how much of the pressing twist y needs; NaN if y proves nothing
   */
  double pressing(Block[] blocks, double missed) {
    double part = 0;
    for (int i = 0; i < blocks.length; i++) {
      if (blocks[i].spare() < 0 && blocks[i].mostNormal() == Double.POSITIVE_INFINITY) {
        if (press.length == 0) {
          return missed < MISSED ? 0 : Double.NaN;
        }
        part = Math.max(part, -blocks[i].spare() / press[i]);
      }
    }
    return part;
  }

  /**
   * Takes an upper bound from multipliers of the balance.
   *
   * @param part of the pressing twist that is in them, as {@link #pressing} asked
   * @param right {@code right'y} with it
   * @param load {@code load'y} with it; what it misses of -1 is scaled away
   * @param cap on x, which pays where load'y is above -1
   */
  void offerHigh(Block[] blocks, double part, double right, double load, double cap) {
    double value = right;
    for (int i = 0; i < blocks.length; i++) {
      double most = blocks[i].mostNormal();
      if (most < Double.POSITIVE_INFINITY) {
        double pressed = press.length == 0 ? 0 : part * press[i];
        value += most * Math.max(0, -blocks[i].spare() - pressed);
      }
    }
    high = Math.min(high, value + cap * Math.max(0, 1 + load));
    if (load < 0) {
      high = Math.min(high, value / -load);
    }
  }
}
