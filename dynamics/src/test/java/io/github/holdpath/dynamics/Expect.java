package io.github.holdpath.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import org.junit.jupiter.api.function.Executable;

/** Comparisons that several tests need. */
public final class Expect {
  /** Relative tolerance of pure algebra: some hundred roundings of 1e-16. */
  public static final double ALGEBRA = 1e-12;

  private Expect() {}

  /** Every component within {@code tolerance}. */
  public static void near(Vec3 expected, Vec3 actual, double tolerance) {
    near(new double[] {expected.x(), expected.y(), expected.z()}, actual, tolerance);
  }

  /** Every component within {@code tolerance}. */
  public static void near(double[] expected, Vec3 actual, double tolerance) {
    near(expected, new double[] {actual.x(), actual.y(), actual.z()}, tolerance, "vector");
  }

  /** Every component within {@code relative} times the largest of {@code expected}. */
  public static void near(Wrench expected, Wrench actual, double relative, String what) {
    double[] e = expected.toArray();
    near(e, actual.toArray(), relative * largest(e), what);
  }

  /** Every component within {@code tolerance}. */
  public static void near(double[] expected, double[] actual, double tolerance, String what) {
    assertEquals(expected.length, actual.length, what);
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], actual[i], tolerance, what + ", component " + i);
    }
  }

  /** The call is refused as a caller's bug, with a message that holds {@code words}. */
  public static void refused(String words, Executable call) {
    String message =
        String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
    assertTrue(message.contains(words), message);
  }

  /** Largest absolute value. */
  public static double largest(double[] values) {
    double most = 0;
    for (double v : values) {
      most = Math.max(most, Math.abs(v));
    }
    return most;
  }
}
