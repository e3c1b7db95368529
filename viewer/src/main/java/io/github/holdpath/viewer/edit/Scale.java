package io.github.holdpath.viewer.edit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Values that a slider can take, as positions from 0.
 *
 * @param least value at position 0, in the unit of the field
 * @param most greatest value
 * @param step between positions; on a logarithmic scale the ratio of neighbours
 * @param logarithmic whether neighbours have the same ratio rather than the same distance
 */
public record Scale(double least, double most, double step, boolean logarithmic) {
  /** Positions of a logarithmic scale from one end to the other. */
  private static final int LOG_POSITIONS = 200;

  /** Digits of a value on a logarithmic scale, 1 % or finer. */
  private static final int DIGITS = 3;

  /** Refuses a scale without length. */
  public Scale {
    if (!(least < most) || !(step > 0) || (logarithmic && !(least > 0 && step > 1))) {
      throw new IllegalArgumentException(
          "a scale needs least < most and a step, but has " + least + ", " + most + ", " + step);
    }
  }

  /** With the same distance between neighbours. */
  static Scale linear(double least, double most, double step) {
    return new Scale(least, most, step, false);
  }

  /** With the same ratio between neighbours. */
  static Scale log(double least, double most) {
    return new Scale(least, most, Math.pow(most / least, 1.0 / LOG_POSITIONS), true);
  }

  /** With a round step of about a hundredth of the way. */
  static Scale fine(double least, double most) {
    double raw = (most - least) / 100;
    double ten = Math.pow(10, Math.floor(Math.log10(raw)));
    double step = raw / ten < 2 ? ten : raw / ten < 5 ? 2 * ten : 5 * ten;
    return linear(least, most, step);
  }

  /** So much wider that a value lies on it. */
  Scale with(double value) {
    if (value >= least && value <= most) {
      return this;
    }
    double lo = Math.min(least, value);
    double hi = Math.max(most, value);
    return logarithmic && lo > 0
        ? log(lo, hi)
        : linear(lo, hi, logarithmic ? (hi - lo) / 200 : step);
  }

  /** The last position. */
  public int last() {
    double n = logarithmic ? Math.log(most / least) / Math.log(step) : (most - least) / step;
    return (int) Math.ceil(n - 1e-9);
  }

  /** The position next to a value. */
  public int position(double value) {
    double inside = Math.max(least, Math.min(most, value));
    double n = logarithmic ? Math.log(inside / least) / Math.log(step) : (inside - least) / step;
    return (int) Math.rint(n);
  }

  /** The value at a position, with no more digits than it needs. */
  public double value(int position) {
    double raw = logarithmic ? least * Math.pow(step, position) : least + position * step;
    double inside = Math.max(least, Math.min(most, raw));
    if (inside == least || inside == most || inside == 0) {
      return inside;
    }
    BigDecimal exact = new BigDecimal(inside);
    if (logarithmic) {
      return exact.round(new MathContext(DIGITS)).doubleValue();
    }
    int decimals = Math.max(0, 1 - (int) Math.floor(Math.log10(step)));
    return exact.setScale(decimals, RoundingMode.HALF_EVEN).doubleValue();
  }

  /** A number without needless digits, as {@code 9.5}. */
  static String number(double value) {
    BigDecimal d = new BigDecimal(value).round(new MathContext(10)).stripTrailingZeros();
    return d.signum() == 0 ? "0" : d.toPlainString();
  }
}
