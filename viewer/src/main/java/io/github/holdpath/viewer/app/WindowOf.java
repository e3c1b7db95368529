package io.github.holdpath.viewer.app;

import io.github.holdpath.sim.cli.CallException;
import io.github.holdpath.sim.cli.Main;
import io.github.holdpath.sim.cli.SceneOptions;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.viewer.desk.Desk;
import io.github.holdpath.viewer.shot.NoGraphicsException;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Shown;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Opens the window on one or two scenes and waits until it is closed. */
final class WindowOf {
  private WindowOf() {}

  /**
   * Judges, shows and waits.
   *
   * @param options of the first scene
   * @param second file of the scene beside it
   * @param show what is shown besides the path
   * @throws CallException if a file is wrong, there is no display, or nothing can draw
   * @throws SceneException with all faults of a scene
   */
  static void jobs(SceneOptions options, Optional<String> second, Show show)
      throws CallException, SceneException, InterruptedException {
    Shown one = shown(options);
    Optional<Shown> two = Optional.empty();
    if (second.isPresent()) {
      two = Optional.of(shown(options.beside(second.get())));
    }
    demandDisplay();
    try {
      Desk desk = Desk.open(one, two, show, Main.version());
      Map<String, String> values = new LinkedHashMap<>(options.values());
      options.required().ifPresent(r -> values.put("grip/requiredSafety", Double.toString(r)));
      desk.change(Path.of(options.file()), values);
      desk.awaitClosed();
    } catch (NoGraphicsException e) {
      throw new CallException(String.valueOf(e.getMessage()));
    }
  }

  private static Shown shown(SceneOptions options) throws CallException, SceneException {
    LoadedScene loaded = options.load();
    return Shown.of(
        Shown.nameOf(Path.of(options.file())),
        HoldStudy.run(loaded.scene(), options.requiredSafety(loaded)));
  }

  private static void demandDisplay() throws CallException {
    String why = "no display is set";
    try {
      if (!GraphicsEnvironment.isHeadless()) {
        Toolkit.getDefaultToolkit();
        GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
        return;
      }
    } catch (HeadlessException | AWTError e) {
      why = "the display does not answer";
    } catch (UnsatisfiedLinkError | NoClassDefFoundError e) {
      why = "this Java has no windows; install a whole JDK, not a headless one";
    }
    throw new CallException(
        "there is no display to open a window on ("
            + why
            + "); start it on a desktop, or make a picture: --picture FILE");
  }
}
