package io.github.holdpath.viewer.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TubeMeshTest {
  private static final double RADIUS = 0.01;

  /** A regular polygon with 12 corners per the circle about it. */
  private static final double POLYGON = 12 * Math.sin(Math.PI / 6) / 2;

  private static List<Vec3> straight(int links) {
    List<Vec3> points = new ArrayList<>();
    for (int i = 0; i <= links; i++) {
      points.add(new Vec3(0.3, 0.01 * i, 0.2));
    }
    return points;
  }

  @Test
  void straightTubeWithFlatEndsHasTheVolumeOfAPrism() {
    MeshData mesh = TubeMesh.of(List.of(new TubeRun(straight(20), 1, RADIUS, false, false, false)));
    assertEquals(POLYGON * RADIUS * RADIUS * 0.2, Surfaces.closedVolume(mesh), 1e-12);
  }

  @Test
  void domesReachOneRadiusBeyondTheEnds() {
    MeshData mesh = TubeMesh.of(List.of(new TubeRun(straight(20), 1, RADIUS, false, true, true)));
    Surfaces.closedVolume(mesh);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < mesh.size(); i++) {
      least = Math.min(least, mesh.positions()[3 * i + 1]);
      most = Math.max(most, mesh.positions()[3 * i + 1]);
    }
    assertEquals(-RADIUS, least, 1e-12);
    assertEquals(0.2 + RADIUS, most, 1e-12);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void tubesOfAnyWayAreClosed(boolean ribbed) {
    SplittableRandom random = new SplittableRandom(7);
    for (int n = 0; n < 50; n++) {
      List<Vec3> points = new ArrayList<>();
      Vec3 at = new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble());
      for (int i = 0; i < 30; i++) {
        points.add(at);
        at =
            at.plus(
                new Vec3(
                    0.1 + random.nextDouble(), random.nextDouble(-1, 1), random.nextDouble(-1, 1)));
      }
      MeshData mesh =
          TubeMesh.of(List.of(new TubeRun(points, 1, RADIUS, ribbed, n % 2 == 0, n % 3 == 0)));
      assertTrue(Surfaces.closedVolume(mesh) > 0);
    }
  }

  @Test
  void aWayThatTurnsBackIsClosedToo() {
    List<Vec3> points =
        List.of(new Vec3(0, 0, 0), new Vec3(0, 0, 1), new Vec3(0, 0, 0.5), new Vec3(0, 0, 0.2));
    Surfaces.closedVolume(TubeMesh.of(List.of(new TubeRun(points, 1, 0.1, true, true, true))));
  }

  @Test
  void oneKeepsItsPointAsABall() {
    MeshData mesh =
        TubeMesh.of(List.of(new TubeRun(List.of(new Vec3(1, 2, 3)), 5, 0.1, false, true, true)));
    double volume = Surfaces.closedVolume(mesh);
    // The facets cut about a tenth off the sphere.
    assertEquals(4 * Math.PI / 3 * 1e-3, volume, 0.12 * 4 * Math.PI / 3 * 1e-3);
    assertEquals(5, mesh.colours()[0]);
  }

  @Test
  void ribsSwellBothWaysFromTheRadius() {
    MeshData mesh = TubeMesh.of(List.of(new TubeRun(straight(100), 1, 0.02, true, false, false)));
    double most = 0;
    for (int i = 0; i < mesh.size(); i++) {
      Vec3 p = Surfaces.at(mesh.positions(), i);
      most = Math.max(most, Math.hypot(p.x() - 0.3, p.z() - 0.2));
    }
    assertTrue(most > 1.2 * 0.02 && most < 1.35 * 0.02, "most " + most);
  }

  @Test
  void refusesWhatIsNoWay() {
    Vec3 p = new Vec3(0, 0, 0);
    assertThrows(
        IllegalArgumentException.class,
        () -> new TubeRun(List.of(p, p), 1, 0.1, false, true, true));
    assertThrows(
        IllegalArgumentException.class, () -> new TubeRun(List.of(), 1, 0.1, false, true, true));
    assertThrows(
        IllegalArgumentException.class, () -> new TubeRun(List.of(p), 1, 0, false, true, true));
    assertThrows(
        IllegalArgumentException.class,
        () -> new MeshData(new double[] {Double.NaN, 0, 0}, new double[3], new int[1], new int[0]));
  }
}
