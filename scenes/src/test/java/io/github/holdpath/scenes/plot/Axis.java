package io.github.holdpath.scenes.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * An axis of a plot.
 *
 * @param name quantity and unit
 * @param from value at its start
 * @param to value at its end
 * @param step between two marks; of a logarithmic axis there is one at each power of ten
 * @param decimals of the numbers at the marks
 * @param logarithmic whether equal ways are equal ratios
 */
record Axis(String name, double from, double to, double step, int decimals, boolean logarithmic) {
  /** Slack for a mark at the very end. */
  private static final double ROUNDING = 1e-9;

  static Axis even(String name, double from, double to, double step, int decimals) {
    return new Axis(name, from, to, step, decimals, false);
  }

  static Axis log(String name, double from, double to) {
    return new Axis(name, from, to, 1, 0, true);
  }

  /** Place of a value, 0 at the start of the axis and 1 at its end. */
  double share(double value) {
    if (logarithmic) {
      double least = from * 1e-3;
      return Math.log(Math.max(value, least) / from) / Math.log(to / from);
    }
    return (value - from) / (to - from);
  }

  List<Double> marks() {
    List<Double> marks = new ArrayList<>();
    if (logarithmic) {
      for (int i = (int) Math.ceil(Math.log10(from) - ROUNDING); Math.pow(10, i) <= to; i++) {
        marks.add(Math.pow(10, i));
      }
      return marks;
    }
    for (int i = (int) Math.ceil(from / step - ROUNDING); i * step <= to + ROUNDING * step; i++) {
      marks.add(i * step);
    }
    return marks;
  }

  String number(double mark) {
    if (logarithmic) {
      return mark >= 1
          ? Long.toString(Math.round(mark))
          : String.format(Locale.ROOT, "%." + Math.round(-Math.log10(mark)) + "f", mark);
    }
    return String.format(Locale.ROOT, "%." + decimals + "f", mark);
  }
}
