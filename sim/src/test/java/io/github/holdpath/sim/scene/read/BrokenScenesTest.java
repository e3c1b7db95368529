package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.holdpath.sim.scene.Fault;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of mistake that a person makes in a scene file, each with its file. */
class BrokenScenesTest {
  private static final Path BROKEN = Path.of("src/test/resources/broken");

  /** Words of the program's inside that no user should meet. */
  private static final Pattern JARGON =
      Pattern.compile("Exception|Token|jackson|java\\.|\\bnull\\b(?!;)|Optional|\\bat io\\.");

  /** What marks the clause that says what would be right. */
  private static final Pattern REMEDY =
      Pattern.compile(
          "write|did you mean|for example|known|keep|take|give|put|look|needs|begins with|belongs|use |leave"
              + "|holds? |save|name |no file|must be|must start|missing|which the file lacks");

  @TempDir Path folder;

  /**
   * A row of the table.
   *
   * @param file that is broken
   * @param count of its faults
   * @param pointer of one fault
   * @param fragment of that fault's message
   */
  record Expected(String file, int count, String pointer, String fragment) {}

  static List<Expected> table() {
    return SceneFiles.text(BROKEN.resolve("expectations.txt"))
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split("\\|", 4))
        .map(
            p ->
                new Expected(
                    p[0].strip(),
                    Integer.parseInt(p[1].strip()),
                    p[2].strip(),
                    p.length > 3 ? p[3].strip() : ""))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("table")
  void hasExactlyTheStatedFaults(Expected expected) {
    List<Fault> faults = SceneFiles.faults(BROKEN.resolve(expected.file()), Map.of());
    String all = faults.stream().map(Fault::toLine).collect(Collectors.joining("\n"));
    assertEquals(expected.count(), faults.size(), all);
    assertTrue(
        faults.stream()
            .anyMatch(
                f ->
                    f.pointer().equals(expected.pointer())
                        && f.message().contains(expected.fragment())),
        all);
    for (Fault f : faults) {
      assertAll(
          () -> assertFalse(JARGON.matcher(f.message()).find(), f.toLine()),
          () -> assertTrue(REMEDY.matcher(f.message()).find(), f.toLine()),
          () -> assertTrue(f.message().length() < 500, f.toLine()));
    }
  }

  @Test
  void tableNamesEveryFileOfTheFolder() throws IOException {
    try (Stream<Path> files = Files.list(BROKEN)) {
      List<String> there =
          files
              .map(p -> String.valueOf(p.getFileName()))
              .filter(n -> n.endsWith(".json"))
              .sorted()
              .toList();
      assertEquals(there, table().stream().map(Expected::file).sorted().toList());
      assertTrue(there.size() >= 60);
    }
  }

  @Test
  void placesAreExact() {
    List<Fault> faults = SceneFiles.faults(BROKEN.resolve("many-faults.json"), Map.of());
    assertEquals(
        List.of("3:3", "4:25", "7:13", "15:17", "18:27", "21:10", "24:15"),
        faults.stream().map(f -> f.line() + ":" + f.column()).toList());
    Fault comma = SceneFiles.faults(BROKEN.resolve("trailing-comma.json"), Map.of()).get(0);
    assertEquals(29, comma.line());
    assertEquals(43, comma.column());
    assertTrue(
        comma.toLine().startsWith(BROKEN.resolve("trailing-comma.json") + ":29:43: a comma"));
  }

  private String only(Path file) {
    List<Fault> faults = SceneFiles.faults(file, Map.of());
    assertEquals(1, faults.size());
    assertEquals(0, faults.get(0).line());
    return faults.get(0).message();
  }

  @Test
  void refusesAHugeFileByItsSize() throws IOException {
    Path file = folder.resolve("huge.json");
    try (RandomAccessFile f = new RandomAccessFile(file.toFile(), "rw")) {
      f.setLength(200_000_000);
    }
    assertTrue(only(file).contains("larger than 20 MB"));
  }

  @Test
  void refusesAMissingFileAndAFolder() {
    assertTrue(only(folder.resolve("none.json")).contains("there is no such file"));
    assertTrue(only(folder).contains("this is a folder"));
  }

  @Test
  void refusesAFileThatMayNotBeRead() {
    Path file = SceneFiles.write(folder.resolve("locked.json"), "{}");
    assertTrue(file.toFile().setReadable(false));
    assumeFalse(Files.isReadable(file), "this user may read everything");
    assertTrue(only(file).contains("cannot be read"));
  }
}
