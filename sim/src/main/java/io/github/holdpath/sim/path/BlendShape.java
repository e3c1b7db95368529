package io.github.holdpath.sim.path;

import java.util.Arrays;

/**
 * The curve of a blend by its own parameter u from 0 to 1 (theory, eq. 5.43 to 5.46): the end of
 * one move and the start of the next, both drawn towards the corner by weights.
 *
 * <pre>{@code x(u) = c + w(1-u) (a(u) - c) + w(u) (b(u) - c)}</pre>
 *
 * <p>x is position and quaternion together, seven numbers. Immutable.
 */
final class BlendShape {
  /** Numbers of a pose. */
  private static final int N = 7;

  /** The workspace begins with a place of a neighbour; then four orders of its seven numbers. */
  private static final int SIDE = PathPoint.SIZE;

  private static final int SUM = SIDE + 4 * N;
  private static final int WEIGHTS = SUM + 4 * N;

  /** Length of the workspace. */
  static final int WORK = WEIGHTS + 4;

  private final PathCurve before;
  private final PathCurve after;
  private final double depthBefore;
  private final double depthAfter;
  private final double signAfter;
  private final double[] corner = new double[N];
  private final boolean turns;
  private final double c2;
  private final double c3;
  private final double c4;
  private final double c5;

  /**
   * The blend of two moves.
   *
   * @param before the move that ends in the corner
   * @param depthBefore way from the start of the blend to the corner, along the first move
   * @param after the move that begins in the corner
   * @param depthAfter way from the corner to the end of the blend, along the second move
   * @param turns whether both moves only turn
   * @param roundness 0 to 1: 1 for the weights that sum to 1, 0 for those of degree 4
   */
  BlendShape(
      PathCurve before,
      double depthBefore,
      PathCurve after,
      double depthAfter,
      boolean turns,
      double roundness) {
    this.before = before;
    this.after = after;
    this.depthBefore = depthBefore;
    this.depthAfter = depthAfter;
    this.turns = turns;
    double[] p = new double[PathPoint.SIZE];
    before.at(before.length(), p);
    System.arraycopy(p, 0, corner, 0, N);
    after.at(0, p);
    signAfter = Flat.dot4(corner, 3, p, 3) < 0 ? -1 : 1;
    c2 = 6 - 6 * roundness;
    c3 = -8 + 18 * roundness;
    c4 = 3 - 18 * roundness;
    c5 = 6 * roundness;
  }

  /** Position and quaternion of the corner. */
  double[] corner() {
    return corner.clone();
  }

  /** Sign of the quaternion at the end against that of the second move: 1 or -1. */
  double signAfter() {
    return signAfter;
  }

  /**
   * Pose and derivatives by u.
   *
   * @param u 0 to 1
   * @param work of length {@link #WORK}
   * @param out flat form of {@link PathPoint}, with u in place of s
   */
  void at(double u, double[] work, double[] out) {
    for (int k = SUM; k < WEIGHTS; k++) {
      work[k] = 0;
    }
    System.arraycopy(corner, 0, work, SUM, N);
    before.at(before.length() - depthBefore * (1 - u), work);
    derivatives(work, depthBefore, 1);
    weights(1 - u, -1, work);
    addSide(work);
    after.at(depthAfter * u, work);
    derivatives(work, depthAfter, signAfter);
    weights(u, 1, work);
    addSide(work);
    for (int k = 0; k < 3; k++) {
      out[PathPoint.POSITION + k] = work[SUM + k];
      out[PathPoint.TANGENT + k] = work[SUM + N + k];
      out[PathPoint.SECOND + k] = work[SUM + 2 * N + k];
      out[PathPoint.THIRD + k] = work[SUM + 3 * N + k];
    }
    rotation(work, out);
  }

  /** Weight and its derivatives by u, where {@code x = u} or, with sign -1, {@code x = 1 - u}. */
  private void weights(double x, double sign, double[] work) {
    work[WEIGHTS] = x * x * (c2 + x * (c3 + x * (c4 + x * c5)));
    work[WEIGHTS + 1] = sign * x * (2 * c2 + x * (3 * c3 + x * (4 * c4 + x * 5 * c5)));
    work[WEIGHTS + 2] = 2 * c2 + x * (6 * c3 + x * (12 * c4 + x * 20 * c5));
    work[WEIGHTS + 3] = sign * (6 * c3 + x * (24 * c4 + x * 60 * c5));
  }

