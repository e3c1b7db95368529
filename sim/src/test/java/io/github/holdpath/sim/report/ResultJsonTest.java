package io.github.holdpath.sim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.DrawnJobs;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.Explanation;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.timelaw.LawKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ResultJsonTest {
  private static final String SHA = "0".repeat(64);
  private static final Schema SCHEMA = schema();

  private static final List<String> KEYS =
      List.of(
          "format",
          "version",
          "scene",
          "verdict",
          "requiredSafety",
          "factor",
          "margin",
          "speedHeadroom",
          "worst",
          "cycleTime",
          "heldTime",
          "partsPerHour",
          "segments",
          "peaks",
          "assumptions",
          "warnings");
  private static final List<String> SEGMENT_KEYS =
      List.of(
          "index",
          "pointer",
          "name",
          "held",
          "from",
          "to",
          "length",
          "peakSpeed",
          "peakAcceleration",
          "peakJerk",
          "factor",
          "margin",
          "speedHeadroom",
          "mode",
          "patch",
          "worstTime");

  private static Schema schema() {
    try {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Files.readString(Path.of("../docs/formats/holdpath-result-1.schema.json")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String> texts() {
    List<String> texts = new ArrayList<>();
    for (String name : DemoScenes.planned().toList()) {
      texts.add(demo(name, Map.of()));
      texts.add(demo(name, Map.of("law", "s-curve", "limits/turnJerk", "2000 deg/s^3")));
    }
    for (int i = 0; i < 10; i++) {
      texts.add(text(new DrawnJobs(500 + i).next(i)));
    }
    Route still = new Route(Jobs.START, LawKind.TRAPEZOID, List.of(new RouteStep.Take("r", 0)));
    texts.add(text(cup(still)));
    Route never = Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0, 0.4, 0));
    texts.add(
        text(
            Jobs.scene(Jobs.point(1, Vec3.ZERO), Jobs.jaws(Mechanism.INDEPENDENT, 9, 0.2), never)));
    return texts;
  }

  @ParameterizedTest
  @MethodSource("texts")
  void keepsItsSchema(String text) {
    var errors = SCHEMA.validate(text, InputFormat.JSON);
    assertTrue(errors.isEmpty(), errors + "\n" + text);
    assertTrue(text.endsWith("}\n"));
    assertFalse(text.contains("NaN") || text.contains("Infinity"), text);
  }

  @Test
  void schemaRefusesWhatIsNotAResult() {
    String broken = demo("cartons", Map.of()).replace("\"verdict\"", "\"judgement\"");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("texts")
  void keysStandInTheirOrder(String text) {
    JsonNode root = read(text);
    assertEquals(KEYS, known(root, KEYS));
    for (JsonNode segment : root.get("segments")) {
      int keys = segment.get("held").booleanValue() ? SEGMENT_KEYS.size() : 10;
      assertEquals(SEGMENT_KEYS.subList(0, keys), known(segment, SEGMENT_KEYS));
    }
  }

  private static List<String> known(JsonNode node, List<String> keys) {
    return node.propertyNames().stream().filter(keys::contains).toList();
  }

  @Test
  void numbersReadBackToTheSameDouble() {
    Scene scene = new DrawnJobs(4711).next(1);
    StudyResult result = HoldStudy.run(scene, 2);
    JsonNode root = read(text(scene));
    assertEquals(result.factor(), root.get("factor").doubleValue());
    assertEquals(result.margin(), root.get("margin").doubleValue());
    assertEquals(result.speedHeadroom(), root.get("speedHeadroom").doubleValue());
    assertEquals(result.cycleTime(), root.get("cycleTime").doubleValue());
    assertEquals(result.partsPerHour(), root.get("partsPerHour").doubleValue());
    assertEquals(result.peaks().gripMoment(), root.get("peaks").get("gripMoment").doubleValue());
    double[] wrench = result.worst().load().total().toArray();
    for (int k = 0; k < 6; k++) {
      assertEquals(wrench[k] + 0.0, root.get("worst").get("wrench").get(k).doubleValue());
    }
    var move = result.segments().get(0).move();
    JsonNode first = root.get("segments").get(0);
    assertEquals(move.peakAcceleration(), first.get("peakAcceleration").doubleValue());
    assertEquals(move.to(), first.get("to").doubleValue());
  }

  @Test
  void noLimitIsNull() {
    // Weightless: nothing asks anything of the grip.
    Scene s = cup(new Route(Jobs.START, LawKind.TRAPEZOID, List.of(new RouteStep.Take("r", 1))));
    Scene.Site space = new Scene.Site(0, 293.15, Vec3.ZERO, 101_325, 1.2);
    Scene free =
        new Scene(
            s.title(), space, s.part(), s.grip(), 2, s.tool(), s.limits(), s.motion(), s.inputs());
    JsonNode root = read(text(free));
    assertTrue(root.get("factor").isNull() && root.get("margin").isNull());
    assertEquals("no limit", root.get("worst").get("mode").asString());
    assertEquals("holds", root.get("verdict").asString());
    assertEquals(100, root.get("speedHeadroom").doubleValue());
  }

  @Test
  void payloadIsThatOfToolAndPart() {
    JsonNode root = read(demo("cartons", Map.of()));
    JsonNode both = root.get("payload").get("withPart");
    assertEquals(18, both.get("mass").doubleValue(), 1e-12);
    // 12 kg at 180 + 125 mm and 6 kg at 90 mm from the flange.
    assertEquals(
        (12 * 0.305 + 6 * 0.09) / 18, both.get("centreOfMass").get(2).doubleValue(), 1e-12);
    double about = 0.1525 + 12 * 0.305 * 0.305 + 6 * 0.09 * 0.09;
    assertEquals(about, both.get("inertiaAboutFlange").get(0).doubleValue(), 1e-12);
    assertEquals(18 * Jobs.G, root.get("payload").get("standingForce").doubleValue(), 1e-9);
    assertEquals(6, root.get("payload").get("toolAlone").get("mass").doubleValue());
    assertEquals(
        "speed 2 m/s (100 %), acceleration 6 m/s^2 (60 %), blend 60 mm",
        root.get("segments").get(0).get("settings").asString());
    assertFalse(read(text(new DrawnJobs(500).next(0))).has("payload"));
  }

  @Test
  void jerkThatTheLawDoesNotBoundIsNull() {
    JsonNode move = read(demo("cartons", Map.of())).get("segments").get(0);
    assertTrue(move.get("peakJerk").isNull());
    assertEquals(0, move.get("peakTurnJerk").doubleValue());
    JsonNode smooth = read(demo("cartons", Map.of("law", "s-curve"))).get("segments").get(0);
    assertEquals(100, smooth.get("peakJerk").doubleValue(), 1e-9);
  }

  @Test
  void cycleWithoutTimeHasNoPartsPerHour() {
    Route still = new Route(Jobs.START, LawKind.TRAPEZOID, List.of(new RouteStep.Take("r", 0)));
    assertTrue(read(text(cup(still))).get("partsPerHour").isNull());
  }

  @Test
  void setValuesStandAsTheyWereTaken() {
    Map<String, String> set = new LinkedHashMap<>();
    set.put("grip/friction", "0.30");
    set.put("title", "0 is \"no\" number here");
    set.put("route/3/speed", "80 %");
    JsonNode told = read(demo("cartons", set)).get("scene").get("set");
    assertTrue(told.get("grip/friction").isNumber());
    assertEquals(0.3, told.get("grip/friction").doubleValue());
    assertEquals("80 %", told.get("route/3/speed").asString());
    assertEquals("0 is \"no\" number here", told.get("title").asString());
    assertEquals(List.copyOf(set.keySet()), List.copyOf(told.propertyNames()));
  }

  @Test
  void sameBytesTwiceAndInAnyLocaleAndTimeZone() {
    String expected = everything();
    assertEquals(expected, everything());
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      assertEquals(expected, everything());
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(expected, everything());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static String everything() {
    LoadedScene loaded = DemoScenes.read("glass-sheet", Map.of());
    StudyResult result = HoldStudy.run(loaded.scene(), 2);
    return ResultJson.text(result, loaded, "1")
        + CheckReport.text(result, Ink.PLAIN)
        + SampleCsv.text(result, 5e-3)
        + ExplainReport.text(Explanation.at(loaded.scene(), 2, result.worst().time()));
  }

  private static Scene cup(Route route) {
    return Jobs.scene(Jobs.point(2, Vec3.ZERO), Jobs.cups(200, 0.5, Vec3.ZERO), route);
  }

  private static JsonNode read(String text) {
    return JsonMapper.shared().readTree(text);
  }

  private static String demo(String name, Map<String, String> set) {
    LoadedScene loaded = DemoScenes.read(name, set);
    return ResultJson.text(HoldStudy.run(loaded.scene(), 2), loaded, "test");
  }

  private static String text(Scene scene) {
    return ResultJson.text(
        HoldStudy.run(scene, 2), new LoadedScene(scene, "drawn.json", SHA, Map.of()), "test");
  }
}
