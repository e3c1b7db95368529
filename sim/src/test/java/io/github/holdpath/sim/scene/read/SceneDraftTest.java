package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.motion.Recording;
import io.github.holdpath.sim.report.ResultJson;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.study.HoldStudy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SceneDraftTest {
  private static final Path SCENES = Path.of("../scenes");
  private static final Path CARTONS = SCENES.resolve("cartons.json");

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

  @ParameterizedTest
  @MethodSource("demoScenes")
  void savedTextGivesTheSameResult(Path file) throws Exception {
    SceneDraft draft = SceneDraft.open(file).with("grip/requiredSafety", "1.75");
    Path copy = beside(file);
    Files.writeString(copy, draft.json());
    Scene again = SceneReader.read(copy, Map.of()).scene();
    assertEquals(result(draft.scene()), result(again));
    assertEquals(draft.json(), SceneDraft.open(copy).json());
  }

  @ParameterizedTest
  @MethodSource("demoScenes")
  void settingAValueToItselfChangesNothing(Path file) throws Exception {
    SceneDraft draft = SceneDraft.open(file);
    SceneDraft same = draft;
    assertFalse(draft.fields().isEmpty());
    for (SceneDraft.Field field : draft.fields()) {
      assertEquals(Optional.of(field.text()), draft.value(field.pointer()));
      same = same.with(field.pointer(), field.text());
    }
    assertEquals(draft.json(), same.json());
    assertEquals(draft.fields(), same.fields());
  }

  @ParameterizedTest
  @MethodSource("demoScenes")
  void listsObjectsAndTextsThatLookLikeNumbersComeAsJson(Path file) throws Exception {
    SceneDraft draft = SceneDraft.open(file).with("title", "\"7\"");
    assertEquals(Optional.of("\"7\""), draft.value("title"));
    for (String pointer : List.of("part", "grip", "route", "title")) {
      SceneDraft same = draft.with(pointer, draft.value(pointer).orElseThrow());
      assertEquals(draft.json(), same.json());
    }
  }

  @Test
  void setsAsTheOptionDoes() throws Exception {
    Map<String, String> set = new LinkedHashMap<>();
    set.put("part/mass", "9 kg");
    set.put("site/altitude", "1000 m");
    set.put("route/3/speed", "50 %");
    SceneDraft draft = SceneDraft.open(CARTONS);
    for (Map.Entry<String, String> e : set.entrySet()) {
      draft = draft.with(e.getKey(), e.getValue());
    }
    LoadedScene read = SceneReader.read(CARTONS, set);
    assertEquals(read.set(), draft.loaded().set());
    assertEquals(read.sha256(), draft.loaded().sha256());
    assertEquals(result(read.scene()), result(draft.scene()));
    assertEquals(Optional.of("50 %"), draft.value("route/3/speed"));
  }

  @Test
  void aDraftIsNotChangedByItsChanges() throws Exception {
    SceneDraft draft = SceneDraft.open(CARTONS);
    String before = draft.json();
    SceneDraft lighter = draft.with("part/mass", "9 kg");
    assertEquals(9, lighter.scene().part().body().mass());
    assertEquals(before, draft.json());
    assertEquals(12, draft.scene().part().body().mass());
  }

  @Test
  void aWholeGroupReplacesWhatWasSetInside() throws Exception {
    SceneDraft draft =
        SceneDraft.open(CARTONS)
            .with("limits/speed", "1 m/s")
            .with("limits", "{\"speed\": \"2 m/s\", \"acceleration\": \"5 m/s^2\"}");
    assertEquals(Optional.of("2 m/s"), draft.value("limits/speed"));
    assertEquals(List.of("limits"), List.copyOf(draft.set().keySet()));
  }

  @Test
  void tellsAllFaultsOfTheDraft() throws Exception {
    SceneDraft draft =
        SceneDraft.open(CARTONS)
            .with("part/mass", "9")
            .with("grip/friction", "-1")
            .with("part/mass/kg", "9")
            .with("route/99", "1");
    SceneException e = assertThrows(SceneException.class, draft::scene);
    List<String> pointers = e.faults().stream().map(f -> f.pointer()).toList();
    assertTrue(
        pointers.containsAll(List.of("part/mass", "grip/friction", "part/mass/kg", "route/99")));
    assertEquals(Optional.of("9"), draft.value("part/mass"));
  }

  @Test
  void whatIsNoSceneIsToldAtOnce() throws Exception {
    Path list = Files.writeString(folder.resolve("list.json"), "[1]");
    assertEquals(
        1, assertThrows(SceneException.class, () -> SceneDraft.open(list)).faults().size());
    assertThrows(SceneException.class, () -> SceneDraft.open(folder.resolve("none.json")));
  }

  @Test
  void motionIsPlannedAnewOnlyWhereItChanges() throws Exception {
    SceneDraft draft = SceneDraft.open(CARTONS);
    Scene scene = draft.scene();
    Scene lighter = draft.with("part/mass", "9 kg").scene();
    assertSame(scene.moved(), lighter.moved());
    assertEquals(9, lighter.part().body().mass());
    Scene slower = draft.with("override", "50 %").scene();
    assertNotSame(scene.moved(), slower.moved());
    assertTrue(slower.moved().duration() > 1.5 * scene.moved().duration());
    assertEquals(scene.moved().duration(), draft.scene().moved().duration());
  }

  @Test
  void filesBesideAreReadAnewWhereTheyChange() throws Exception {
    Path file = beside(SCENES.resolve("arm-log.json"));
    Files.copy(SCENES.resolve("arm-log.json"), file);
    SceneDraft draft = SceneDraft.open(file);
    int rows = rows(draft.scene());
    assertEquals(rows, rows(draft.with("route/recording/cutoff", "30 Hz").scene()));
    Path table = folder.resolve("arm-log.csv");
    List<String> lines = Files.readAllLines(table);
    Files.write(table, lines.subList(0, lines.size() - 1));
    assertEquals(rows - 1, rows(draft.scene()));
    Files.delete(table);
    assertThrows(SceneException.class, draft::scene);
  }

  private static int rows(Scene scene) {
    return ((Recording) scene.motion()).times().size();
  }

  @Test
  void textIsLaidOutAsByHand() throws Exception {
    String json = SceneDraft.open(CARTONS).json();
    List<String> lines = json.lines().toList();
    List<String> byHand = Files.readAllLines(CARTONS);
    assertEquals(byHand, lines);
  }

  @Test
  void keepsNumbersEscapesAndMembersThatComeTwice() throws Exception {
    String text =
        """
        {
          "a": [1.50, -0e0, 1E+2, true, null, {}, []],
          "a": "\\u0007 \\" \\\\ \\t \\ud800 \u00e4 \\ud83d\\ude00",
          "b~1/": { "c": {} }
        }
        """;
    Path file = Files.writeString(folder.resolve("odd.json"), text);
    SceneDraft draft = SceneDraft.open(file);
    Path again = Files.writeString(folder.resolve("again.json"), draft.json());
    assertEquals(draft.json(), SceneDraft.open(again).json());
    assertEquals(draft.fields(), SceneDraft.open(again).fields());
    assertTrue(draft.json().contains("1.50"));
    assertTrue(draft.json().contains("-0e0"));
    assertTrue(draft.json().contains("\\ud800 \u00e4 \ud83d\ude00"));
    assertEquals(2, draft.json().split("\"a\":", -1).length - 1);
  }
}
