package io.github.holdpath.sim.surface;

/**
 * Static friction of one pair in one state. Tables scatter: a calculation takes the low end.
 *
 * @param one material
 * @param other material, the same as {@code one} for a pair of the same
 * @param state of the surfaces
 * @param low end of the range, dimensionless
 * @param high end of the range, dimensionless
 * @param source where the range comes from, in words
 */
public record FrictionRange(
    String one, String other, SurfaceState state, double low, double high, String source) {
  /** Refuses ranges that are none. */
  public FrictionRange {
    if (!(low >= 0 && low <= high) || !Double.isFinite(high)) {
      throw new IllegalArgumentException("no range of friction: " + low + " to " + high);
    }
  }

  /** The pair as it is written, {@code aluminium, steel}. */
  public String pair() {
    return one + ", " + other;
  }

  /** Whether this is the friction of two materials, in any order and letters. */
  boolean of(String a, String b) {
    return one.equalsIgnoreCase(a) && other.equalsIgnoreCase(b)
        || one.equalsIgnoreCase(b) && other.equalsIgnoreCase(a);
  }
}
