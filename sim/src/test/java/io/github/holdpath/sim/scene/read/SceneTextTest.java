package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.motion.recorded.Recording;
import io.github.holdpath.sim.report.ResultJson;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.JsonTree;
import io.github.holdpath.sim.study.FactorTrace;
import io.github.holdpath.sim.study.HoldStudy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SceneTextTest {
  private static final Path SCENES = Path.of("../scenes");
  private static final Path CARTONS = SCENES.resolve("cartons.json");

  /** Looks between the samples find the same greatest speeds of joints; seen: 5e-11. */
  private static final double PREVIEW = 1e-8;

  @TempDir Path folder;

  static Stream<Path> demoScenes() throws IOException {
    try (Stream<Path> files = Files.list(SCENES)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  private Path beside(Path scene) throws IOException {
    for (String other :
        List.of(
            "arm-log.csv", "arm-log.urdf", "bench-arm.urdf", "pallet-arm.urdf", "shaft-arm.urdf")) {
      Path copy = folder.resolve(other);
      if (!Files.exists(copy)) {
        Files.copy(SCENES.resolve(other), copy);
      }
    }
    return folder.resolve(String.valueOf(scene.getFileName()));
  }

  private static String result(Scene scene) {
    LoadedScene loaded = new LoadedScene(scene, "scene.json", "0", Map.of());
    return ResultJson.text(HoldStudy.run(scene, scene.requiredSafety()), loaded, "test");
  }

  /** Pointers of all values that are not made of others, and that are not null. */
  private static List<String> fields(String text) throws SceneException {
    List<String> pointers = new ArrayList<>();
    gather(JsonTree.parse("", text, ""), pointers);
    return pointers;
  }

  private static void gather(JsonNode node, List<String> pointers) {
    if (node instanceof JsonNode.Obj obj) {
      obj.members().forEach(m -> gather(m.value(), pointers));
    } else if (node instanceof JsonNode.Items list) {
      list.items().forEach(item -> gather(item, pointers));
    } else if (!node.words().equals("null")) {
      pointers.add(node.place().pointer());
    }
  }

  @ParameterizedTest
  @MethodSource("demoScenes")
  void savedTextGivesTheSameResult(Path file) throws Exception {
    SceneText changed = SceneText.open(file).with("grip/requiredSafety", "1.75");
    Path copy = beside(file);
    Files.writeString(copy, changed.text());
    Scene again = SceneReader.read(copy, Map.of()).scene();
    assertEquals(result(changed.scene()), result(again));
    assertEquals(changed.text(), SceneText.open(copy).text());
  }

  @ParameterizedTest
  @MethodSource("demoScenes")
  void settingAValueToItselfChangesNothing(Path file) throws Exception {
    String before = Files.readString(file);
    SceneText same = SceneText.open(file);
    List<String> fields = fields(before);
    assertFalse(fields.isEmpty());
    for (String pointer : fields) {
      same = same.with(pointer, same.value(pointer).orElseThrow());
    }
    assertEquals(before, same.text());
  }

  @ParameterizedTest
  @MethodSource("demoScenes")
  void listsObjectsAndTextsThatLookLikeNumbersComeAsJson(Path file) throws Exception {
    SceneText text = SceneText.open(file).with("title", "\"7\"");
    assertEquals(Optional.of("\"7\""), text.value("title"));
    assertEquals(Optional.of("7"), text.words("title"));
    for (String pointer : List.of("part", "grip", "route", "title")) {
      SceneText same = text.with(pointer, text.value(pointer).orElseThrow());
      assertEquals(text.text(), same.text());
    }
  }

  @Test
  void aTextMayLookLikeJson() throws Exception {
    SceneText text = SceneText.open(CARTONS);
    for (String words : List.of("7", "true", "\"a\"", "{}", "[1", "\"a", "a \\ \"b\"")) {
      SceneText named = text.withWords("title", words);
      assertEquals(Optional.of(words), named.words("title"));
      assertEquals(words, named.scene().title());
      assertEquals(named.text(), named.with("title", named.value("title").orElseThrow()).text());
    }
    assertEquals(Optional.empty(), text.words("part"));
  }

  @Test
  void setsAsTheOptionDoes() throws Exception {
    Map<String, String> set = new LinkedHashMap<>();
    set.put("limits/speed", "1.9 m/s");
    set.put("site/altitude", "1000 m");
    set.put("route/3/speed", "50 %");
    SceneText text = SceneText.open(CARTONS);
    for (Map.Entry<String, String> e : set.entrySet()) {
      text = text.with(e.getKey(), e.getValue());
    }
    assertEquals(result(SceneReader.read(CARTONS, set).scene()), result(text.scene()));
    assertEquals(Optional.of("50 %"), text.value("route/3/speed"));
  }

  @Test
  void aTextIsNotChangedByItsChanges() throws Exception {
    SceneText text = SceneText.open(CARTONS);
    SceneText lighter = text.with("part/mass", "9 kg");
    assertEquals(9, lighter.scene().part().body().mass());
    assertEquals(Files.readString(CARTONS), text.text());
    assertEquals(12, text.scene().part().body().mass());
  }

  @Test
  void aWholeGroupReplacesWhatWasSetInside() throws Exception {
    SceneText text =
        SceneText.open(CARTONS)
            .with("limits/speed", "1 m/s")
            .with("limits", "{\"speed\": \"2 m/s\", \"acceleration\": \"5 m/s^2\"}");
    assertEquals(Optional.of("2 m/s"), text.value("limits/speed"));
    assertEquals(List.of("speed", "acceleration"), text.names("limits"));
  }

  @Test
  void tellsAllFaultsOfTheText() throws Exception {
    SceneText text =
        SceneText.open(CARTONS)
            .with("part/mass", "9")
            .with("grip/friction", "-1")
            .with("route/3/spede", "1 m/s");
    SceneException e = assertThrows(SceneException.class, text::scene);
    List<String> pointers = e.faults().stream().map(f -> f.pointer()).toList();
    assertTrue(pointers.containsAll(List.of("part/mass", "grip/friction", "route/3/spede")));
    assertTrue(e.faults().stream().allMatch(f -> f.line() > 1));
    assertEquals(Optional.of("9"), text.value("part/mass"));
  }

  @Test
  void aPointerIntoAValueIsACallersBug() throws Exception {
    SceneText text = SceneText.open(CARTONS);
    for (String pointer : List.of("part/mass/kg", "route/99", "route/99/speed")) {
      assertThrows(IllegalArgumentException.class, () -> text.with(pointer, "9"));
    }
  }

  @Test
  void whatIsNoSceneIsToldAtOnce() throws Exception {
    Path list = Files.writeString(folder.resolve("list.json"), "[1]");
    assertEquals(1, assertThrows(SceneException.class, () -> SceneText.open(list)).faults().size());
    assertThrows(SceneException.class, () -> SceneText.open(folder.resolve("none.json")));
  }

  @Test
  void motionIsPlannedAnewOnlyWhereItChanges() throws Exception {
    SceneText text = SceneText.open(CARTONS);
    Scene scene = text.scene();
    Scene lighter = text.with("part/mass", "9 kg").scene();
    assertSame(scene.moved(), lighter.moved());
    assertEquals(9, lighter.part().body().mass());
    Scene slower = text.with("override", "50 %").scene();
    assertNotSame(scene.moved(), slower.moved());
    assertTrue(slower.moved().duration() > 1.5 * scene.moved().duration());
    assertEquals(scene.moved().duration(), text.scene().moved().duration());
  }

  /** As it is, and three times as fast, which many robots must slow. */
  @ParameterizedTest
  @MethodSource("demoScenes")
  void aPreviewIsTheSceneButForRounding(Path file) throws Exception {
    SceneText text = SceneText.open(file);
    samePreview(text);
    SceneText fast = text;
    for (String limit : List.of("limits/speed", "limits/acceleration")) {
      Optional<String> value = text.value(limit);
      if (value.isPresent()) {
        String[] words = value.get().split(" ", 2);
        fast = fast.with(limit, 3 * Double.parseDouble(words[0]) + " " + words[1]);
      }
    }
    samePreview(fast);
  }

  private static void samePreview(SceneText text) throws SceneException {
    Scene first = text.preview();
    Scene scene = text.scene();
    double duration = scene.moved().duration();
    assertEquals(duration, first.moved().duration(), PREVIEW * duration);
    double step = Math.max(HoldStudy.STEP, duration / 2_000);
    double exact = least(FactorTrace.of(scene, 2, step));
    assertEquals(exact, least(FactorTrace.of(first, 2, step)), PREVIEW * exact);
    assertSame(scene.moved(), text.preview().moved());
  }

  private static double least(FactorTrace trace) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < trace.size(); i++) {
      least = Math.min(least, trace.factor(i).orElse(Double.MAX_VALUE));
    }
    return least;
  }

  @Test
  void filesBesideAreReadAnewWhereTheyChange() throws Exception {
    Path file = beside(SCENES.resolve("arm-log.json"));
    Files.copy(SCENES.resolve("arm-log.json"), file);
    SceneText text = SceneText.open(file);
    int rows = rows(text.scene());
    assertEquals(rows, rows(text.with("route/recording/cutoff", "30 Hz").scene()));
    Path table = folder.resolve("arm-log.csv");
    List<String> lines = Files.readAllLines(table);
    Files.write(table, lines.subList(0, lines.size() - 1));
    assertEquals(rows - 1, rows(text.scene()));
    Files.delete(table);
    assertThrows(SceneException.class, text::scene);
  }

  private static int rows(Scene scene) {
    return ((Recording) scene.motion()).times().size();
  }

  @Test
  void keepsTheLayoutOfAllElse() throws Exception {
    List<String> byHand = Files.readAllLines(CARTONS);
    List<String> lines = SceneText.open(CARTONS).with("part/mass", "9 kg").text().lines().toList();
    assertEquals(byHand.size(), lines.size());
    List<String> other = lines.stream().filter(line -> !byHand.contains(line)).toList();
    assertEquals(List.of("    \"mass\": \"9 kg\","), other);
  }

  @Test
  void keepsNumbersEscapesAndMembersThatComeTwice() throws Exception {
    String odd =
        """
        {
          "a": [1.50, -0e0, 1E+2, true, null, {}, []],
          "a": "\\u0007 \\" \\\\ \\t \\ud800 \u00e4 \\ud83d\\ude00",
          "b~1/": { "c": {} }, "\ud83d\ude00": "\ud83d\ude00", "z": 1
        }
        """;
    Path file = Files.writeString(folder.resolve("odd.json"), odd);
    SceneText text = SceneText.open(file);
    for (String pointer : List.of("a", "a/0", "a/1", "a/2", "a/5", "b~01~1/c", "\ud83d\ude00")) {
      assertEquals(odd, text.with(pointer, text.value(pointer).orElseThrow()).text());
    }
    assertEquals(Optional.empty(), text.value("a/4"));
    assertEquals(odd.replace("\"z\": 1", "\"z\": 2"), text.with("z", "2").text());
    assertEquals(
        odd.replace("\"c\": {}", "\"c\": { \"d\": 3 }"), text.with("b~01~1/c/d", "3").text());
  }

  @Test
  void whatUtf8CannotHoldIsEscaped() throws Exception {
    SceneText text = SceneText.open(CARTONS).with("title", "\u0007 \ud800 \u00e4 \ud83d\ude00");
    assertTrue(text.text().contains("\"\\u0007 \\ud800 \u00e4 \ud83d\ude00\""));
  }
}
