package io.github.holdpath.sim.timelaw;

import java.util.function.DoubleConsumer;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds the roots of a function that is smooth inside an interval but may rise like a square root
 * from its ends, and may not be defined (NaN) right at them.
 */
final class RootSearch {
  private static final int SCAN = 6;
  private static final int CREST = 30;
  private static final int HALVINGS = 100;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final DoubleUnaryOperator f;
  private final DoubleConsumer take;

  /**
   * A search.
   *
   * @param f the function
   * @param take gets both ends of the last interval around each root
   */
  RootSearch(DoubleUnaryOperator f, DoubleConsumer take) {
    this.f = f;
    this.take = take;
  }

  /** Looks in every interval between neighbours, and offers these themselves. */
  void between(double[] sorted) {
    for (int i = 0; i < sorted.length; i++) {
      take.accept(sorted[i]);
      if (i > 0 && sorted[i] > sorted[i - 1]) {
        scan(sorted[i - 1], sorted[i]);
      }
    }
  }

  /** Places crowd at both ends, where the function may be steep. */
  private void scan(double from, double to) {
    double a = from;
    for (int i = 1; i <= SCAN; i++) {
      double b = i == SCAN ? to : from + (to - from) * (1 - Math.cos(Math.PI * i / SCAN)) / 2;
      boolean atA = Double.isNaN(f.applyAsDouble(a));
      boolean atB = Double.isNaN(f.applyAsDouble(b));
      if (atA != atB) {
        double edge = atA ? edge(b, a) : edge(a, b);
        take.accept(edge);
        roots(atA ? edge : a, atA ? b : edge);
      } else if (!atA) {
        roots(a, b);
      }
      a = b;
    }
  }

  /** The last place towards {@code bad} at which the function is defined. */
  private double edge(double good, double bad) {
    double a = good;
    double b = bad;
    for (int k = 0; k < HALVINGS; k++) {
      double m = (a + b) / 2;
      if (Double.isNaN(f.applyAsDouble(m))) {
        b = m;
      } else {
        a = m;
      }
    }
    return a;
  }

  /** One root where the sign changes, else none or the two beside a crest that reaches over 0. */
  private void roots(double from, double to) {
    double fa = f.applyAsDouble(from);
    if (fa * f.applyAsDouble(to) <= 0) {
      bisect(from, to);
      return;
    }
    double sign = Math.signum(fa);
    double a = from;
    double b = to;
    double x = a + (1 - GOLDEN) * (b - a);
    double y = a + GOLDEN * (b - a);
    double fx = sign * f.applyAsDouble(x);
    double fy = sign * f.applyAsDouble(y);
    for (int k = 0; k < CREST; k++) {
      if (fx <= 0 || fy <= 0) {
        double over = fx <= 0 ? x : y;
        bisect(from, over);
        bisect(over, to);
        return;
      }
      if (fx < fy) {
        b = y;
        y = x;
        fy = fx;
        x = a + (1 - GOLDEN) * (b - a);
        fx = sign * f.applyAsDouble(x);
      } else {
        a = x;
        x = y;
        fx = fy;
        y = a + GOLDEN * (b - a);
        fy = sign * f.applyAsDouble(y);
      }
    }
  }

  private void bisect(double from, double to) {
    double a = from;
    double b = to;
    double fa = f.applyAsDouble(a);
    for (int k = 0; k < HALVINGS; k++) {
      double m = (a + b) / 2;
      if (m == a || m == b) {
        break;
      }
      double fm = f.applyAsDouble(m);
      if (fm * fa > 0) {
        a = m;
        fa = fm;
      } else {
        b = m;
      }
    }
    take.accept(a);
    take.accept(b);
  }
}
