package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SceneSchemaTest {
  private static final Path PUBLISHED = Path.of("../docs/formats/holdpath-scene-1.schema.json");

  /** Set to write the published schema anew: -DwriteSchema=true. */
  private static final boolean WRITE = Boolean.getBoolean("writeSchema");

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(SceneSchema.text(), InputFormat.JSON);

  private static List<Error> errors(String text) {
    return SCHEMA.validate(text, InputFormat.JSON);
  }

  @Test
  void isPublishedAsGenerated() throws Exception {
    if (WRITE) {
      Files.createDirectories(PUBLISHED.toAbsolutePath().getParent());
      Files.writeString(PUBLISHED, SceneSchema.text());
    }
    assertEquals(
        SceneSchema.text(),
        Files.readString(PUBLISHED),
        "the specs have changed: write the file anew with mvn -pl sim -am test"
            + " -Dtest=SceneSchemaTest -Dsurefire.failIfNoSpecifiedTests=false -DwriteSchema=true");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "suction.json",
        "jaws.json",
        "centric.json",
        "soft.json",
        "vee.json",
        "magnet.json",
        "patches.json"
      })
  void acceptsGoodScenes(String name) {
    assertEquals(List.of(), errors(SceneFiles.text(SceneFiles.GOOD.resolve(name))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"suction", "jaws", "centric", "soft", "magnet", "patches", "recording"})
  void acceptsTemplates(String kind) {
    assertEquals(List.of(), errors(SceneTemplates.text(kind)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "no-unit.json",
        "wrong-dimension.json",
        "unknown-unit.json",
        "unknown-field.json",
        "missing-mass.json",
        "friction-percent.json",
        "unknown-law.json",
        "empty-route.json",
        "two-layouts.json",
        "unknown-grip.json",
        "negative-friction.json"
      })
  void refusesWhatTheReaderRefuses(String name) {
    assertFalse(errors(SceneFiles.text(Path.of("src/test/resources/broken", name))).isEmpty());
  }

  @Test
  void describesEveryFieldAndGivesExamplesThatFit() {
    String text = SceneSchema.text();
    assertTrue(text.contains("\"description\" : \"The mass of one part, as it is carried\""));
    assertTrue(text.contains("\"examples\" : [ \"12 kg\" ]"), text);
  }
}
