package io.github.holdpath.viewer.mesh;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/** Tubes about stretches of a path, each a closed surface of its own. */
public final class TubeMesh {
  /** Corners of a cross-section. */
  static final int SIDES = 12;

  /** Rings of a dome between its pole and the tube. */
  private static final int DOME_RINGS = 3;

  /** Length of one rib, in radii. */
  private static final double RIB = 2.2;

  /** How far ribs stand out on either side, in radii. */
  private static final double SWELL = 0.28;

  private final TubeRun run;
  private final MeshBuilder out;

  private TubeMesh(TubeRun run, MeshBuilder out) {
    this.run = run;
    this.out = out;
  }

  /** One mesh of all runs. */
  public static MeshData of(List<TubeRun> runs) {
    MeshBuilder mesh = new MeshBuilder();
    for (TubeRun run : runs) {
      new TubeMesh(run, mesh).add();
    }
    return mesh.build();
  }

  /** Rings from the pole of the start to the pole of the end, each joined to the one before. */
  private void add() {
    List<Vec3> points = run.points();
    int last = points.size() - 1;
    Vec3 tangent = tangent(0);
    Vec3 side = square(tangent);
    double reach = run.roundStart() || last == 0 ? radius(0) : 0;
    int pole = out.vertex(points.get(0).minus(tangent.times(reach)), tangent.times(-1), run.rgb());
    int ring = -1;
    if (reach > 0) {
      for (int k = 1; k <= DOME_RINGS; k++) {
        ring = follow(pole, ring, ring(points.get(0), tangent, side, radius(0), -latitude(k)));
      }
    }
    double way = 0;
    for (int i = 0; i <= last; i++) {
      way += i == 0 ? 0 : points.get(i).minus(points.get(i - 1)).norm();
      tangent = tangent(i);
      // The side is carried along, so that the tube does not twist.
      side = side.minus(tangent.times(side.dot(tangent)));
      side = side.norm() > 1e-6 ? side.unit() : square(tangent);
      ring = follow(pole, ring, ring(points.get(i), tangent, side, radius(way), 0));
    }
    reach = run.roundEnd() || last == 0 ? radius(way) : 0;
    if (reach > 0) {
      for (int k = DOME_RINGS; k >= 1; k--) {
        ring = follow(pole, ring, ring(points.get(last), tangent, side, reach, latitude(k)));
      }
    }
    int end = out.vertex(points.get(last).plus(tangent.times(reach)), tangent, run.rgb());
    for (int k = 0; k < SIDES; k++) {
      out.triangle(ring + k, ring + (k + 1) % SIDES, end);
    }
  }

  private int follow(int pole, int before, int ring) {
    for (int k = 0; k < SIDES; k++) {
      int next = (k + 1) % SIDES;
      if (before < 0) {
        out.triangle(pole, ring + next, ring + k);
      } else {
        out.quad(before + k, before + next, ring + next, ring + k);
      }
    }
    return ring;
  }

  /** Angle from the equator of a dome, rad, the largest for the ring next to the pole. */
  private static double latitude(int k) {
    return Math.PI / 2 * (1 - k / (DOME_RINGS + 1.0));
  }

  /**
   * A ring about a point; on a dome at a latitude above 0 towards the tangent.
   *
   * @return number of its first vertex; they go counter-clockwise as seen against the tangent
   */
  private int ring(Vec3 centre, Vec3 tangent, Vec3 side, double radius, double latitude) {
    Vec3 other = tangent.cross(side);
    int first = -1;
    for (int k = 0; k < SIDES; k++) {
      double a = 2 * Math.PI * k / SIDES;
      Vec3 radial = side.times(Math.cos(a)).plus(other.times(Math.sin(a)));
      Vec3 normal = radial.times(Math.cos(latitude)).plus(tangent.times(Math.sin(latitude))).unit();
      int v = out.vertex(centre.plus(normal.times(radius)), normal, run.rgb());
      first = k == 0 ? v : first;
    }
    return first;
  }

  private double radius(double way) {
    return run.ribbed()
        ? run.radius() * (1 - SWELL * Math.cos(2 * Math.PI * way / (RIB * run.radius())))
        : run.radius();
  }

  /** Unit direction of the path at a point: the mean of the ways to and from it. */
  private Vec3 tangent(int i) {
    List<Vec3> points = run.points();
    int last = points.size() - 1;
    if (last == 0) {
      return new Vec3(0, 0, 1);
    }
    Vec3 to = points.get(Math.max(1, i)).minus(points.get(Math.max(1, i) - 1)).unit();
    int from = Math.min(last - 1, i);
    Vec3 on = points.get(from + 1).minus(points.get(from)).unit();
    Vec3 sum = to.plus(on);
    return sum.norm() > 1e-3 ? sum.unit() : on;
  }

  private static Vec3 square(Vec3 direction) {
    Vec3 away = Math.abs(direction.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
    return away.minus(direction.times(direction.dot(away))).unit();
  }
}
