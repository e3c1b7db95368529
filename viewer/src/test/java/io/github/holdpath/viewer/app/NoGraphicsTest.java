package io.github.holdpath.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.cli.Main;
import io.github.holdpath.viewer.Demo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program where neither graphics library is found. */
class NoGraphicsTest {
  /** Far above what a start takes. */
  private static final long PATIENCE_SECONDS = 120;

  @Test
  void namesThePackagesAndWritesNothing(@TempDir Path folder) throws Exception {
    Path picture = folder.resolve("a.png");
    Path space = folder.resolve("a.glb");
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Dorg.lwjgl.egl.libname=nowhere",
                    "-Dorg.lwjgl.opengl.libname=nowhere",
                    "-cp",
                    System.getProperty("java.class.path"),
                    Main.class.getName(),
                    "view",
                    Demo.file("peaches").toString(),
                    "--picture",
                    picture.toString(),
                    "--glb",
                    space.toString()))
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "did not end in time");
    String words = Files.readString(said);
    assertEquals(2, process.exitValue(), words);
    assertTrue(words.contains("apt-get install libegl1 libgl1-mesa-dri"), words);
    assertFalse(words.contains("\tat "), words);
    assertFalse(Files.exists(picture));
    assertFalse(Files.exists(space));
  }
}
