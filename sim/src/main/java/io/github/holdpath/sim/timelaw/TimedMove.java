package io.github.holdpath.sim.timelaw;

/**
 * Of the moves of {@link UpMove}, the one that lasts a given time: of all motions between two
 * states of speed and acceleration that last so long it goes farthest (theory, section 5.15).
 */
final class TimedMove {
  private TimedMove() {}

  /** Shortest time before a gap, or infinite where there is none. */
  static double gapFrom(UpMove m) {
    double c = square(m);
    if (!(m.a1 > 0 && m.a0 > 0 && c < m.a0 * m.a0)) {
      return Double.POSITIVE_INFINITY;
    }
    double dip = Math.min(m.a1, Math.sqrt(m.a0 * m.a0 - c));
    return (m.a0 - dip + m.a1 - dip) / m.j;
  }

  /** Excess of the square of the peak over that of the dip. */
  private static double square(UpMove m) {
    return m.j * (m.v1 - m.v0) + (m.a0 * m.a0 - m.a1 * m.a1) / 2;
  }

  /** Whether the move of that duration dips without passing acceleration 0. */
  static boolean dips(UpMove m, double duration) {
    double c = square(m);
    if (!(m.a1 > 0) || c < 0) {
      return false;
    }
    double gap = gapFrom(m);
    if (gap < Double.POSITIVE_INFINITY) {
      return duration <= gap;
    }
    double peak = Math.min(m.up, Math.sqrt(c));
    double flat = Math.max(0, c - m.up * m.up) / (m.j * m.up);
    return duration < (2 * peak - m.a0 + m.a1) / m.j + flat;
  }

  /** The dip of the move that lasts {@code duration}, eq. 5.28. */
  static double dip(UpMove m, double duration) {
    double c = Math.max(0, square(m));
    double fall = (m.j * duration + m.a0 - m.a1) / 2;
    double dip = fall > 0 ? (c / fall - fall) / 2 : m.a1;
    if (dip + fall > m.up) {
      double rest = m.up * (m.j * duration + m.a0 - m.a1) - c;
      dip = m.up - Math.sqrt(Math.max(0, rest));
    }
    return Math.max(0, Math.min(m.a1, dip));
  }

  /** Peak of the ramp from the higher speed for a sum of the times of both, eq. 5.29. */
  static double nearPeak(double sum, double d, double most, double mostFar, double j) {
    if (!(sum > 0)) {
      return 0;
    }
    double x = j * sum / 4 - d / (j * sum);
    double y = Math.sqrt(x * x + d);
    if (x <= most && y <= mostFar) {
      return Math.max(0, x);
    }
    // Times of the ramps, by the squares of their peaks: x^2/(j most) + most/j where flat.
    double bothSquare =
        (sum - most / j - mostFar / j - d / (j * mostFar)) * j / (1 / most + 1 / mostFar);
    if (bothSquare >= most * most && bothSquare + d >= mostFar * mostFar) {
      return Math.sqrt(bothSquare);
    }
    double far = Math.sqrt(Math.max(0, j * most * sum + d)) - most;
    if (far <= mostFar && far * far - d >= most * most) {
      return Math.sqrt(far * far - d);
    }
    return Math.max(0, Math.sqrt(Math.max(0, j * mostFar * sum - d)) - mostFar);
  }
}
