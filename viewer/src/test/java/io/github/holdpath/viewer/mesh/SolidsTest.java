package io.github.holdpath.viewer.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import org.junit.jupiter.api.Test;

class SolidsTest {
  private static final Pose POSE = new Pose(new Vec3(1, 2, 3), Quaternion.ofRpy(0.3, -1.1, 2));

  /** Facets of a circle with 48 sides take this part off it. */
  private static final double FACETS = 0.005;

  @Test
  void boxEnclosesItsVolume() {
    assertEquals(0.024, Surfaces.closedVolume(Solids.box(POSE, new Vec3(0.2, 0.3, 0.4), 1)), 1e-9);
  }

  @Test
  void cylinderAndTubeEncloseTheirVolume() {
    double full = Math.PI * 0.01 * 0.5;
    assertEquals(full, Surfaces.closedVolume(Solids.cylinder(POSE, 0.1, 0, 0.5, 1)), FACETS * full);
    double pipe = full * 0.75;
    assertEquals(
        pipe, Surfaces.closedVolume(Solids.cylinder(POSE, 0.1, 0.05, 0.5, 1)), FACETS * pipe);
  }

  @Test
  void sphereEnclosesItsVolume() {
    double full = 4 * Math.PI / 3 * 1e-3;
    assertEquals(
        full, Surfaces.closedVolume(Solids.sphere(new Vec3(1, 2, 3), 0.1, 1)), 2 * FACETS * full);
  }
}
