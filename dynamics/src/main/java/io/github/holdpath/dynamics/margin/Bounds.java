package io.github.holdpath.dynamics.margin;

/**
 * What the steps of a {@link ConeSolver} prove about its largest x, from both sides and whatever
 * rounding does to the steps (theory, section 3.5).
 *
 * <p>From above: multipliers y of the balance whose weights A'y no patch can meet with a negative
 * sum give {@code x <= right'y + cap max(0, 1 + load'y)}. Where a patch misses this by a little, y
 * is drawn towards an earlier one inside that costs least; a patch with a largest normal force pays
 * for what it misses instead.
 */
final class Bounds {
  /** Where no multipliers lie inside, as no patch can press without end, these are near enough. */
  private static final double MISSED = 1e-7;

  private final double[] inner;
  private double innerValue;
  private double innerPrice;
  private double low;
  private double high;

  Bounds(int patches) {
    inner = new double[patches];
  }

  void reset() {
    innerPrice = Double.POSITIVE_INFINITY;
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
   * @param value {@code right'y + cap max(0, 1 + load'y)}
   * @param x of the same step
   * @param blocks with what the multipliers leave each patch to spare
   * @param missed residual of the multipliers, which counts only while none inside are known
   */
  void look(double value, double x, double missed, Block[] blocks) {
    double paid = value;
    double drawn = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < blocks.length; i++) {
      double spare = blocks[i].spare();
      double most = blocks[i].mostNormal();
      if (most < Double.POSITIVE_INFINITY) {
        paid += most * Math.max(0, -spare);
      } else {
        least = Math.min(least, spare);
        if (spare < 0) {
          drawn = Math.max(drawn, spare / (spare - inner[i]));
        }
      }
    }
    if (least > 0 && (paid - x) / least < innerPrice) {
      innerPrice = (paid - x) / least;
      innerValue = paid;
      for (int i = 0; i < blocks.length; i++) {
        inner[i] = blocks[i].spare();
      }
    }
    if (drawn == 0) {
      high = Math.min(high, paid);
    } else if (innerPrice < Double.POSITIVE_INFINITY) {
      high = Math.min(high, paid + drawn * (innerValue - paid));
    } else if (missed < MISSED) {
      high = Math.min(high, paid);
    }
  }
}
