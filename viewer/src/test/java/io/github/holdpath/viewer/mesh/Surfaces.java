package io.github.holdpath.viewer.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.HashMap;
import java.util.Map;

/** What every closed surface must be. */
final class Surfaces {
  /** Vertices that round differently are one, m. */
  private static final double WELD = 1e-9;

  private static final double UNIT = 1e-9;

  private Surfaces() {}

  /** Each edge is used once in each direction, normals are unit; tells the volume inside. */
  static double closedVolume(MeshData mesh) {
    Map<String, Integer> welded = new HashMap<>();
    int[] same = new int[mesh.size()];
    for (int i = 0; i < mesh.size(); i++) {
      Vec3 p = at(mesh.positions(), i);
      String key =
          Math.round(p.x() / WELD)
              + " "
              + Math.round(p.y() / WELD)
              + " "
              + Math.round(p.z() / WELD);
      same[i] = welded.merge(key, i, (a, b) -> a);
      assertEquals(1, at(mesh.normals(), i).norm(), UNIT);
    }
    Map<Long, Integer> edges = new HashMap<>();
    double volume = 0;
    for (int t = 0; t < mesh.triangles().length; t += 3) {
      int[] c = new int[3];
      for (int k = 0; k < 3; k++) {
        c[k] = same[mesh.triangles()[t + k]];
      }
      if (c[0] == c[1] || c[1] == c[2] || c[2] == c[0]) {
        continue;
      }
      for (int k = 0; k < 3; k++) {
        edges.merge((long) c[k] << 32 | c[(k + 1) % 3], 1, Integer::sum);
      }
      Vec3 a = at(mesh.positions(), c[0]);
      volume += a.dot(at(mesh.positions(), c[1]).cross(at(mesh.positions(), c[2]))) / 6;
    }
    edges.forEach(
        (edge, count) -> {
          long back = (edge & 0xFFFFFFFFL) << 32 | edge >>> 32;
          assertEquals(count, edges.getOrDefault(back, 0), "an edge is open");
        });
    return volume;
  }

  static Vec3 at(double[] xyz, int i) {
    return new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }
}
