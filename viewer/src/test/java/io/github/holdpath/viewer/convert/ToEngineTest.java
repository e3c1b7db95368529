package io.github.holdpath.viewer.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.jme3.math.Vector3f;
import com.jme3.renderer.Camera;
import com.jme3.scene.VertexBuffer;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.state.View;
import java.nio.FloatBuffer;
import java.util.List;
import org.junit.jupiter.api.Test;

class ToEngineTest {
  /** Pixels; the engine counts in floats. */
  private static final double PIXEL = 0.02;

  @Test
  void upIsUpAndHandednessStays() {
    assertEquals(new Vector3f(0, 1, 0), ToEngine.vector(new Vec3(0, 0, 1)));
    assertEquals(new Vector3f(1, 0, 0), ToEngine.vector(new Vec3(1, 0, 0)));
    Vector3f y = ToEngine.vector(new Vec3(0, 1, 0));
    assertEquals(new Vector3f(0, 0, -1), y);
    Vector3f z = ToEngine.vector(new Vec3(1, 0, 0)).cross(y);
    assertEquals(0, z.distance(ToEngine.vector(new Vec3(0, 0, 1))));
  }

  @Test
  void coordinatesOfAMeshAreTurnedTheSameWay() {
    LineData line = LineData.of(List.of(new Vec3(1, 2, 3), new Vec3(4, 5, 6)), 0x123456);
    FloatBuffer out =
        (FloatBuffer) ToEngine.lines(line).getBuffer(VertexBuffer.Type.Position).getData();
    float[] read = new float[6];
    out.rewind();
    out.get(read);
    assertEquals("1.0 3.0 -2.0 4.0 6.0 -5.0", words(read));
  }

  private static String words(float[] values) {
    StringBuilder text = new StringBuilder();
    for (float v : values) {
      text.append(text.length() == 0 ? "" : " ").append(v);
    }
    return text.toString();
  }

  @Test
  void theEnginesCameraSeesWhatTheViewTells() {
    View view =
        new View(
            new Vec3(5, -4, 3), new Vec3(-5, 4, -2.2).unit(), Math.toRadians(14), 1280, 800, 10);
    Camera camera = ToEngine.camera(view, new View.Area(0, 0, 1280, 800));
    for (Vec3 p : List.of(Vec3.ZERO, new Vec3(0.9, 0.5, 0.2), new Vec3(-0.4, 1, 1.1))) {
      View.Spot spot = view.project(p);
      Vector3f seen = camera.getScreenCoordinates(ToEngine.vector(p));
      assertEquals(spot.x(), seen.x, PIXEL);
      assertEquals(800 - spot.y(), seen.y, PIXEL);
    }
  }

  @Test
  void theCameraOfATileSeesItsPartOfTheImage() {
    View view =
        new View(
            new Vec3(5, -4, 3), new Vec3(-5, 4, -2.2).unit(), Math.toRadians(14), 1280, 800, 10);
    Camera camera = ToEngine.camera(view, new View.Area(500, 300, 900, 450));
    assertEquals(400, camera.getWidth());
    assertEquals(150, camera.getHeight());
    View.Spot spot = view.project(Vec3.ZERO);
    Vector3f seen = camera.getScreenCoordinates(ToEngine.vector(Vec3.ZERO));
    assertEquals(spot.x() - 500, seen.x, PIXEL);
    assertEquals(450 - spot.y(), seen.y, PIXEL);
  }
}
