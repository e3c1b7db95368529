package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.JsonTree;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SceneTemplatesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"suction", "jaws", "centric", "soft", "magnet", "patches", "recording"})
  void canBeReadAsTheyAre(String kind) {
    assertTrue(SceneTemplates.kinds().contains(kind));
    SceneFiles.write(folder.resolve("motion.csv"), SceneTemplates.recordingTable());
    Path file = SceneFiles.write(folder.resolve(kind + ".json"), SceneTemplates.text(kind));
    Scene scene = SceneFiles.read(file, Map.of()).scene();
    assertEquals(2, scene.requiredSafety());
    assertEquals(kind.equals("recording") ? "suction" : kind, scene.grip().kind());
  }

  @ParameterizedTest
  @ValueSource(strings = {"suction", "jaws", "centric", "soft", "magnet", "patches", "recording"})
  void explainEveryObject(String kind) throws SceneException {
    assertNotes(JsonTree.parse(kind, SceneTemplates.text(kind), ""));
  }

  private static void assertNotes(JsonNode node) {
    if (node instanceof JsonNode.Obj obj) {
      assertTrue(obj.get("note").isPresent(), obj.place() + " has no note");
      obj.members().forEach(m -> assertNotes(m.value()));
    } else if (node instanceof JsonNode.Items list) {
      list.items().forEach(SceneTemplatesTest::assertNotes);
    }
  }

  @Test
  void refusesAnUnknownKindByNamingTheKnown() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> SceneTemplates.text("tentacles"))
            .getMessage();
    assertEquals(
        "kind must be one of suction, jaws, centric, soft, magnet, patches, recording, but was tentacles",
        message);
  }
}
