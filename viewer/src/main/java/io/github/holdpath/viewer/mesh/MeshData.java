package io.github.holdpath.viewer.mesh;

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

  /** Number of vertices. */
  public int size() {
    return colours.length;
  }
}
