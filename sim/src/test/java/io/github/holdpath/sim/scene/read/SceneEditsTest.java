package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.Scene;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SceneEditsTest {
  private static final Path JAWS = SceneFiles.GOOD.resolve("jaws.json");

  private static Scene with(String pointer, String value) {
    return SceneFiles.read(JAWS, Map.of(pointer, value)).scene();
  }

  private static Fault fault(String pointer, String value) {
    Fault fault = SceneFiles.faults(JAWS, Map.of(pointer, value)).get(0);
    assertEquals("--set " + pointer + "=" + value, fault.file());
    assertEquals(0, fault.line());
    return fault;
  }

  @Test
  void setsNumbersTextsListsAndObjects() {
    assertEquals(0.3, ((JawGrip) with("grip/friction", "0.3").grip()).friction());
    assertEquals(5, with("part/mass", "5 kg").part().body().mass());
    assertEquals(5, with("part/mass", "\"5 kg\"").part().body().mass());
    assertEquals("7", with("title", "\"7\"").title());
    Route route = (Route) with("route/0/start/quaternion", "[1, 0, 0, 0]").motion();
    assertEquals(1, route.start().rotation().w());
    Scene scene = with("limits", "{\"speed\": \"3 m/s\", \"acceleration\": \"1 m/s^2\"}");
    assertEquals(3, scene.limits().speed());
  }

  @Test
  void setsAFieldOfAStepAndOneThatIsNotInTheFile() {
    Route route = (Route) with("route/3/speed", "50 %").motion();
    assertEquals(1, ((RouteStep.Move) route.steps().get(2)).limits().speed());
    assertEquals(1000, with("site/altitude", "1000 m").site().altitude());
  }

  @Test
  void namesTheOptionWhereASetValueIsFaulty() {
    Fault fault = fault("part/mass", "5");
    assertEquals("part/mass", fault.pointer());
    assertEquals("5 has no unit; write \"5 kg\"", fault.message());
    assertEquals("--set part/mass=5: part/mass: " + fault.message(), fault.toLine());
    assertTrue(fault("grip/fricton", "0.3").message().contains("did you mean \"friction\"?"));
    assertTrue(fault("part/damage", "{\"maxPressure\": 4}").message().contains("has no unit"));
    assertEquals("part/damage/maxPressure", fault("part/damage", "{\"maxPressure\": 4}").pointer());
  }

  @Test
  void refusesAnIndexBeyondTheList() {
    assertTrue(fault("route/9/speed", "50 %").message().endsWith("write an index from 0 to 4"));
    assertTrue(fault("route/-/speed", "50 %").message().endsWith("write an index from 0 to 4"));
    assertTrue(fault("route/x", "50 %").message().endsWith("write an index from 0 to 4"));
  }

  @Test
  void refusesAWayThroughAValueAndAPointerWithASlashInFront() {
    assertTrue(fault("part/mass/unit", "kg").message().endsWith("set part/mass itself"));
    assertTrue(fault("/part/mass", "1 kg").message().endsWith("as grip/friction"));
    assertTrue(fault("", "1 kg").message().endsWith("as grip/friction"));
  }

  @Test
  void refusesBrokenJson() {
    assertTrue(fault("route", "[1,").message().startsWith("begins like JSON but is not"));
  }

  @Test
  void undoesEscapesOfAPointer() {
    Map<String, String> set = Map.of("origins/grip~1friction", "measured");
    Scene scene = SceneFiles.read(JAWS, set).scene();
    assertTrue(
        scene.inputs().stream()
            .anyMatch(
                n -> n.pointer().equals("grip/friction") && n.origin() == Scene.Origin.MEASURED));
  }
}
