package io.github.holdpath.sim.timelaw;

/**
 * A stretch of a path with limits of its own, one after the other between two stops; in any
 * consistent unit of position.
 *
 * @param length way along the path, positive
 * @param limits that hold all along the zone, its ends included
 * @param steady whether it must be crossed at constant speed, as a bend whose limits leave nothing
 *     for acceleration along the path
 */
public record LawZone(double length, LawLimits limits, boolean steady) {
  /**
   * Refuses a length that is not positive and finite.
   *
   * @throws IllegalArgumentException naming the length
   */
  public LawZone {
    if (!(length > 0) || Double.isInfinite(length)) {
      throw new IllegalArgumentException("length must be positive and finite, but was " + length);
    }
  }
}
