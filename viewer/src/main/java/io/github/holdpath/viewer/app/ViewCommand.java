package io.github.holdpath.viewer.app;

import io.github.holdpath.sim.cli.CallException;
import io.github.holdpath.sim.cli.SceneOptions;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.viewer.shot.Take;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code view}: pictures of a scene, its path coloured by margin, and other files to take away. */
@Command(
    name = "view",
    description = {
      "Where along the path is it tight? Makes a picture, an animated picture or a 3D file, the path"
          + " coloured by margin. Two scenes come side by side in one scale and with one clock."
    },
    footer = {
      "",
      "Example: holdpath view scenes/cartons.json --picture cartons.png --size 1280x800",
      "         holdpath view slow.json fast.json --animation both.png --slow 0.25",
      "",
      "Exit status: 0 all files are made, 2 the call or a file is wrong or nothing can draw.",
      "The verdict is in the picture; to branch on it in a script use check."
    })
final class ViewCommand implements Callable<Integer> {
  private final PrintWriter out;

  @Mixin private SceneOptions options = new SceneOptions();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "OTHER",
      description = "A second scene to show beside the first; --set and --require go for both.")
  private @Nullable String other;

  @Mixin private TakeAway files = new TakeAway();

  ViewCommand(PrintWriter out) {
    this.out = out;
  }

  @Override
  public Integer call() throws Exception {
    if (!files.any()) {
      throw new CallException(
          "view needs one of --picture FILE, --animation FILE and --glb FILE; name what to write");
    }
    List<String> scenes = other == null ? List.of(options.file()) : List.of(options.file(), other);
    files.check(scenes);
    List<Take> takes = new ArrayList<>();
    for (String scene : scenes) {
      LoadedScene loaded = options.load(scene);
      takes.add(
          Take.of(
              HoldStudy.run(loaded.scene(), options.requiredSafety(loaded)), name(scene, takes)));
    }
    files.write(takes, out);
    return 0;
  }

  /** Tells two files of one name apart too. */
  private static String name(String scene, List<Take> before) {
    return (before.isEmpty() ? "A, " : "B, ") + Path.of(scene).getFileName();
  }
}
