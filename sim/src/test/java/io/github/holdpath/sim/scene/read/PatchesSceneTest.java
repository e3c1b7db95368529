package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.PatchGrip;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

class PatchesSceneTest {
  private static final PatchGrip GRIP =
      assertInstanceOf(PatchGrip.class, SceneFiles.good("patches.json").grip());

  private static ContactPatch patch(String name) {
    return GRIP.patches().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private static Vec3 turned(String name, Vec3 axis) {
    return patch(name).pose().rotation().rotate(axis);
  }

  @Test
  void putsLedgesLastAndKeepsTheOrderElse() {
    assertEquals(
        List.of("left pad", "right pad", "front edge", "back edge", "cup", "magnet", "rail"),
        GRIP.patches().stream().map(ContactPatch::name).toList());
  }

  @Test
  void readsShapesBySizeAndWord() {
    assertEquals(new PatchShape.Rectangle(0.03, 0.015), patch("left pad").shape());
    assertEquals(new PatchShape.Line(0.03), patch("front edge").shape());
    assertEquals(new PatchShape.Ring(0.015), patch("cup").shape());
    assertEquals(new PatchShape.Disc(0.015), patch("magnet").shape());
  }

  @Test
  void takesFromTheGripWhatAPatchLeavesOut() {
    assertEquals(0.2, patch("left pad").friction());
    assertEquals(0.5, patch("cup").friction());
    assertEquals(PatchStiffness.ofNormal(20_000), patch("left pad").stiffness());
    assertEquals(new PatchStiffness(6000, 4000), patch("cup").stiffness());
    assertEquals(2e6, patch("left pad").maxPressure());
    assertEquals(1e6, patch("right pad").maxPressure());
    assertEquals(5e6, patch("left pad").maxPeakPressure());
    assertEquals(Double.POSITIVE_INFINITY, patch("magnet").maxPeakPressure());
  }

  @Test
  void pullPressesAsHardUnlessAPreloadIsWritten() {
    assertEquals(40, patch("cup").preload());
    assertEquals(40, patch("cup").pull());
    assertEquals(80, patch("magnet").preload());
    assertEquals(0, patch("left pad").pull());
    assertEquals(0, patch("rail").preload());
  }

  @Test
  void looksAlongItsNormalOrItsAngles() {
    double tolerance = 1e-12;
    Vec3 z = new Vec3(0, 0, 1);
    Vec3 x = new Vec3(1, 0, 0);
    assertEquals(0, turned("left pad", z).minus(new Vec3(0, -1, 0)).norm(), tolerance);
    assertEquals(0, turned("left pad", x).minus(x).norm(), tolerance);
    assertEquals(0, turned("right pad", z).minus(new Vec3(0, 1, 0)).norm(), tolerance);
    assertEquals(0, turned("front edge", x).minus(z).norm(), tolerance);
  }

  @Test
  void drivesNameTheirPatchesAndCloseAlongUnitDirections() {
    assertEquals(
        List.of(new Drive(List.of(1, 0), List.of(new Vec3(0, 1, 0), new Vec3(0, -1, 0)))),
        GRIP.drives());
    Drive closure = GRIP.closures().get(0);
    assertEquals(List.of(2, 3), closure.patches());
    assertEquals(0, closure.directions().get(0).minus(new Vec3(-1, 0, 0)).norm(), 1e-12);
  }
}
