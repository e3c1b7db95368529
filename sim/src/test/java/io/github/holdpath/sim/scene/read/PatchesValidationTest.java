package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import io.github.holdpath.sim.scene.Scene;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * The 71 patch sets that an independent program has judged (see {@code reference/README.md} of
 * dynamics), each written as a scene file of kind patches and read back: cups, magnets, jaws and
 * ledges must give the factor of the other program, whatever kind they are.
 */
class PatchesValidationTest {
  /** Both programs work in doubles; the reference prints ten significant digits. */
  private static final double FACTOR = 1e-9;

  private static final Path REFERENCE =
      Path.of("../dynamics/src/test/resources/reference/grip-factors.json");

  @TempDir Path folder;

  static Stream<JsonNode> cases() {
    List<JsonNode> cases = new ArrayList<>();
    new ObjectMapper().readTree(SceneFiles.text(REFERENCE)).get("cases").forEach(cases::add);
    assertEquals(71, cases.size());
    return cases.stream();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void sceneFileGivesTheFactorOfTheOtherProgram(JsonNode c) {
    Path file = SceneFiles.write(folder.resolve("case.json"), scene(c));
    Scene scene = SceneFiles.read(file, Map.of()).scene();
    FirstSlip first = HoldModel.of(scene.grip()).firstSlip(load(scene, c.get("load")));
    double expected = c.get("expect").get("H1").asDouble();
    assertEquals(expected, first.factor(), FACTOR * Math.max(1, expected));
    if (first.patch() >= 0) {
      assertEquals("patch " + c.get("expect").get("patch").asInt(), first.patchName());
    }
    assertEquals(
        c.path("drive").asString("").equals("locking"), !scene.grip().closures().isEmpty());
  }

  private static Wrench load(Scene scene, JsonNode load) {
    Scene.Part part = scene.part();
    MotionState state =
        new MotionState(
            new Pose(Vec3.ZERO, turn(load.get("rpyDeg"))),
            Vec3.ZERO,
            vec(load.get("omega")),
            vec(load.get("acc")),
            vec(load.get("alpha")));
    return new LoadModel(part.body(), scene.site().gravity(), part.air()).required(state).total();
  }

  private static String scene(JsonNode c) {
    List<String> patches = new ArrayList<>();
    for (JsonNode p : c.get("patches")) {
      patches.add(patch("patch " + patches.size(), p));
    }
    assertTrue(patches.size() > 0);
    String drives = "";
    if (c.has("drives")) {
      List<String> list = new ArrayList<>();
      c.get("drives").forEach(d -> list.add(drive(d)));
      boolean locking = c.path("drive").asString("").equals("locking");
      drives = ",\"" + (locking ? "closures" : "drives") + "\":" + list;
    }
    JsonNode l = c.get("load");
    return "{\"format\":\"holdpath-scene/1\",\"part\":{\"mass\":\""
        + l.get("m").asDouble()
        + " kg\",\"centreOfMass\":\""
        + numbers(l.get("com"))
        + " m\",\"inertia\":\""
        + numbers(l.get("I"))
        + " 0 0 0 kg*m^2\"},\"grip\":{\"kind\":\"patches\",\"friction\":1,\"requiredSafety\":1,"
        + "\"patches\":"
        + patches
        + drives
        + "},\"law\":\"trapezoid\",\"limits\":{\"speed\":\"1 m/s\",\"acceleration\":\"1 m/s^2\"},"
        + "\"route\":[{\"start\":{\"at\":\"0 0 0 m\",\"rpy\":\"180 0 0 deg\"}},{\"grip\":\"take\","
        + "\"wait\":\"0 s\"},{\"line\":{\"at\":\"0 0 1 m\"}}]}";
  }

  private static String patch(String name, JsonNode p) {
    String shape = p.get("shape").asString();
    double a = p.get("a").asDouble();
    boolean rectangle = shape.equals("rect");
    double area = rectangle ? a * p.get("b").asDouble() : Math.PI * a * a;
    return "{\"name\":\""
        + name
        + "\",\"at\":\""
        + numbers(p.get("at"))
        + " m\",\"rpy\":\""
        + numbers(p.get("rpyDeg"))
        + " deg\",\"shape\":\""
        + (rectangle ? "rectangle" : shape)
        + "\",\"size\":\""
        + (rectangle ? a + " " + p.get("b").asDouble() : String.valueOf(2 * a))
        + " m\",\"friction\":"
        + p.get("mu").asDouble()
        + ",\"preload\":\""
        + p.get("N0").asDouble()
        + " N\",\"pull\":\""
        + p.path("P").asDouble(0)
        + " N\",\"stiffness\":{\"normal\":\""
        + p.get("kn").asDouble()
        + " N/m\""
        + (p.has("ks") ? ",\"shear\":\"" + p.get("ks").asDouble() + " N/m\"" : "")
        + "},\"ledge\":"
        + p.path("ledge").asBoolean(false)
        + (p.has("nMax") ? ",\"maxPressure\":\"" + p.get("nMax").asDouble() / area + " Pa\"" : "")
        + "}";
  }

  private static String drive(JsonNode drive) {
    List<String> names = new ArrayList<>();
    List<String> directions = new ArrayList<>();
    for (String key : drive.propertyNames()) {
      names.add("\"patch " + key + "\"");
      directions.add("\"" + numbers(drive.get(key)) + "\"");
    }
    return "{\"patches\":" + names + ",\"directions\":" + directions + "}";
  }

  private static String numbers(JsonNode list) {
    List<String> numbers = new ArrayList<>();
    list.forEach(n -> numbers.add(String.valueOf(n.asDouble())));
    return String.join(" ", numbers);
  }

  private static Vec3 vec(JsonNode n) {
    return new Vec3(n.get(0).asDouble(), n.get(1).asDouble(), n.get(2).asDouble());
  }

  private static Quaternion turn(JsonNode degrees) {
    return Quaternion.ofRpy(
        Math.toRadians(degrees.get(0).asDouble()),
        Math.toRadians(degrees.get(1).asDouble()),
        Math.toRadians(degrees.get(2).asDouble()));
  }
}
