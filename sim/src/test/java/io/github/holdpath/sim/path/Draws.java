package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Drawn moves and chains for tests, and what is measured on them. */
final class Draws {
  private Draws() {}

  static Vec3 point(SplittableRandom random) {
    return new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
  }

  static Vec3 direction(SplittableRandom random) {
    while (true) {
      Vec3 v = point(random);
      double n = v.norm();
      if (n > 0.1 && n <= 1) {
        return v.unit();
      }
    }
  }

  static Quaternion rotation(SplittableRandom random) {
    return Quaternion.ofAxisAngle(direction(random), random.nextDouble(-3, 3));
  }

  static Pose pose(SplittableRandom random) {
    return new Pose(point(random), rotation(random));
  }

  /** A rotation that is at most an angle away. */
  static Quaternion near(Quaternion q, double angle, SplittableRandom random) {
    return Quaternion.ofAxisAngle(direction(random), random.nextDouble(0, angle)).times(q);
  }

  /** A line or an arc from a pose on. */
  static PathCurve move(Pose from, SplittableRandom random) {
    Quaternion end = near(from.rotation(), 3, random);
    Vec3 to = from.position().plus(direction(random).times(random.nextDouble(0.05, 1)));
    return switch (random.nextInt(3)) {
      case 0 -> LineCurve.between(from, new Pose(to, end));
      case 1 -> ArcPath.about(from, to, direction(random), random.nextDouble(0.2, 5), end);
      default -> {
        Vec3 side = direction(random).times(0.3);
        Vec3 via = from.position().plus(to).times(0.5).plus(side);
        yield ArcPath.fault(from, via, new Pose(to, end)).isPresent()
            ? LineCurve.between(from, new Pose(to, end))
            : ArcPath.through(from, via, new Pose(to, end));
      }
    };
  }

  /** A move that only turns. */
  static PathCurve turn(Pose from, SplittableRandom random) {
    Quaternion by = Quaternion.ofAxisAngle(direction(random), random.nextDouble(0.1, 3));
    return LineCurve.between(from, new Pose(from.position(), by.times(from.rotation())));
  }

  static Pose end(PathCurve curve) {
    double[] p = at(curve, curve.length());
    return new Pose(new Vec3(p[0], p[1], p[2]), new Quaternion(p[3], p[4], p[5], p[6]));
  }

  static List<PathCurve> moves(int count, SplittableRandom random) {
    List<PathCurve> moves = new ArrayList<>();
    Pose from = pose(random);
    for (int i = 0; i < count; i++) {
      moves.add(move(from, random));
      from = end(moves.get(i));
    }
    return moves;
  }

  static double[] at(PathCurve curve, double s) {
    double[] p = new double[PathPoint.SIZE];
    curve.at(s, p);
    return p;
  }

  static double distance(double[] a, double[] b, int at) {
    return Math.sqrt(
        Math.pow(a[at] - b[at], 2)
            + Math.pow(a[at + 1] - b[at + 1], 2)
            + Math.pow(a[at + 2] - b[at + 2], 2));
  }

  static double size(double[] a, int at) {
    return Math.sqrt(a[at] * a[at] + a[at + 1] * a[at + 1] + a[at + 2] * a[at + 2]);
  }

  /**
   * Largest jump between two places of a pose and its derivatives to second order, each made
   * dimensionless.
   *
   * @param scale way over which the curve changes
   */
  static double jump(double[] a, double[] b, double scale) {
    double worst = Math.max(distance(a, b, 0), distance(a, b, PathPoint.TANGENT));
    for (int k = PathPoint.ROTATION; k < PathPoint.TANGENT; k++) {
      worst = Math.max(worst, Math.abs(a[k] - b[k]));
    }
    worst = Math.max(worst, distance(a, b, PathPoint.SECOND) * scale);
    worst = Math.max(worst, distance(a, b, PathPoint.TURN) * scale);
    return Math.max(worst, distance(a, b, PathPoint.TURN_SECOND) * scale * scale);
  }

  /**
   * By how much the derivatives of a curve at s miss differences, each made dimensionless.
   *
   * @param scale way over which the curve changes; the step is a hundredth of it
   */
  static double differenceError(PathCurve curve, double s, double scale) {
    double h = scale / 100;
    // Eighth order central differences of the first derivative.
    double[] weights = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};
    double[] d = new double[PathPoint.SIZE];
    for (int i = 1; i <= 4; i++) {
      double[] next = at(curve, s + i * h);
      double[] before = at(curve, s - i * h);
      for (int k = 0; k < d.length; k++) {
        d[k] += weights[i - 1] * (next[k] - before[k]) / h;
      }
    }
    double[] p = at(curve, s);
    double worst = 0;
    // What is differentiated, what it should give, and the power of the scale that it goes with.
    int[][] pairs = {
      {PathPoint.POSITION, PathPoint.TANGENT, 0},
      {PathPoint.TANGENT, PathPoint.SECOND, 1},
      {PathPoint.SECOND, PathPoint.THIRD, 2},
      {PathPoint.TURN, PathPoint.TURN_SECOND, 2},
      {PathPoint.TURN_SECOND, PathPoint.TURN_THIRD, 3}
    };
    for (int[] pair : pairs) {
      double[] slope = {d[pair[0]], d[pair[0] + 1], d[pair[0] + 2]};
      double[] own = {p[pair[1]], p[pair[1] + 1], p[pair[1] + 2]};
      worst = Math.max(worst, distance(slope, own, 0) * Math.pow(scale, pair[2]));
    }
    double[] q = {p[3], -p[4], -p[5], -p[6]};
    double[] w = times(new double[] {d[3], d[4], d[5], d[6]}, q);
    double[] turn = {2 * w[1], 2 * w[2], 2 * w[3]};
    double[] own = {p[PathPoint.TURN], p[PathPoint.TURN + 1], p[PathPoint.TURN + 2]};
    return Math.max(worst, distance(turn, own, 0) * scale);
  }

  private static double[] times(double[] a, double[] b) {
    return new double[] {
      a[0] * b[0] - a[1] * b[1] - a[2] * b[2] - a[3] * b[3],
      a[0] * b[1] + a[1] * b[0] + a[2] * b[3] - a[3] * b[2],
      a[0] * b[2] - a[1] * b[3] + a[2] * b[0] + a[3] * b[1],
      a[0] * b[3] + a[1] * b[2] - a[2] * b[1] + a[3] * b[0]
    };
  }

  /** Way over which a curve changes: the least of its length and the radii of its bends. */
  static double scale(PathCurve curve, CurveBounds bounds) {
    return 1
        / (1 / curve.length()
            + bounds.maxCurvature()
            + bounds.maxTurn()
            + Math.sqrt(bounds.maxTurnSecond()));
  }

  /** The curve in a world that was moved as a whole. */
  static PathCurve moved(PathCurve curve, Pose by) {
    if (curve instanceof LineCurve line) {
      return LineCurve.between(by.times(line.line().from()), by.times(line.line().to()));
    }
    ArcPath arc = (ArcPath) curve;
    double[] p = at(arc, 0);
    Pose from = new Pose(new Vec3(p[0], p[1], p[2]), new Quaternion(p[3], p[4], p[5], p[6]));
    return ArcPath.about(
        by.times(from),
        by.apply(arc.centre()),
        by.rotation().rotate(arc.axis()),
        arc.angle(),
        by.rotation().times(end(arc).rotation()));
  }
}
