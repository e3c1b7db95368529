package io.github.holdpath.viewer.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.cli.CallException;
import io.github.holdpath.sim.cli.CommandSource;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class ViewCommandTest {
  private final StringWriter out = new StringWriter();

  private CommandLine line() {
    PrintWriter writer = new PrintWriter(out, true);
    return new CommandLine(new ViewCommand(writer)).setOut(writer).setErr(writer);
  }

  @Test
  void isFoundAsAService() {
    assertTrue(
        ServiceLoader.load(CommandSource.class).stream()
            .anyMatch(p -> p.type() == ViewerCommands.class));
  }

  @Test
  void saysWhatItOpensAndMakes() {
    String usage = line().getUsageMessage();
    assertTrue(usage.contains("Opens a window"), usage);
    assertTrue(usage.contains("makes a picture instead"), usage);
  }

  @Test
  void refusesASizeWithoutAPictureAndTwoScenesInOne() {
    assertEquals("--size is that of a picture", refusal("a.json", "--size", "800x600"));
    assertEquals("a picture shows one scene", refusal("a.json", "b.json", "--picture", "new.png"));
  }

  private String refusal(String... args) {
    String[] said = {""};
    CommandLine line = line();
    line.setExecutionExceptionHandler(
        (e, l, r) -> {
          said[0] = String.valueOf(e.getMessage()).split(";", 2)[0];
          return 2;
        });
    assertEquals(2, line.execute(args));
    return said[0];
  }

  @Test
  void readsASize() throws CallException {
    assertArrayEquals(new int[] {1280, 800}, ViewCommand.pixels("1280x800"));
    assertArrayEquals(new int[] {320, 4096}, ViewCommand.pixels("320X4096"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "1280", "1280x", "319x800", "1280x4097", "1280x800x3", "-1280x800"})
  void refusesWhatIsNoSize(String size) {
    CallException e = assertThrows(CallException.class, () -> ViewCommand.pixels(size));
    assertTrue(String.valueOf(e.getMessage()).contains("as 1280x800"));
  }

  @Test
  void keepsTheSceneItself(@TempDir Path folder) throws Exception {
    Path scene = folder.resolve("a.json");
    Files.writeString(scene, "{}");
    line().execute(scene.toString(), "--picture", scene.toString());
    assertEquals("{}", Files.readString(scene));
    assertTrue(out.toString().contains("is the scene itself"), out.toString());
  }
}
