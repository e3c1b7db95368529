package io.github.holdpath.viewer.mesh;

import java.util.List;

/**
 * A surface of triangles, each wound counter-clockwise as seen from outside.
 *
 * @param positions x, y, z of each vertex, world axes, m
 * @param normals unit vectors out of the surface, one for each vertex
 * @param colours {@code 0xRRGGBB} of each vertex
 * @param triangles three vertices each
 */
public record MeshData(double[] positions, double[] normals, int[] colours, int[] triangles) {
  /** Refuses lengths that do not match and numbers that are not finite; keeps the arrays. */
  public MeshData {
    if (positions.length != 3 * colours.length || normals.length != positions.length) {
      throw new IllegalArgumentException(
          "positions and normals must have three numbers for each colour, but have "
              + positions.length
              + " and "
              + normals.length
              + " for "
              + colours.length);
    }
    for (double v : positions) {
      if (!Double.isFinite(v)) {
        // The engine would draw nothing at all and say nothing.
        throw new IllegalArgumentException("positions must be finite, but one was " + v);
      }
    }
  }

  /** Several surfaces as one. */
  public static MeshData joined(List<MeshData> all) {
    int vertices = all.stream().mapToInt(MeshData::size).sum();
    int corners = all.stream().mapToInt(m -> m.triangles.length).sum();
    double[] positions = new double[3 * vertices];
    double[] normals = new double[3 * vertices];
    int[] colours = new int[vertices];
    int[] triangles = new int[corners];
    int vertex = 0;
    int corner = 0;
    for (MeshData m : all) {
      System.arraycopy(m.positions, 0, positions, 3 * vertex, m.positions.length);
      System.arraycopy(m.normals, 0, normals, 3 * vertex, m.normals.length);
      System.arraycopy(m.colours, 0, colours, vertex, m.size());
      for (int t : m.triangles) {
        triangles[corner++] = vertex + t;
      }
      vertex += m.size();
    }
    return new MeshData(positions, normals, colours, triangles);
  }

  /** Number of vertices. */
  public int size() {
    return colours.length;
  }
}
