package io.github.holdpath.viewer.app;

import io.github.holdpath.sim.cli.CallException;
import java.util.Locale;

/**
 * Size of an image.
 *
 * @param width pixels
 * @param height pixels
 */
record ImageSize(int width, int height) {
  static final int LEAST = 320;
  static final int MOST = 8192;

  /** As given on the command line. */
  static ImageSize of(String text) throws CallException {
    String[] sides = text.toLowerCase(Locale.ROOT).split("x", -1);
    if (sides.length == 2 && sides[0].matches("[0-9]{3,4}") && sides[1].matches("[0-9]{3,4}")) {
      int width = Integer.parseInt(sides[0]);
      int height = Integer.parseInt(sides[1]);
      if (Math.min(width, height) >= LEAST && Math.max(width, height) <= MOST) {
        return new ImageSize(width, height);
      }
    }
    throw new CallException(
        "--size "
            + text
            + ": give width and height in pixels, each from "
            + LEAST
            + " to "
            + MOST
            + ", as 1280x800");
  }

  @Override
  public String toString() {
    return width + " x " + height;
  }
}
