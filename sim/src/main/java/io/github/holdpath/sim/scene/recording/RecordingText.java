package io.github.holdpath.sim.scene.recording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Pattern;

/** Numbers and quotations of a recording's text. */
final class RecordingText {
  private static final int QUOTED = 40;
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern COMMA_NUMBER =
      Pattern.compile("[+-]?(\\d+,\\d*|,\\d+)([eE][+-]?\\d+)?");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[+-]?(nan|inf|infinity)", Pattern.CASE_INSENSITIVE);

  private RecordingText() {}

  /** Whether the text is a number with a decimal point, or whole. */
  static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  /**
   * A finite number, or NaN where {@link #complaint} says why not.
   *
   * @param text without surrounding spaces
   * @param decimalComma whether the comma is the decimal sign
   */
  static double parse(String text, boolean decimalComma) {
    String plain = text;
    if (decimalComma) {
      if (text.indexOf('.') >= 0) {
        return Double.NaN;
      }
      plain = text.replace(',', '.');
    }
    if (!isNumber(plain)) {
      return Double.NaN;
    }
    double value = Double.parseDouble(plain);
    return Double.isInfinite(value) ? Double.NaN : value;
  }

  /** Why a text is not a number. */
  static String complaint(String text, boolean decimalComma) {
    if (text.isEmpty()) {
      return "is empty; every row needs a number here";
    }
    String start = "is \"" + quote(text) + "\", ";
    if (NOT_FINITE.matcher(text).matches()) {
      return start + "not a finite number";
    }
    if (!decimalComma && COMMA_NUMBER.matcher(text).matches()) {
      return start + "which looks like a decimal comma; say \"decimalComma\": true";
    }
    if (decimalComma && isNumber(text)) {
      return start + "with a decimal point, but the scene says decimal comma";
    }
    return start + (isNumber(text) ? "too large for a number" : "not a number");
  }

  /** At most 40 characters of a text, unprintable ones as question marks. */
  static String quote(String text) {
    String start = text.length() > QUOTED ? text.substring(0, QUOTED) + "..." : text;
    return start
        .codePoints()
        .map(c -> Character.isISOControl(c) || !Character.isDefined(c) ? '?' : c)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** A number with five digits at most, without zeros at its end. */
  static String plain(double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      return "out of range";
    }
    return shorten(new BigDecimal(value).round(new MathContext(5)));
  }

  /** A finite number with all the digits it needs to read back the same. */
  static String exact(double value) {
    return shorten(BigDecimal.valueOf(value));
  }

  private static String shorten(BigDecimal value) {
    return value.stripTrailingZeros().toPlainString();
  }

  /** Text with values, the same in every locale. */
  static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
