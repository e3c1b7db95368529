package io.github.holdpath.viewer.mesh;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Arrays;

/** Gathers vertices and triangles. */
final class MeshBuilder {
  private double[] positions = new double[3 * 256];
  private double[] normals = new double[3 * 256];
  private int[] colours = new int[256];
  private int[] triangles = new int[3 * 512];
  private int vertices;
  private int corners;

  /** Adds a vertex and tells its number. */
  int vertex(Vec3 position, Vec3 normal, int rgb) {
    if (vertices == colours.length) {
      colours = Arrays.copyOf(colours, 2 * vertices);
      positions = Arrays.copyOf(positions, 6 * vertices);
      normals = Arrays.copyOf(normals, 6 * vertices);
    }
    put(positions, position);
    put(normals, normal);
    colours[vertices] = rgb;
    return vertices++;
  }

  private void put(double[] to, Vec3 v) {
    to[3 * vertices] = v.x();
    to[3 * vertices + 1] = v.y();
    to[3 * vertices + 2] = v.z();
  }

  /** Adds a triangle, counter-clockwise from outside. */
  void triangle(int a, int b, int c) {
    if (corners == triangles.length) {
      triangles = Arrays.copyOf(triangles, 2 * corners);
    }
    triangles[corners++] = a;
    triangles[corners++] = b;
    triangles[corners++] = c;
  }

  /** Adds a four-sided face, counter-clockwise from outside. */
  void quad(int a, int b, int c, int d) {
    triangle(a, b, c);
    triangle(a, c, d);
  }

  MeshData build() {
    return new MeshData(
        Arrays.copyOf(positions, 3 * vertices),
        Arrays.copyOf(normals, 3 * vertices),
        Arrays.copyOf(colours, vertices),
        Arrays.copyOf(triangles, corners));
  }
}
