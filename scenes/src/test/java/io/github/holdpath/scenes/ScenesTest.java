package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.holdpath.sim.report.ResultJson;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every demo scene reads, fits the published schema, fails as drawn, and repeats to the byte. */
class ScenesTest {
  private static final Path FORMATS = Path.of("../docs/formats");

  static List<Path> scenes() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("."))) {
      return files.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static String result(Path scene) throws SceneException {
    LoadedScene loaded = SceneReader.read(scene, Map.of());
    return ResultJson.text(
        HoldStudy.run(loaded.scene(), loaded.scene().requiredSafety()), loaded, "test");
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void theSameSceneGivesTheSameBytes(Path scene) throws SceneException {
    assertEquals(result(scene), result(scene));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void sceneAndResultFitThePublishedSchemas(Path scene) throws IOException, SceneException {
    assertTrue(
        schema("holdpath-scene-1.schema.json")
            .validate(Files.readString(scene), InputFormat.JSON)
            .isEmpty());
    assertTrue(
        schema("holdpath-result-1.schema.json")
            .validate(result(scene), InputFormat.JSON)
            .isEmpty());
  }

  private static Schema schema(String file) throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(FORMATS.resolve(file)), InputFormat.JSON);
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void everySceneHasItsStory(Path scene) {
    Path story = Path.of(scene.toString().replace(".json", ".md"));
    assertTrue(Files.exists(story), story.toString());
  }
}
