package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.supply.Atmosphere;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SceneReaderTest {
  /** Products and quotients of a few doubles. */
  private static final double RELATIVE = 1e-12;

  private static final Path JAWS = SceneFiles.GOOD.resolve("jaws.json");
  private static final Path SUCTION = SceneFiles.GOOD.resolve("suction.json");

  @TempDir Path folder;

  @Test
  void readsEveryFieldOfASuctionScene() {
    Scene scene = SceneFiles.good("suction.json");
    assertEquals("Crates of jars from a conveyor onto a pallet", scene.title());
    assertEquals(120, scene.site().altitude());
    assertEquals(293.15, scene.site().temperature());
    assertEquals(1.19, scene.site().airDensity());
    assertEquals(new Vec3(0, 0, -9.80665), scene.site().gravity());
    assertEquals(Atmosphere.pressure(120), scene.site().pressure());
    assertEquals(9.6, scene.part().body().mass());
    assertEquals(new Vec3(0, 0, 0.13), scene.part().body().centreOfMass());
    assertEquals(Inertia.solidBox(9.6, new Vec3(0.4, 0.3, 0.26)), scene.part().body().inertia());
    assertEquals(new Vec3(0.01, 0, 0.13), scene.part().shapeCentre());
    assertEquals(0.12 * 1.2, scene.part().air().dragArea());
    assertEquals(1.19, scene.part().air().density());
    assertEquals(2, scene.requiredSafety());
    Scene.Tool tool = scene.tool().orElseThrow();
    assertEquals(3.1, tool.body().mass());
    assertEquals(new Vec3(0, 0, 0.18), tool.flangeToGrip().position());
  }

  @Test
  void placesCupsOfAGridFromTheCornerOfLeastXAndY() {
    SuctionGrip grip = assertInstanceOf(SuctionGrip.class, SceneFiles.good("suction.json").grip());
    assertEquals(
        List.of("cup 1,1", "cup 1,3", "cup 2,1", "cup 2,2", "cup 2,3"),
        grip.cups().stream().map(c -> c.name()).toList());
    assertEquals(new Vec3(-0.11, -0.12, 0), grip.cups().get(0).position());
    assertEquals(new Vec3(-0.11, 0.12, 0), grip.cups().get(1).position());
    assertEquals(new PatchStiffness(6000, 4000), grip.cups().get(0).stiffness());
    assertEquals(30_000, grip.ledges().get(0).normalStiffness());
    assertEquals(150_000, grip.maxPressure());
  }

  @Test
  void scalesAVacuumRatedAtAnotherAltitudeByTheLocalPressure() {
    SuctionGrip grip = (SuctionGrip) SceneFiles.good("suction.json").grip();
    double vacuum = 60_000 * Atmosphere.pressure(120) / Atmosphere.pressure(0);
    double pull = vacuum * 0.9 * Math.PI * 0.05 * 0.05 / 4;
    assertEquals(pull, grip.cups().get(0).pull(), RELATIVE * pull);
  }

  @Test
  void readsARouteWithLimitsOfEachMove() {
    Route route = assertInstanceOf(Route.class, SceneFiles.good("suction.json").motion());
    assertEquals(LawKind.S_CURVE, route.law());
    assertEquals(6, route.steps().size());
    assertEquals(new RouteStep.Take("route/1", 0.25), route.steps().get(0));
    RouteStep.Move across = (RouteStep.Move) route.steps().get(2);
    assertEquals("across", across.name());
    assertEquals("route/3", across.pointer());
    assertEquals(0.8 * 1.8, across.limits().speed());
    assertEquals(0.8 * Math.PI, across.limits().turnSpeed(), RELATIVE);
    assertEquals(Math.toRadians(3600), across.limits().turnJerk(), RELATIVE * 100);
    assertEquals(new RouteStep.Wait("route/4", 0.1), route.steps().get(3));
    RouteStep.Move down = (RouteStep.Move) route.steps().get(4);
    assertEquals(0.5, down.limits().speed());
    assertEquals(Math.PI, down.limits().turnSpeed(), RELATIVE);
    assertEquals(4.5, down.limits().acceleration());
    assertEquals(new RouteStep.Release("route/6", 0.15), route.steps().get(5));
  }

  @Test
  void keepsTheOrientationThatAMoveLeavesOut() {
    Route route = (Route) SceneFiles.good("suction.json").motion();
    Quaternion down = Quaternion.ofRpy(Math.PI, 0, 0);
    RouteStep.Move lift = (RouteStep.Move) route.steps().get(1);
    assertEquals(0, lift.target().rotation().angleTo(down), RELATIVE);
    RouteStep.Move last = (RouteStep.Move) route.steps().get(4);
    Quaternion turned = Quaternion.ofRpy(Math.PI, 0, Math.PI / 2);
    assertEquals(0, last.target().rotation().angleTo(turned), RELATIVE);
  }

  @Test
  void readsEveryFieldOfAJawsScene() {
    Scene scene = SceneFiles.good("jaws.json");
    JawGrip grip = assertInstanceOf(JawGrip.class, scene.grip());
    assertEquals(new PatchShape.Rectangle(0.04, 0.025), grip.padShape());
    assertEquals(Mechanism.SYNCHRONISED, grip.mechanism());
    assertEquals(0.05, grip.opening());
    assertEquals(PatchStiffness.ofNormal(20_000), grip.stiffness());
    assertEquals(5e6, grip.maxPressure());
    assertEquals(12e6, grip.maxPeakPressure());
    assertEquals(100_000, grip.ledges().get(0).normalStiffness());
    assertEquals(
        new MoveLimits(
            2,
            0.6 * 9.80665,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY),
        scene.limits());
    assertEquals(new PartShape.Cylinder(0.05, 0, 0.3, 0), scene.part().shape().orElseThrow());
    assertTrue(scene.tool().isEmpty());
  }

  @Test
  void takesTheSafetyOutOfADataSheetForceAndShowsIt() {
    Scene scene = SceneFiles.good("jaws.json");
    assertEquals(1500, ((JawGrip) scene.grip()).force());
    Scene.InputNote note = note(scene, "grip/force");
    assertEquals("750 N, 1500.0 N without the safety of 2.0 in it", note.text());
  }

  @Test
  void judgesABarInFlatPadsAsALine() {
    Map<String, String> flat = Map.of("grip/pads/contact", "line");
    JawGrip grip = (JawGrip) SceneFiles.read(JAWS, flat).scene().grip();
    assertEquals(new PatchShape.Line(0.04), grip.padShape());
    assertEquals(new Vec3(1, 0, 0), grip.padAlong());
    Map<String, String> upright =
        Map.of("grip/pads/contact", "line", "part/cylinder", "50 20 mm z");
    grip = (JawGrip) SceneFiles.read(JAWS, upright).scene().grip();
    assertEquals(new PatchShape.Line(0.02), grip.padShape());
    assertEquals(new Vec3(0, 0, 1), grip.padAlong());
  }

  @Test
  void namesTheOriginOfWhatTheResultRestsOn() {
    Scene scene = SceneFiles.good("suction.json");
    assertEquals(Scene.Origin.DATA_SHEET, note(scene, "part/mass").origin());
    assertEquals("9.6 kg", note(scene, "part/mass").text());
    assertEquals(Scene.Origin.NOT_STATED, note(scene, "part/centreOfMass").origin());
    assertEquals(Scene.Origin.MEASURED, note(scene, "grip/friction").origin());
    assertEquals(Scene.Origin.ASSUMED, note(scene, "grip/cups/stiffness").origin());
    assertEquals("normal 6 N/mm, shear 4 N/mm", note(scene, "grip/cups/stiffness").text());
    assertEquals("120 m", note(scene, "site/altitude").text());
    assertTrue(note(scene, "grip/supply/vacuum").text().startsWith("60 kPa, a vacuum of 59.2 kPa"));
    assertEquals(
        List.of("site/altitude", "part/mass", "part/centreOfMass", "part/inertia"),
        SceneFiles.good("suction.json").inputs().stream()
            .map(Scene.InputNote::pointer)
            .limit(4)
            .toList());
  }

  @Test
  void tellsFileNameAndDigest() {
    LoadedScene loaded = SceneFiles.read(SUCTION, Map.of("grip/friction", "0.3"));
    assertEquals("suction.json", loaded.fileName());
    assertEquals(Map.of("grip/friction", "0.3"), loaded.set());
    assertTrue(loaded.sha256().matches("[0-9a-f]{64}"));
    assertEquals(0.3, ((SuctionGrip) loaded.scene().grip()).friction());
  }

  @Test
  void skipsAByteOrderMarkAndReadsEveryLineEnd() {
    String text = SceneFiles.text(JAWS).replace("\n", "\r\n");
    Path file = SceneFiles.write(folder.resolve("mark.json"), "\uFEFF" + text);
    assertEquals(SceneFiles.good("jaws.json"), SceneFiles.read(file, Map.of()).scene());
    Path wrong =
        SceneFiles.write(
            folder.resolve("wrong.json"), "\uFEFF" + text.replace("4.62 kg", "4.62 kq"));
    Fault fault = SceneFiles.faults(wrong, Map.of()).get(0);
    assertEquals(5, fault.line());
    assertEquals(30, fault.column());
  }

  private static Scene.InputNote note(Scene scene, String pointer) {
    return scene.inputs().stream()
        .filter(n -> n.pointer().equals(pointer))
        .findFirst()
        .orElseThrow();
  }
}
