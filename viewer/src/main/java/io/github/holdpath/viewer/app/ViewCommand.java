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
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code view}: a picture of a scene, its path coloured by margin. */
@Command(
    name = "view",
    description = "Where along the path is it tight? Makes a picture, the path coloured by margin.",
    footer = {
      "",
      "Example: holdpath view scenes/cartons.json --picture cartons.png --size 1280x800",
      "",
      "Exit status: 0 the picture is made, 2 the call or a file is wrong or nothing can draw.",
      "The verdict is in the picture; to branch on it in a script use check."
    })
final class ViewCommand implements Callable<Integer> {
  private static final int LEAST = 320;
  private static final int MOST = 4096;

  private final PrintWriter out;

  @Mixin private SceneOptions options = new SceneOptions();

  @Option(
      names = "--picture",
      required = true,
      paramLabel = "FILE",
      description = "Where to write the picture (PNG); it replaces a file of that name.")
  private String picture = "";

  @Option(
      names = "--size",
      paramLabel = "WxH",
      description = "Width and height in pixels, 1280x800 unless given.")
  private String size = "1280x800";

  ViewCommand(PrintWriter out) {
    this.out = out;
  }

  @Override
  public Integer call() throws Exception {
    int[] pixels = pixels(size);
    Outputs target = new Outputs();
    target.add(picture, new byte[0]);
    target.keep(Path.of(options.file()));
    LoadedScene loaded = options.load();
    StudyResult result = HoldStudy.run(loaded.scene(), options.requiredSafety(loaded));
    Outputs outputs = new Outputs();
    outputs.add(picture, Picture.png(drawn(result, pixels[0], pixels[1])));
    outputs.write();
    out.println("Wrote " + picture + ", " + pixels[0] + " x " + pixels[1] + " pixels.");
    return 0;
  }

  private static BufferedImage drawn(StudyResult result, int width, int height)
      throws CallException {
    // No window is opened, so none of the desktop's parts may be asked for.
    System.setProperty("java.awt.headless", "true");
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
