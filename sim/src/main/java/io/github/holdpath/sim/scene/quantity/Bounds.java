package io.github.holdpath.sim.scene.quantity;

/**
 * Where a number must lie, in SI.
 *
 * @param least lower bound
 * @param open whether the lower bound itself is outside
 * @param most upper bound
 */
public record Bounds(double least, boolean open, double most) {
  /** Above 0 up to a bound. */
  public static Bounds positive(double most) {
    return new Bounds(0, true, most);
  }

  /** From 0 up to a bound. */
  public static Bounds notNegative(double most) {
    return new Bounds(0, false, most);
  }

  /** Between two bounds, both inside. */
  public static Bounds between(double least, double most) {
    return new Bounds(least, false, most);
  }

  /** At most so far from 0. */
  public static Bounds within(double most) {
    return new Bounds(-most, false, most);
  }

  /**
   * Why a number is outside.
   *
   * @param value in SI
   * @param unit SI unit for the text, may be empty
   * @return a clause, empty if it is inside
   */
  public String fault(double value, String unit) {
    if (open && value <= least) {
      return "must be above " + shown(least, unit);
    }
    if (!(value >= least)) {
      return "must be at least " + shown(least, unit);
    }
    return value > most ? "must be at most " + shown(most, unit) : "";
  }

  /** In words, as {@code above 0 kg, at most 10000 kg}. */
  public String words(String unit) {
    return (open ? "above " : "at least ") + shown(least, unit) + ", at most " + shown(most, unit);
  }

  private static String shown(double value, String unit) {
    String number =
        value == Math.rint(value) && Math.abs(value) < 1e15
            ? Long.toString((long) value)
            : Double.toString(value);
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
