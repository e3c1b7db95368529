package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Draws;
import org.junit.jupiter.api.Test;

class OscillatorTest {
  /** Roundings of a chain of closed forms. */
  private static final double EXACT = 1e-11;

  private static double[] drawn(Draws draws) {
    double[] p = new double[6];
    for (int k = 0; k < 6; k++) {
      p[k] = draws.number(-1, 1);
    }
    return p;
  }

  /** The same polynomial, from {@code a} to {@code b} of its stretch. */
  private static double[] cut(double[] p, double a, double b) {
    double[] c = new double[6];
    for (int k = 5; k >= 0; k--) {
      // Horner's rule with a + (b - a) s in place of s.
      for (int j = 5; j > 0; j--) {
        c[j] = c[j] * a + c[j - 1] * (b - a);
      }
      c[0] = c[0] * a + p[k];
    }
    return c;
  }

  @Test
  void stretchesMayBePartedAnywhere() {
    Draws draws = new Draws();
    for (int n = 0; n < 200; n++) {
      double omega = draws.number(1, 300);
      double zeta = draws.number(0, 0.5);
      double[] p = drawn(draws);
      // Very short stretches take the power series, long ones the closed form.
      double length = Math.pow(10, draws.number(-4, 0));
      double part = draws.number(0.01, 0.99);
      Oscillator whole = new Oscillator(omega, zeta);
      Oscillator two = new Oscillator(omega, zeta);
      whole.rest(0.7);
      two.rest(0.7);
      whole.enter(length, p);
      two.enter(length * part, cut(p, 0, part));
      assertEquals(whole.at(part / 2), two.at(0.5), EXACT * 100, "n " + n);
      two.leave();
      two.enter(length * (1 - part), cut(p, part, 1));
      assertEquals(whole.at(1), two.at(1), EXACT * 100, "n " + n);
      whole.leave();
      two.leave();
      assertEquals(whole.offset(0), two.offset(0), EXACT * 100);
      assertEquals(whole.rate(), two.rate(), EXACT * 100);
    }
  }

  @Test
  void solvesItsEquation() {
    Draws draws = new Draws();
    for (int n = 0; n < 100; n++) {
      double omega = draws.number(5, 50);
      double zeta = draws.number(0, 0.9);
      double length = draws.number(0.005, 0.5);
      double[] p = drawn(draws);
      Oscillator o = new Oscillator(omega, zeta);
      o.rest(draws.number(-1, 1));
      o.enter(length, p);
      double s = 0.4;
      double d = 1e-3;
      double[] q = new double[5];
      for (int i = 0; i < 5; i++) {
        o.at(s + (i - 2) * d);
        q[i] = o.lastWay;
      }
      double carried = o.at(s);
      double slope = (q[0] - 8 * q[1] + 8 * q[3] - q[4]) / (12 * d * length);
      double bend = (-q[0] + 16 * q[1] - 30 * q[2] + 16 * q[3] - q[4]) / (12 * d * d);
      double load = 0;
      for (int k = 5; k >= 0; k--) {
        load = load * s + p[k];
      }
      assertEquals(-(q[2] + 2 * zeta * slope / omega), carried, 1e-7);
      double theta = omega * length;
      // Second differences lose eight digits.
      assertEquals(theta * theta * (carried - load), bend, 1e-6 * (1 + theta * theta));
    }
  }

  @Test
  void restsUnderAConstantLoad() {
    Oscillator o = new Oscillator(20, 0.05);
    o.rest(3);
    o.enter(0.7, new double[] {3, 0, 0, 0, 0, 0});
    assertEquals(3, o.at(0.6), EXACT);
    assertTrue(o.ringing() < EXACT);
  }

  @Test
  void withoutMassItFollowsTheLoad() {
    Oscillator o = new Oscillator(Double.POSITIVE_INFINITY, 0.05);
    o.rest(0);
    o.enter(0.1, new double[] {1, 2, 3, 4, 5, 6});
    assertEquals(1 + 2 * 0.5 + 3 * 0.25 + 4 * 0.125 + 5 * 0.0625 + 6 * 0.03125, o.at(0.5), EXACT);
    o.leave();
    assertEquals(-21 + 21, o.offset(21), EXACT);
  }
}
