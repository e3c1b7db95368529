package io.github.holdpath.viewer.mesh;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Boxes, cylinders, tubes and spheres in a place. */
public final class Solids {
  /** Sides of round bodies. */
  static final int ROUND = 48;

  private Solids() {}

  /**
   * A box about the origin of a frame.
   *
   * @param pose of the frame in the world
   * @param size along x, y, z, m
   * @param rgb colour
   */
  public static MeshData box(Pose pose, Vec3 size, int rgb) {
    MeshBuilder mesh = new MeshBuilder();
    Vec3[] axes = axes(size);
    for (int k = 0; k < 3; k++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        Vec3 out = axes[k].times(sign);
        Vec3 a = axes[(k + 1) % 3].times(sign);
        Vec3 b = axes[(k + 2) % 3];
        Vec3 normal = pose.rotation().rotate(out).unit();
        int v = mesh.vertex(pose.apply(out.minus(a).minus(b)), normal, rgb);
        mesh.vertex(pose.apply(out.plus(a).minus(b)), normal, rgb);
        mesh.vertex(pose.apply(out.plus(a).plus(b)), normal, rgb);
        mesh.vertex(pose.apply(out.minus(a).plus(b)), normal, rgb);
        mesh.quad(v, v + 1, v + 2, v + 3);
      }
    }
    return mesh.build();
  }

  /** Edges of the same box. */
  public static List<Vec3> boxEdges(Pose pose, Vec3 size) {
    List<Vec3> ends = new ArrayList<>();
    Vec3[] axes = axes(size);
    for (int k = 0; k < 3; k++) {
      for (int i = -1; i <= 1; i += 2) {
        for (int j = -1; j <= 1; j += 2) {
          Vec3 middle = axes[(k + 1) % 3].times(i).plus(axes[(k + 2) % 3].times(j));
          ends.add(pose.apply(middle.minus(axes[k])));
          ends.add(pose.apply(middle.plus(axes[k])));
        }
      }
    }
    return ends;
  }

  private static Vec3[] axes(Vec3 size) {
    return new Vec3[] {
      new Vec3(size.x() / 2, 0, 0), new Vec3(0, size.y() / 2, 0), new Vec3(0, 0, size.z() / 2)
    };
  }

  /**
   * A cylinder, or a tube where the inner radius is above 0, along z about the origin of a frame.
   *
   * @param pose of the frame in the world
   * @param radius outer, m
   * @param inner radius, m, 0 for a solid one
   * @param length m
   * @param rgb colour
   */
  public static MeshData cylinder(Pose pose, double radius, double inner, double length, int rgb) {
    MeshBuilder mesh = new MeshBuilder();
    wall(mesh, pose, radius, length, rgb, 1);
    if (inner > 0) {
      wall(mesh, pose, inner, length, rgb, -1);
    }
    for (int sign = -1; sign <= 1; sign += 2) {
      Vec3 normal = pose.rotation().rotate(new Vec3(0, 0, sign));
      int first = -1;
      for (int k = 0; k < ROUND; k++) {
        int v = mesh.vertex(pose.apply(rim(radius, k, sign * length / 2)), normal, rgb);
        mesh.vertex(pose.apply(rim(inner, k, sign * length / 2)), normal, rgb);
        first = k == 0 ? v : first;
      }
      for (int k = 0; k < ROUND; k++) {
        int a = first + 2 * k;
        int b = first + 2 * ((k + 1) % ROUND);
        if (sign > 0) {
          mesh.quad(a, b, b + 1, a + 1);
        } else {
          mesh.quad(b, a, a + 1, b + 1);
        }
      }
    }
    return mesh.build();
  }

  private static void wall(
      MeshBuilder mesh, Pose pose, double radius, double length, int rgb, int sign) {
    int first = -1;
    for (int k = 0; k < ROUND; k++) {
      Vec3 normal = pose.rotation().rotate(rim(sign, k, 0));
      int v = mesh.vertex(pose.apply(rim(radius, k, -length / 2)), normal, rgb);
      mesh.vertex(pose.apply(rim(radius, k, length / 2)), normal, rgb);
      first = k == 0 ? v : first;
    }
    for (int k = 0; k < ROUND; k++) {
      int a = first + 2 * k;
      int b = first + 2 * ((k + 1) % ROUND);
      if (sign > 0) {
        mesh.quad(a, b, b + 1, a + 1);
      } else {
        mesh.quad(b, a, a + 1, b + 1);
      }
    }
  }

  private static Vec3 rim(double radius, int k, double z) {
    double a = 2 * Math.PI * k / ROUND;
    return new Vec3(radius * Math.cos(a), radius * Math.sin(a), z);
  }

  /** Both rims of a cylinder along z. */
  public static List<Vec3> rims(Pose pose, double radius, double length) {
    List<Vec3> ends = new ArrayList<>();
    for (int sign = -1; sign <= 1; sign += 2) {
      for (int k = 0; k < ROUND; k++) {
        ends.add(pose.apply(rim(radius, k, sign * length / 2)));
        ends.add(pose.apply(rim(radius, k + 1, sign * length / 2)));
      }
    }
    return ends;
  }

  /** A sphere about a point of the world, radius in m. */
  public static MeshData sphere(Vec3 centre, double radius, int rgb) {
    MeshBuilder mesh = new MeshBuilder();
    int rows = ROUND / 2;
    for (int i = 0; i <= rows; i++) {
      double latitude = Math.PI * i / rows - Math.PI / 2;
      for (int k = 0; k <= ROUND; k++) {
        Vec3 flat = rim(Math.cos(latitude), k, Math.sin(latitude));
        mesh.vertex(centre.plus(flat.times(radius)), flat.unit(), rgb);
      }
    }
    int row = ROUND + 1;
    for (int i = 0; i < rows; i++) {
      for (int k = 0; k < ROUND; k++) {
        int a = i * row + k;
        mesh.quad(a, a + 1, a + row + 1, a + row);
      }
    }
    return mesh.build();
  }
}
