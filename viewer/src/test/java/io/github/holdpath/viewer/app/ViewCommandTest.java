package io.github.holdpath.viewer.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.cli.CallException;
import io.github.holdpath.sim.cli.CommandSource;
import io.github.holdpath.viewer.Demo;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ServiceLoader;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class ViewCommandTest {
  private final StringWriter out = new StringWriter();

  private CommandLine line() {
    PrintWriter writer = new PrintWriter(out, true);
    return new CommandLine(new ViewCommand(writer))
        .setOut(writer)
        .setErr(writer)
        .setExecutionExceptionHandler(
            (e, c, r) -> {
              if (!(e instanceof CallException)) {
                throw e;
              }
              writer.println(e.getMessage());
              return 2;
            });
  }

  @Test
  void isFoundAsAService() {
    assertTrue(
        ServiceLoader.load(CommandSource.class).stream()
            .anyMatch(p -> p.type() == ViewerCommands.class));
  }

  private void refused(String words, String... arguments) {
    assertEquals(2, line().execute(arguments), out.toString());
    assertTrue(out.toString().contains(words), out.toString());
  }

  private static String file(String scene) {
    return Demo.file(scene).toString();
  }

  @Test
  void saysWhatItOpensAndMakes() {
    String usage = line().getUsageMessage();
    assertTrue(usage.contains("Opens a window"), usage);
    assertTrue(usage.contains("3D file"), usage);
  }

  @Test
  void readsASize() throws CallException {
    assertEquals(new ImageSize(1280, 800), ImageSize.of("1280x800"));
    assertEquals(new ImageSize(320, 8192), ImageSize.of("320X8192"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "1280", "1280x", "319x800", "1280x8193", "1280x800x3", "-1280x800"})
  void refusesWhatIsNoSize(String size) {
    CallException e = assertThrows(CallException.class, () -> ImageSize.of(size));
    assertTrue(String.valueOf(e.getMessage()).contains("as 1280x800"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"--picture", "--animation", "--glb"})
  void keepsTheSceneItself(String option, @TempDir Path folder) throws Exception {
    Path scene = folder.resolve("a.json");
    Files.writeString(scene, "{}");
    refused("is the scene itself", scene.toString(), option, scene.toString());
    assertEquals("{}", Files.readString(scene));
    String other = file("cartons");
    refused("is the scene itself", other, scene.toString(), "--picture", scene.toString());
  }

  @Test
  void refusesOptionsOutOfRangeBeforeItReads() {
    String none = "no-such-scene.json";
    refused("--size is that of a picture or an animation", none, "--size=800x600");
    refused("--size is that of a picture or an animation", none, "--glb=a.glb", "--size=800x600");
    refused("--at is the instant of a picture", none, "--at=0.5s");
    refused("--without legs: known are robot, tool, part", none, "--without=robot,legs");
    refused("--drop soon: give a time with its unit", none, "--picture=a.png", "--drop=soon");
    refused("--slow 0.0: give a number from 0.01 to 1", none, "--animation", "a.png", "--slow=0");
    refused("--frames-per-second 61.0: give", none, "--animation=a.png", "--frames-per-second=61");
    refused("--at soon: give a time with its unit", none, "--picture=a.png", "--at=soon");
    refused("--glb takes one scene", none, none, "--glb=a.glb");
    refused("is named for two outputs", none, "--glb=a.png", "--picture=a.png");
  }

  @Test
  void refusesAnInstantBehindTheEndAndTooManyFrames() {
    refused("the motion ends at", file("cartons"), "--picture=a.png", "--at=100s");
    refused(
        "give a lower --frames-per-second",
        file("cartons"),
        "--animation=a.png",
        "--slow=0.01",
        "--frames-per-second=60");
  }

  @Test
  void writesTheSame3dFileAgainWithoutAGraphicsLibrary(@TempDir Path folder) throws Exception {
    Path one = folder.resolve("one.glb");
    Path two = folder.resolve("two.glb");
    assertEquals(0, line().execute(file("cartons"), "--glb", one.toString()), out.toString());
    assertEquals(0, line().execute(file("cartons"), "--glb", two.toString()), out.toString());
    assertTrue(out.toString().contains("Wrote " + one), out.toString());
    assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
  }

  @Test
  void leavesNothingBehindWhereTheTargetIsAFolder(@TempDir Path folder) throws Exception {
    Path target = Files.createDirectory(folder.resolve("out"));
    refused("is a folder; name a file to write", file("peaches"), "--glb", target.toString());
    refused(
        "does not exist; make it first",
        file("peaches"),
        "--glb",
        folder.resolve("none/a.glb").toString());
    try (Stream<Path> left = Files.walk(folder)) {
      assertEquals(2, left.count());
    }
  }
}