  /** A neighbour's seven numbers and their derivatives by u, of eq. 5.45. */
  private static void derivatives(double[] work, double depth, double sign) {
    double d2 = depth * depth;
    for (int k = 0; k < 3; k++) {
      work[SIDE + k] = work[PathPoint.POSITION + k];
      work[SIDE + N + k] = depth * work[PathPoint.TANGENT + k];
      work[SIDE + 2 * N + k] = d2 * work[PathPoint.SECOND + k];
      work[SIDE + 3 * N + k] = d2 * depth * work[PathPoint.THIRD + k];
    }
    int q = SIDE + 3;
    for (int k = 0; k < 4; k++) {
      work[q + k] = sign * work[PathPoint.ROTATION + k];
      work[q + N + k] = 0;
      work[q + 2 * N + k] = 0;
      work[q + 3 * N + k] = 0;
    }
    int w = PathPoint.TURN;
    int w1 = PathPoint.TURN_SECOND;
    int w2 = PathPoint.TURN_THIRD;
    double h1 = depth / 2;
    double h2 = d2 / 2;
    double h3 = d2 * depth / 2;
    Flat.addTurned(h1, work, w, work, q, work, q + N);
    Flat.addTurned(h2, work, w1, work, q, work, q + 2 * N);
    Flat.addTurned(h1, work, w, work, q + N, work, q + 2 * N);
    Flat.addTurned(h3, work, w2, work, q, work, q + 3 * N);
    Flat.addTurned(2 * h2, work, w1, work, q + N, work, q + 3 * N);
    Flat.addTurned(h1, work, w, work, q + 2 * N, work, q + 3 * N);
  }

  /** Adds the weighted way of a side from the corner, and its derivatives by the product rule. */
  private void addSide(double[] work) {
    double w0 = work[WEIGHTS];
    double w1 = work[WEIGHTS + 1];
    double w2 = work[WEIGHTS + 2];
    double w3 = work[WEIGHTS + 3];
    for (int k = 0; k < N; k++) {
      double d0 = work[SIDE + k] - corner[k];
      double d1 = work[SIDE + N + k];
      double d2 = work[SIDE + 2 * N + k];
      double d3 = work[SIDE + 3 * N + k];
      work[SUM + k] += w0 * d0;
      work[SUM + N + k] += w1 * d0 + w0 * d1;
      work[SUM + 2 * N + k] += w2 * d0 + 2 * w1 * d1 + w0 * d2;
      work[SUM + 3 * N + k] += w3 * d0 + 3 * w2 * d1 + 3 * w1 * d2 + w0 * d3;
    }
  }

  /** The unit quaternion, and rotation rates of one that is not of length 1 (eq. 5.46). */
  private static void rotation(double[] work, double[] out) {
    int q = SUM + 3;
    int q1 = q + N;
    int q2 = q1 + N;
    int q3 = q2 + N;
    double n = Flat.dot4(work, q, work, q);
    double k = 2 / n;
    double n1 = k * Flat.dot4(work, q, work, q1);
    double n2 = k * (Flat.dot4(work, q1, work, q1) + Flat.dot4(work, q, work, q2));
    Arrays.fill(out, PathPoint.TURN, PathPoint.TURN + 3, 0);
    Arrays.fill(out, PathPoint.TURN_SECOND, PathPoint.TURN_SECOND + 3, 0);
    Arrays.fill(out, PathPoint.TURN_THIRD, PathPoint.TURN_THIRD + 3, 0);
    Flat.addImaginary(k, work, q1, work, q, out, PathPoint.TURN);
    Flat.addImaginary(k, work, q2, work, q, out, PathPoint.TURN_SECOND);
    Flat.addImaginary(k, work, q3, work, q, out, PathPoint.TURN_THIRD);
    Flat.addImaginary(k, work, q2, work, q1, out, PathPoint.TURN_THIRD);
    double length = Math.sqrt(n);
    for (int i = 0; i < 3; i++) {
      double w = out[PathPoint.TURN + i];
      out[PathPoint.TURN_SECOND + i] -= n1 * w;
      out[PathPoint.TURN_THIRD + i] -= 2 * n1 * out[PathPoint.TURN_SECOND + i] + n2 * w;
    }
    for (int i = 0; i < 4; i++) {
      out[PathPoint.ROTATION + i] = work[q + i] / length;
    }
  }

  /**
   * How fast the blend goes by u: the speed of the origin, or of the turn where it only turns.
   *
   * @param p flat form by u
   */
  double speed(double[] p) {
    return ByWay.speed(p, turns);
  }

  /** Distance from the corner: m, or rad where both moves only turn. */
  double away(double[] p) {
    return away(p, corner, turns);
  }

  /** Distance of two poses by position, or by orientation. */
  static double away(double[] p, double[] corner, boolean turns) {
    if (!turns) {
      double x = p[0] - corner[0];
      double y = p[1] - corner[1];
      double z = p[2] - corner[2];
      return Math.sqrt(x * x + y * y + z * z);
    }
    double[] v = new double[3];
    Flat.addImaginary(1, p, PathPoint.ROTATION, corner, PathPoint.ROTATION, v, 0);
    double along = Flat.dot4(p, PathPoint.ROTATION, corner, PathPoint.ROTATION);
    return 2 * Math.atan2(Flat.norm(v, 0), Math.abs(along));
  }

  /** Length of the quaternion before it was made 1, from the workspace of the last place. */
  static double quaternion(double[] work) {
    return Math.sqrt(Flat.dot4(work, SUM + 3, work, SUM + 3));
  }

  /** Whether both moves only turn. */
  boolean turns() {
    return turns;
  }

  /** Turns the flat form by u into that by the length of the way (eq. 5.47). */
  void byLength(double[] p) {
    ByWay.change(p, turns);
  }
}
