package io.github.holdpath.sim.study;

/**
 * What one change of ten per cent does to the least factor, to first order.
 *
 * @param input that is changed, in the trade's words
 * @param more whether it grows; it shrinks otherwise
 * @param gain of the least factor, positive, dimensionless
 */
public record Help(String input, boolean more, double gain) {
  /** The change that the gain belongs to, relative. */
  public static final double CHANGE = 0.1;
}
