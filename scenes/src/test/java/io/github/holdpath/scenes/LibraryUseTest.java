package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Verdict;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The README's lines of Java compile and do what the README says. */
class LibraryUseTest {
  @Test
  void theLinesOfTheReadme() throws Exception {
    Path folder = Path.of("..");
    // readme: begin
    LoadedScene loaded =
        SceneReader.read(folder.resolve("scenes/cartons.json"), Map.of("grip/friction", "0.4"));
    StudyResult result = HoldStudy.run(loaded.scene(), 2.0);
    System.out.println(result.verdict().label() + ", factor " + result.factor());
    result.segments().stream()
        .filter(s -> s.worst().isPresent())
        .forEach(s -> System.out.println(s.move().name() + ": x" + s.speedHeadroom()));
    // readme: end
    assertEquals(Verdict.DOES_NOT_HOLD, result.verdict());
  }

  @Test
  void theReadmeShowsTheseLines() throws Exception {
    List<String> source =
        Files.readAllLines(Path.of("src/test/java/io/github/holdpath/scenes/LibraryUseTest.java"));
    int begin = source.indexOf("    // readme: begin");
    int end = source.indexOf("    // readme: end");
    String lines =
        String.join(
            "\n", source.subList(begin + 1, end).stream().map(s -> s.substring(4)).toList());
    assertTrue(Files.readString(Path.of("../README.md")).contains(lines), lines);
  }
}
