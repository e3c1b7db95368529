package io.github.holdpath.viewer.app;

import io.github.holdpath.sim.cli.SceneOptions;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.viewer.shot.Take;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code view}: a window on a scene, or files to take away, its path coloured by margin. */
@Command(
    name = "view",
    description = {
      "Where along the path is it tight? Opens a window, the path coloured by margin; or makes a"
          + " picture, an animated picture or a 3D file instead, which needs no display. Two"
          + " scenes come side by side in one scale and with one clock."
    },
    footer = {
      "",
      "Example: holdpath view scenes/cartons.json",
      "         holdpath view scenes/cartons.json --picture cartons.png --size 1280x800",
      "         holdpath view slow.json fast.json --animation both.png --slow 0.25",
      "",
      "Exit status: 0 the window was closed or all files are made, 2 the call or a",
      "file is wrong, nothing can draw or there is no display. The verdict is in",
      "window and picture; to branch on it in a script use check."
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
    List<String> scenes = other == null ? List.of(options.file()) : List.of(options.file(), other);
    files.check(scenes);
    if (!files.any()) {
      WindowOf.jobs(options, Optional.ofNullable(other), files.show());
      return 0;
    }
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
