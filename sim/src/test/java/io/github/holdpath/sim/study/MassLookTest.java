package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MassLookTest {
  /** A litre. */
  private static final PartShape LITRE = new PartShape.Box(new Vec3(0.1, 0.1, 0.1));

  private static Optional<String> look(double mass, PartShape shape, String material) {
    return MassLook.warning(
        new Scene.Part(
            "part",
            Jobs.point(mass, Vec3.ZERO),
            AirLoad.NONE,
            Optional.of(shape),
            Vec3.ZERO,
            material));
  }

  @Test
  void solidAndPartlyHollowPartsAreLeftAlone() {
    assertEquals(Optional.empty(), look(7.85, LITRE, "steel"));
    assertEquals(Optional.empty(), look(2.0, LITRE, "Steel, oiled"));
    assertEquals(Optional.empty(), look(2.7, LITRE, "aluminium"));
  }

  @Test
  void heavierThanSolidIsTold() {
    String warning = look(7.85, LITRE, "aluminium 6060").orElseThrow();
    assertTrue(warning.contains("is 7850 kg/m^3, but aluminium has 2640 to 2850"), warning);
    assertTrue(warning.contains("heavier than solid"), warning);
  }

  /** A mass in the wrong unit, or a shape in the wrong one. */
  @Test
  void farTooLightIsTold() {
    String warning = look(0.00785, LITRE, "steel").orElseThrow();
    assertTrue(warning.contains("is 8 kg/m^3"), warning);
    assertTrue(warning.contains("hollow"), warning);
  }

  @Test
  void cylinderTubeAndSphereCountByTheirContent() {
    assertEquals(Math.PI / 4, new PartShape.Cylinder(1, 0, 1, 0).volume(), 1e-15);
    assertEquals(Math.PI / 4 * 0.75, new PartShape.Cylinder(1, 0.5, 1, 0).volume(), 1e-15);
    assertEquals(Math.PI / 6, new PartShape.Sphere(1).volume(), 1e-15);
    assertEquals(0.001, LITRE.volume(), 1e-15);
  }

  /** A carton's mass is that of what is in it. */
  @Test
  void packagesAndUnknownMaterialsAreLeftAlone() {
    assertEquals(Optional.empty(), look(5, LITRE, "corrugated board"));
    assertEquals(Optional.empty(), look(50, LITRE, "unobtainium"));
    assertEquals(Optional.empty(), look(50, LITRE, ""));
  }

  @Test
  void aSceneWithSuchAMassWarns() {
    Scene scene =
        Jobs.scene(
            Jobs.point(40, Vec3.ZERO),
            Jobs.cups(1000, 0.5, Vec3.ZERO),
            Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0.4, 0, 0)));
    Scene.Part p = scene.part();
    Scene.Part steel =
        new Scene.Part(
            p.name(), p.body(), p.air(), Optional.of(LITRE), new Vec3(0, 0, 0.05), "steel");
    assertTrue(
        HoldStudy.run(Jobs.with(scene, steel, scene.motion()), 2).warnings().stream()
            .anyMatch(w -> w.contains("40000 kg/m^3")));
  }
}
