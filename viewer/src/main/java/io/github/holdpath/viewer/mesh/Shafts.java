package io.github.holdpath.viewer.mesh;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Long bodies between two points: capsules, beams, and arrows straight and round. */
public final class Shafts {
  /** Sides; less than those of a part, as they are made anew for every instant. */
  private static final int ROUND = 20;

  /** Rows of a half sphere. */
  private static final int CAP = 4;

  /** Length and radius of an arrow's head per the shaft's radius. */
  private static final double HEAD_LENGTH = 6.5;

  private static final double HEAD_RADIUS = 2.6;

  /** Length of a dash per the shaft's radius, and its share of the pattern. */
  private static final double DASH = 5;

  private static final double FULL = 0.6;

  /** Straight pieces of a whole turn. */
  private static final int PIECES = 48;

  private Shafts() {}

  /** A frame at a point whose z axis goes along a direction. */
  public static Pose along(Vec3 at, Vec3 direction) {
    Vec3 z = direction.unit();
    Vec3 side = Math.abs(z.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
    return new Pose(at, Quaternion.ofAxes(z, side.minus(z.times(side.dot(z))).unit()));
  }

  /**
   * A round body between two points.
   *
   * @param from one end of its middle line, m
   * @param to other end, elsewhere
   * @param radius m
   * @param rounded whether half spheres stand over both ends; else they are flat
   * @param rgb colour
   */
  public static MeshData round(Vec3 from, Vec3 to, double radius, boolean rounded, int rgb) {
    double length = to.minus(from).norm();
    Pose pose = along(from, to.minus(from));
    double[][] rings = rounded ? capsule(radius, length) : drum(radius, length);
    return turned(pose, rings, rgb);
  }

  /** Rings of radius, height, and normal outwards and upwards. */
  private static double[][] capsule(double radius, double length) {
    List<double[]> rings = new ArrayList<>();
    for (int end = 0; end < 2; end++) {
      for (int i = 0; i <= CAP; i++) {
        double a = Math.PI / 2 * (end == 0 ? (double) i / CAP - 1 : (double) i / CAP);
        double c = Math.max(0, Math.cos(a));
        rings.add(new double[] {radius * c, end * length + radius * Math.sin(a), c, Math.sin(a)});
      }
    }
    return rings.toArray(new double[0][]);
  }

  private static double[][] drum(double radius, double length) {
    return new double[][] {
      {0, 0, 0, -1}, {radius, 0, 0, -1}, {radius, 0, 1, 0},
      {radius, length, 1, 0}, {radius, length, 0, 1}, {0, length, 0, 1}
    };
  }

  private static double[][] cone(double radius, double length) {
    double slope = Math.hypot(radius, length);
    return new double[][] {
      {0, 0, 0, -1},
      {radius, 0, 0, -1},
      {radius, 0, length / slope, radius / slope},
      {0, length, length / slope, radius / slope}
    };
  }

  private static MeshData turned(Pose pose, double[][] rings, int rgb) {
    MeshBuilder mesh = new MeshBuilder();
    for (double[] ring : rings) {
      for (int k = 0; k <= ROUND; k++) {
        double a = 2 * Math.PI * k / ROUND;
        double c = Math.cos(a);
        double s = Math.sin(a);
        mesh.vertex(
            pose.apply(new Vec3(ring[0] * c, ring[0] * s, ring[1])),
            pose.rotation().rotate(new Vec3(ring[2] * c, ring[2] * s, ring[3])),
            rgb);
      }
    }
    int row = ROUND + 1;
    for (int i = 0; i + 1 < rings.length; i++) {
      for (int k = 0; k < ROUND; k++) {
        int a = i * row + k;
        mesh.quad(a, a + 1, a + row + 1, a + row);
      }
    }
    return mesh.build();
  }

  /**
   * A square beam between two points.
   *
   * @param from one end of its middle line, m
   * @param to other end, elsewhere
   * @param half half its thickness, m
   * @param rgb colour
   */
  public static MeshData beam(Vec3 from, Vec3 to, double half, int rgb) {
    Pose pose = along(from.plus(to).times(0.5), to.minus(from));
    return Solids.box(pose, new Vec3(2 * half, 2 * half, to.minus(from).norm()), rgb);
  }

  /**
   * An arrow; one that is shorter than its head is all head.
   *
   * @param from its tail, m
   * @param to its tip, elsewhere
   * @param radius of the shaft, m
   * @param dashed whether the shaft has gaps
   * @param rgb colour
   */
  public static MeshData arrow(Vec3 from, Vec3 to, double radius, boolean dashed, int rgb) {
    Vec3 way = to.minus(from);
    double length = way.norm();
    Vec3 z = way.unit();
    double head = Math.min(length, HEAD_LENGTH * radius);
    List<MeshData> parts = new ArrayList<>();
    // What rounding leaves of a shaft is none.
    double shaft = length - head > 1e-6 * length ? length - head : 0;
    double pattern = dashed ? DASH * radius : Math.max(shaft, 1e-12);
    for (double at = 0; at < shaft * (1 - 1e-9); at += pattern) {
      double end = Math.min(shaft, at + (dashed ? FULL * pattern : pattern));
      parts.add(round(from.plus(z.times(at)), from.plus(z.times(end)), radius, false, rgb));
    }
    parts.add(turned(along(to.minus(z.times(head)), z), cone(HEAD_RADIUS * radius, head), rgb));
    return MeshData.joined(parts);
  }

  /** Points of an arc about an axis, from a direction on by an angle, rad. */
  public static List<Vec3> arc(Vec3 centre, Vec3 axis, double radius, double angle) {
    Pose pose = along(centre, axis);
    int n = Math.max(4, (int) Math.ceil(PIECES * angle / (2 * Math.PI)));
    List<Vec3> points = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      double a = angle * i / n;
      points.add(pose.apply(new Vec3(radius * Math.cos(a), radius * Math.sin(a), 0)));
    }
    return points;
  }

  /**
   * An arrow bent about an axis, by the right hand's rule.
   *
   * @param points along its middle line, at least two
   * @param radius of the shaft, m
   * @param rgb colour
   */
  public static MeshData bent(List<Vec3> points, double radius, int rgb) {
    List<MeshData> parts = new ArrayList<>();
    int last = points.size() - 1;
    for (int i = 0; i < last; i++) {
      parts.add(round(points.get(i), points.get(i + 1), radius, true, rgb));
    }
    Vec3 end = points.get(last);
    Vec3 way = end.minus(points.get(last - 1)).unit();
    parts.add(arrow(end, end.plus(way.times(HEAD_LENGTH * radius)), radius, false, rgb));
    return MeshData.joined(parts);
  }
}
