package io.github.holdpath.sim.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person sees who gives a broken scene file to the program. */
class BrokenFilesTest {
  private static final Path BROKEN = Path.of("src/test/resources/broken");
  private static final int AT_LEAST = 60;

  @TempDir Path folder;

  static List<String> files() throws IOException {
    try (Stream<String> lines = Files.lines(BROKEN.resolve("expectations.txt"))) {
      return lines
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(line -> line.split("\\|", 2)[0].strip() + "|" + line.split("\\|", 3)[1].strip())
          .distinct()
          .toList();
    }
  }

  @Test
  void thereAreEnoughOfThem() throws IOException {
    assertTrue(files().size() >= AT_LEAST, "only " + files().size());
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachEndsWithTwoAMessageForEachFaultAndNothingWritten(String row) throws IOException {
    String file = row.substring(0, row.indexOf('|'));
    int faults = Integer.parseInt(row.substring(row.indexOf('|') + 1));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Path result = folder.resolve("result.json");
    int status =
        Main.run(
            new Console(new PrintWriter(out), new PrintWriter(err), false),
            "check",
            BROKEN.resolve(file).toString(),
            "--json",
            result.toString(),
            "--csv",
            folder.resolve("samples.csv").toString());
    assertEquals(ExitStatus.WRONG_INPUT, status, err.toString());
    assertEquals("", out.toString());
    assertEquals(faults + 1, err.toString().lines().count(), err.toString());
    assertTrue(err.toString().lines().toList().get(faults).endsWith("nothing was written."));
    try (Stream<Path> left = Files.list(folder)) {
      assertFalse(left.findAny().isPresent(), "something was written");
    }
  }
}
