package io.github.holdpath.sim.report;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers and lines as a person reads them. */
final class Text {
  /** Width of a page, characters. */
  static final int WIDTH = 80;

  private Text() {}

  /** A number with so many significant digits, without exponent and without idle zeros. */
  static String number(double value, int digits) {
    if (Double.isInfinite(value)) {
      return "no limit";
    }
    if (Math.abs(value) < 1e-12) {
      return "0";
    }
    BigDecimal d = new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
    return (d.scale() < 0 ? d.setScale(0) : d).toPlainString();
  }

  /** A number with so many digits behind the point. */
  static String fixed(double value, int decimals) {
    String s =
        BigDecimal.valueOf(value)
            .setScale(decimals, java.math.RoundingMode.HALF_EVEN)
            .toPlainString();
    // A negative number that rounds to nothing has no sign.
    return s.matches("-0\\.?0*") ? s.substring(1) : s;
  }

  /** A number that is not negative, with so many digits behind the point, rounded down. */
  static String down(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, java.math.RoundingMode.DOWN)
        .toPlainString();
  }

  /** Spaces in front up to a width. */
  static String right(String s, int width) {
    return " ".repeat(Math.max(0, width - s.length())) + s;
  }

  /** Spaces behind up to a width; cut off if longer. */
  static String left(String s, int width) {
    if (s.length() > width) {
      return s.substring(0, width - 1) + "~";
    }
    return s + " ".repeat(width - s.length());
  }

  /** Breaks a sentence into lines of at most {@link #WIDTH}, the later ones set in. */
  static void wrap(StringBuilder out, String first, String rest, String sentence) {
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String whole : sentence.split(" ", -1)) {
      String word = whole;
      // What no line can hold is broken where the line ends.
      while (word.length() > WIDTH - rest.length()) {
        if (!empty) {
          out.append(line).append('\n');
          line = new StringBuilder(rest);
        }
        int room = WIDTH - line.length();
        out.append(line).append(word, 0, room).append('\n');
        word = word.substring(room);
        line = new StringBuilder(rest);
        empty = true;
      }
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        out.append(line).append('\n');
        line = new StringBuilder(rest);
        empty = true;
      }
      if (!empty) {
        line.append(' ');
      }
      line.append(word);
      empty = false;
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }
}
