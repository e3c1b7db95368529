package io.github.holdpath.sim.path;

import java.util.Arrays;

/**
 * Parameter u of a curve by the length s of its way (theory, eq. 5.47 and 5.48). The way is summed
 * by five-point Gauss quadrature over cells of u; in a cell u(s) is the quintic that has the values
 * and two derivatives of its ends. Cells are halved until both are exact to rounding. Immutable.
 */
final class WayTable {
  private static final int COEFFICIENTS = 6;

  /** Error of u(s) in a cell, as a way, and of the way of a cell, against the whole way. */
  private static final double TOLERANCE = 1e-12;

  /** Rounding of places, against their coordinates: a small zone far out cannot be more exact. */
  private static final double ROUNDING = 1e-15;

  /** A cell of 2^-14 is below any wrinkle of a curve that is not refused. */
  private static final int DEEPEST = 14;

  private static final int SHALLOWEST = 3;

  /** Places taken of a cell where a curve is sampled. */
  private static final int SAMPLES = 6;

  // Nodes and weights of Gauss and Legendre's rule of five points on -1..1 (Abramowitz and Stegun,
  // Handbook of Mathematical Functions, 1964, table 25.4; here in their closed form).
  private static final double NEAR = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3;
  private static final double FAR = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3;
  private static final double WEIGHT_NEAR = (322 + 13 * Math.sqrt(70)) / 900;
  private static final double WEIGHT_FAR = (322 - 13 * Math.sqrt(70)) / 900;
  private static final double WEIGHT_MIDDLE = 128.0 / 225;

  private final ParameterCurve curve;
  private final boolean turns;
  private final double[] point = new double[PathPoint.SIZE];
  private final double tolerance;
  private int cells;
  private double[] s = new double[32];
  private double[] u = new double[32];
  private double[] c = new double[32 * COEFFICIENTS];

  /**
   * Sums the way of a curve.
   *
   * @param far size of its coordinates, which rounding goes by, m or rad
   */
  WayTable(ParameterCurve curve, double far) {
    this.curve = curve;
    turns = curve.onlyTurns();
    double whole = way(0, 0.5) + way(0.5, 1);
    tolerance = TOLERANCE * whole + ROUNDING * far;
    fill(0, 1, way(0, 1), 0);
  }

  /** Length of the whole way. */
  double length() {
    return s[cells];
  }

  /** Places of a stretch, its ends and evenly in every cell: close where the blend bends. */
  double[] places(double from, double to) {
    double[] places = new double[cells * SAMPLES + 2];
    int count = 0;
    places[count++] = from;
    for (int i = 0; i < cells; i++) {
      for (int k = 0; k < SAMPLES; k++) {
        double at = s[i] + k * (s[i + 1] - s[i]) / SAMPLES;
        if (at > from && at < to) {
          places[count++] = at;
        }
      }
    }
    places[count++] = to;
    return Arrays.copyOf(places, count);
  }

  /** The parameter at a way; allocates nothing. */
  double parameter(double way) {
    int lo = 0;
    int hi = cells;
    while (hi - lo > 1) {
      int mid = (lo + hi) >>> 1;
      if (s[mid] <= way) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    double t = (way - s[lo]) / (s[lo + 1] - s[lo]);
    double x = Math.max(0, Math.min(1, t));
    return u[lo] + hermite(lo, x);
  }

  private double hermite(int cell, double t) {
    int at = cell * COEFFICIENTS;
    double high = c[at + 3] + t * (c[at + 4] + t * c[at + 5]);
    return t * (c[at + 1] + t * (c[at + 2] + t * high));
  }

  private void fill(double from, double to, double whole, int depth) {
    double mid = (from + to) / 2;
    double first = way(from, mid);
    double second = way(mid, to);
    double length = first + second;
    if (depth >= SHALLOWEST) {
      put(from, to, length);
      double miss = (u[cells] + hermite(cells, first / length) - mid) * speed(mid);
      boolean exact = Math.abs(length - whole) <= tolerance;
      if (exact && Math.abs(miss) <= tolerance || depth >= DEEPEST) {
        cells++;
        return;
      }
    }
    fill(from, mid, first, depth + 1);
    fill(mid, to, second, depth + 1);
  }

  /** Writes a cell behind the last one, which does not count yet. */
  private void put(double from, double to, double length) {
    if (cells + 2 > s.length) {
      s = Arrays.copyOf(s, 2 * s.length);
      u = Arrays.copyOf(u, 2 * u.length);
      c = Arrays.copyOf(c, 2 * c.length);
    }
    u[cells] = from;
    s[cells + 1] = s[cells] + length;
    double v0 = length / speed(from);
    double a0 = length * length * ByWay.bend(point, turns);
    double v1 = length / speed(to);
    double a1 = length * length * ByWay.bend(point, turns);
    double d = to - from - v0 - a0 / 2;
    double e = v1 - v0 - a0;
    double f = a1 - a0;
    int at = cells * COEFFICIENTS;
    c[at + 1] = v0;
    c[at + 2] = a0 / 2;
    c[at + 3] = 10 * d - 4 * e + f / 2;
    c[at + 4] = -15 * d + 7 * e - f;
    c[at + 5] = 6 * d - 3 * e + f / 2;
  }

  private double way(double from, double to) {
    double m = (from + to) / 2;
    double h = (to - from) / 2;
    double near = speed(m - h * NEAR) + speed(m + h * NEAR);
    double far = speed(m - h * FAR) + speed(m + h * FAR);
    return h * (WEIGHT_MIDDLE * speed(m) + WEIGHT_NEAR * near + WEIGHT_FAR * far);
  }

  private double speed(double at) {
    curve.at(at, point);
    return ByWay.speed(point, turns);
  }
}
