package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.field.ChoiceType;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.grip.GripKinds;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenePageTest {
  private static final String PAGE = SceneFiles.text(Path.of("../docs/formats/scene.md"));

  @TempDir Path folder;

  @Test
  void itsExampleCanBeRead() {
    int from = PAGE.indexOf("```json\n") + "```json\n".length();
    String example = PAGE.substring(from, PAGE.indexOf("```", from));
    Path file = SceneFiles.write(folder.resolve("example.json"), example);
    assertEquals(2, SceneFiles.read(file, Map.of()).scene().requiredSafety());
  }

  @Test
  void namesEveryFieldOfTheFormat() {
    String schema = SceneSchema.text();
    Matcher fields = Pattern.compile("\"([A-Za-z]+)\" : \\{\\s+\"description\" : ").matcher(schema);
    while (fields.find()) {
      String name = fields.group(1);
      assertTrue(PAGE.contains(name), "the page lacks " + name);
    }
  }

  @Test
  void namesEveryKindOfGrip() {
    for (ObjectSpec kind : GripKinds.specs()) {
      String word = ((ChoiceType) kind.fields().get(0).type()).known().get(0);
      assertTrue(PAGE.contains("| `" + word + "` |"), word);
    }
  }
}
