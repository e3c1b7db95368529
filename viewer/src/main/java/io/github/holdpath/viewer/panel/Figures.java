package io.github.holdpath.viewer.panel;

import java.util.Locale;

/** Numbers as the window writes them. */
final class Figures {
  private static final double BELOW_ONE = 0.99;

  private Figures() {}

  /** A time, as {@code 1.234 s}. */
  static String seconds(double time) {
    return String.format(Locale.ROOT, "%.3f s", time);
  }

  /** Three digits or so, without zeros at the end. */
  static String figure(double v) {
    double size = Math.abs(v);
    int decimals = size >= 100 ? 0 : size >= 10 ? 1 : size >= 0.0995 ? 2 : 3;
    return trimmed(String.format(Locale.ROOT, "%." + decimals + "f", v));
  }

  /** A margin, always with two digits behind the point; one below 1 is never rounded up to 1. */
  static String margin(double v) {
    double near = v < 1 ? Math.min(v, BELOW_ONE) : v;
    return v >= 100 ? "100 or more" : String.format(Locale.ROOT, "%.2f", near);
  }

  /** A round number of an axis. */
  static String tick(double v) {
    return trimmed(String.format(Locale.ROOT, "%.4f", v));
  }

  private static String trimmed(String s) {
    return s.contains(".") ? s.replaceAll("0+$", "").replaceAll("\\.$", "") : s;
  }
}
