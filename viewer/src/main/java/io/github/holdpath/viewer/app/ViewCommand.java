package io.github.holdpath.viewer.app;

import io.github.holdpath.sim.cli.CallException;
import io.github.holdpath.sim.cli.Outputs;
import io.github.holdpath.sim.cli.SceneOptions;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.shot.NoGraphicsException;
import io.github.holdpath.viewer.shot.Picture;
import io.github.holdpath.viewer.shot.Studio;
import io.github.holdpath.viewer.state.Stage;
import java.awt.image.BufferedImage;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code view}: a window on a scene, or a picture of it, its path coloured by margin. */
@Command(
    name = "view",
    description = {
      "Where along the path is it tight? Opens a window, the path coloured by margin.",
      "With --picture it makes a picture instead and needs no display."
    },
    footer = {
      "",
      "Example: holdpath view scenes/cartons.json --picture cartons.png --size 1280x800",
      "",
      "Exit status: 0 the window was closed or the picture is made, 2 the call or a",
      "file is wrong, nothing can draw or there is no display. The verdict is in window",
      "and picture; to branch on it in a script use check."
    })
final class ViewCommand implements Callable<Integer> {
  private static final int LEAST = 320;
  private static final int MOST = 4096;
  private static final String HEADLESS = "java.awt.headless";
  private static final String USUAL = "1280x800";

  private final PrintWriter out;

  @Mixin private SceneOptions options = new SceneOptions();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SCENE2",
      description = "A second scene to show beside it, with the same clock; window only.")
  private @Nullable String second;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Where to write a picture (PNG); it replaces a file of that name.")
  private @Nullable String picture;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      description = "Width and height of the picture in pixels, 1280x800 unless given.")
  private @Nullable String size;

  ViewCommand(PrintWriter out) {
    this.out = out;
  }

  @Override
  public Integer call() throws Exception {
    String file = picture;
    if (file != null) {
      picture(file);
      return 0;
    }
    if (size != null) {
      throw new CallException(
          "--size is that of a picture; give --picture FILE with it, or leave it out");
    }
    WindowOf.jobs(options, Optional.ofNullable(second));
    return 0;
  }

  private void picture(String file) throws Exception {
    if (second != null) {
      throw new CallException(
          "a picture shows one scene; leave out " + second + " or make two pictures");
    }
    int[] pixels = pixels(size == null ? USUAL : size);
    Outputs target = new Outputs();
    target.add(file, new byte[0]);
    target.keep(Path.of(options.file()));
    LoadedScene loaded = options.load();
    StudyResult result = HoldStudy.run(loaded.scene(), options.requiredSafety(loaded));
    Outputs outputs = new Outputs();
    outputs.add(file, Picture.png(drawn(result, pixels[0], pixels[1])));
    outputs.write();
    out.println("Wrote " + file + ", " + pixels[0] + " x " + pixels[1] + " pixels.");
  }

  private static BufferedImage drawn(StudyResult result, int width, int height)
      throws CallException {
    // No window is opened, so none of the desktop's parts may be asked for.
    if (System.getProperty(HEADLESS) == null) {
      System.setProperty(HEADLESS, "true");
    }
    Stage scene = Stage.of(result);
    try (Studio studio = Studio.open()) {
      return Picture.of(studio, scene, width, height);
    } catch (NoGraphicsException e) {
      throw new CallException(String.valueOf(e.getMessage()));
    }
  }

  /** Width and height. */
  static int[] pixels(String size) throws CallException {
    String[] sides = size.toLowerCase(Locale.ROOT).split("x", -1);
    if (sides.length == 2 && sides[0].matches("[0-9]{3,4}") && sides[1].matches("[0-9]{3,4}")) {
      int width = Integer.parseInt(sides[0]);
      int height = Integer.parseInt(sides[1]);
      if (Math.min(width, height) >= LEAST && Math.max(width, height) <= MOST) {
        return new int[] {width, height};
      }
    }
    throw new CallException(
        "--size "
            + size
            + ": give width and height in pixels, each from "
            + LEAST
            + " to "
            + MOST
            + ", as 1280x800");
  }
}
