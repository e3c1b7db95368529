package io.github.holdpath.scenes.plot;

import java.math.BigDecimal;

/**
 * Text of an SVG picture on a ground of its own, so that it reads on light and dark pages alike.
 * Coordinates are px, written to a hundredth: the last digits of a processor do not show.
 */
final class Svg {
  /** Ground of every picture. */
  static final String GROUND = "#FBFAF7";

  /** Colour of words. */
  static final String WORDS = "#22262B";

  /**
   * Moves a value off the middle between two hundredths, where rounding would hang on its last bit.
   */
  private static final double OFF_MIDDLE = 1e-6;

  private final StringBuilder text = new StringBuilder();

  Svg(int width, int height, String what) {
    text.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "\" height=\"")
        .append(height + "\" viewBox=\"0 0 " + width + " " + height + "\" role=\"img\"")
        .append(" aria-label=\"" + escaped(what) + "\">\n")
        .append("<rect width=\"" + width + "\" height=\"" + height + "\" rx=\"8\" fill=\"")
        .append(GROUND + "\" stroke=\"#C9C4B8\"/>\n")
        .append("<g font-family=\"sans-serif\" font-size=\"13\" fill=\"" + WORDS + "\">\n");
  }

  /** One element or more as they are. */
  void put(String element) {
    text.append(element).append('\n');
  }

  /** Words at a place; the anchor is start, middle or end. */
  void words(double x, double y, String anchor, String colour, String words) {
    put(
        "<text x=\""
            + px(x)
            + "\" y=\""
            + px(y)
            + "\" text-anchor=\""
            + anchor
            + "\" fill=\""
            + colour
            + "\">"
            + escaped(words)
            + "</text>");
  }

  void line(double x1, double y1, double x2, double y2, String stroke) {
    put("<path d=\"M" + at(x1, y1) + "L" + at(x2, y2) + "\" " + stroke + "/>");
  }

  static String at(double x, double y) {
    return px(x) + " " + px(y);
  }

  static String px(double value) {
    long hundredths = (long) Math.floor(100 * value + 0.5 + OFF_MIDDLE);
    return BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
  }

  private static String escaped(String s) {
    return s.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** The whole picture. */
  String done() {
    return text + "</g>\n</svg>\n";
  }
}
