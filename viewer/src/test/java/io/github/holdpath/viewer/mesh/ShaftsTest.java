package io.github.holdpath.viewer.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShaftsTest {
  private static final Vec3 FROM = new Vec3(1, 2, 3);
  private static final Vec3 TO = new Vec3(1.3, 2.4, 3);

  /** Facets of a circle with 20 sides take 1.6 % off it, rows of a cap another 2 % of that. */
  private static final double FACETS = 0.05;

  @Test
  void roundBodiesEncloseTheirVolume() {
    double drum = Math.PI * 0.01 * 0.5;
    double ends = 4 * Math.PI / 3 * 1e-3;
    assertEquals(drum, Surfaces.closedVolume(Shafts.round(FROM, TO, 0.1, false, 1)), FACETS * drum);
    assertEquals(
        drum + ends,
        Surfaces.closedVolume(Shafts.round(FROM, TO, 0.1, true, 1)),
        FACETS * (drum + ends));
  }

  @Test
  void beamEnclosesItsVolume() {
    assertEquals(0.5 * 0.04, Surfaces.closedVolume(Shafts.beam(FROM, TO, 0.1, 1)), 1e-9);
  }

  @Test
  void arrowEndsAtItsTipAndBeginsAtItsTail() {
    Vec3 along = TO.minus(FROM).unit();
    for (boolean dashed : new boolean[] {false, true}) {
      MeshData mesh = Shafts.arrow(FROM, TO, 0.01, dashed, 1);
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < mesh.size(); i++) {
        double at = Surfaces.at(mesh.positions(), i).minus(FROM).dot(along);
        least = Math.min(least, at);
        most = Math.max(most, at);
      }
      assertEquals(0, least, 1e-12);
      assertEquals(0.5, most, 1e-12);
      assertTrue(Surfaces.closedVolume(mesh) > 0);
    }
  }

  @Test
  void shortArrowIsAllHead() {
    Vec3 near = FROM.plus(TO.minus(FROM).times(0.01));
    MeshData mesh = Shafts.arrow(FROM, near, 0.01, false, 1);
    double full = Math.PI * 0.026 * 0.026 * 0.005 / 3;
    assertEquals(full, Surfaces.closedVolume(mesh), FACETS * full);
  }

  @Test
  void arcTurnsByTheRightHandAboutItsAxis() {
    Vec3 axis = new Vec3(0.2, -0.5, 0.7).unit();
    List<Vec3> points = Shafts.arc(FROM, axis, 0.2, 2.5);
    double turned = 0;
    for (int i = 1; i < points.size(); i++) {
      Vec3 a = points.get(i - 1).minus(FROM);
      Vec3 b = points.get(i).minus(FROM);
      assertEquals(0.2, b.norm(), 1e-12);
      assertEquals(0, b.dot(axis), 1e-12);
      turned += Math.asin(a.cross(b).dot(axis) / 0.04);
    }
    assertEquals(2.5, turned, 1e-9);
  }
}
