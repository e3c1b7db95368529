package io.github.holdpath.sim.path;

/**
 * From a parameter u to the length s of the way (theory, eq. 5.47). The way is that of the origin,
 * or the angle turned where a curve only turns.
 */
final class ByWay {
  private ByWay() {}

  /** How fast the way grows by u, from the flat form by u. */
  static double speed(double[] p, boolean turns) {
    return Flat.norm(p, turns ? PathPoint.TURN : PathPoint.TANGENT);
  }

  /** Second derivative of u by s, from the flat form by u; the first is {@code 1 / speed}. */
  static double bend(double[] p, boolean turns) {
    int first = turns ? PathPoint.TURN : PathPoint.TANGENT;
    int second = turns ? PathPoint.TURN_SECOND : PathPoint.SECOND;
    double e = Flat.dot(p, first, p, first);
    return -Flat.dot(p, first, p, second) / (e * e);
  }

  /** Turns the flat form by u into that by s. */
  static void change(double[] p, boolean turns) {
    int first = turns ? PathPoint.TURN : PathPoint.TANGENT;
    int second = turns ? PathPoint.TURN_SECOND : PathPoint.SECOND;
    int third = turns ? PathPoint.TURN_THIRD : PathPoint.THIRD;
    double e = Flat.dot(p, first, p, first);
    double e1 = 2 * Flat.dot(p, first, p, second);
    double e2 = 2 * (Flat.dot(p, second, p, second) + Flat.dot(p, first, p, third));
    double u1 = 1 / Math.sqrt(e);
    double u2 = -e1 / (2 * e * e);
    double u3 = u1 * (e1 * e1 / e - e2 / 2) / (e * e);
    change(u1, u2, u3, p, PathPoint.TANGENT, PathPoint.SECOND, PathPoint.THIRD);
    change(u1, u2, u3, p, PathPoint.TURN, PathPoint.TURN_SECOND, PathPoint.TURN_THIRD);
  }

  private static void change(
      double u1, double u2, double u3, double[] p, int first, int second, int third) {
    for (int k = 0; k < 3; k++) {
      double d1 = p[first + k];
      double d2 = p[second + k];
      double d3 = p[third + k];
      p[first + k] = u1 * d1;
      p[second + k] = u1 * u1 * d2 + u2 * d1;
      p[third + k] = u1 * u1 * u1 * d3 + 3 * u1 * u2 * d2 + u3 * d1;
    }
  }
}
