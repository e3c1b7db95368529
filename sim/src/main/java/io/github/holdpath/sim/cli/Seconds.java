package io.github.holdpath.sim.cli;

import io.github.holdpath.sim.scene.Units;

/** Times on the command line. */
public final class Seconds {
  private Seconds() {}

  /**
   * Reads a time with its unit.
   *
   * @param option that it belongs to, for the message
   * @param text as {@code 5ms}
   * @param example for the message
   */
  public static double of(String option, String text, String example) throws CallException {
    return Units.seconds(text)
        .orElseThrow(
            () ->
                new CallException(
                    option + " " + text + ": give a time with its unit, as " + example));
  }
}
