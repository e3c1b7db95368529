package io.github.holdpath.viewer.app;

import io.github.holdpath.sim.cli.CallException;
import io.github.holdpath.sim.cli.Main;
import io.github.holdpath.sim.cli.Outputs;
import io.github.holdpath.sim.cli.Seconds;
import io.github.holdpath.viewer.export.GltfScene;
import io.github.holdpath.viewer.shot.Animation;
import io.github.holdpath.viewer.shot.NoFontsException;
import io.github.holdpath.viewer.shot.NoGraphicsException;
import io.github.holdpath.viewer.shot.Picture;
import io.github.holdpath.viewer.shot.Studio;
import io.github.holdpath.viewer.shot.Take;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The files that {@code view} makes: which, of what instant and how large. */
final class TakeAway {
  private static final String WORST = "worst";

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Write a picture (PNG); it replaces a file of that name.")
  @Nullable String picture;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "The picture's instant, as 0.878s, or worst (unless given).")
  private String at = WORST;

  @Option(
      names = "--animation",
      paramLabel = "FILE",
      description = "Write one cycle as an animated picture (APNG, which browsers play).")
  @Nullable String animation;

  @Option(
      names = "--frames-per-second",
      paramLabel = "N",
      description = "Of the animation, from 1 to 60, 25 unless given.")
  private double rate = 25;

  @Option(
      names = "--slow",
      paramLabel = "SHARE",
      description = "Slow motion of the animation: 0.25 takes four times as long as the cycle.")
  private double slow = 1;

  @Option(
      names = "--glb",
      paramLabel = "FILE",
      description = "Write path, part and motion as a 3D file (glTF 2.0 binary, metres).")
  @Nullable String glb;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      description =
          "Pixels of the picture and the animation; unless given 1280x800 and 960x600, of two"
              + " scenes 1920x800 and 1440x600.")
  @Nullable String size;

  /** Whether any file is wanted. */
  boolean any() {
    return picture != null || animation != null || glb != null;
  }

  /**
   * Refuses options that cannot be, before anything is computed.
   *
   * @param scenes files that are read
   */
  void check(List<String> scenes) throws CallException {
    Outputs targets = new Outputs();
    for (String name : names()) {
      targets.add(name, new byte[0]);
    }
    for (String scene : scenes) {
      targets.keep(Path.of(scene));
    }
    if (glb != null && scenes.size() > 1) {
      throw new CallException("--glb takes one scene; write two files in two calls");
    }
    if (size != null) {
      ImageSize.of(size);
    }
    if (!(rate >= 1 && rate <= 60)) {
      throw new CallException("--frames-per-second " + rate + ": give a number from 1 to 60");
    }
    if (!(slow >= 0.01 && slow <= 1)) {
      throw new CallException("--slow " + slow + ": give a number from 0.01 to 1, as 0.25");
    }
    if (!at.equals(WORST)) {
      instant();
    }
  }

  private List<String> names() {
    List<String> names = new ArrayList<>();
    for (String name : new @Nullable String[] {picture, animation, glb}) {
      if (name != null) {
        names.add(name);
      }
    }
    return names;
  }

  private OptionalDouble instant() throws CallException {
    return at.equals(WORST)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Seconds.of("--at", at, "0.878s or worst"));
  }

  /** Makes all files and writes them, then says so. */
  void write(List<Take> takes, PrintWriter out) throws CallException, IOException {
    // No window is opened, so none of the desktop's parts may be asked for.
    System.setProperty("java.awt.headless", "true");
    double cycle = takes.stream().mapToDouble(Take::duration).max().orElseThrow();
    Animation frames = new Animation(cycle, slow, rate);
    limits(frames, takes.size());
    Outputs outputs = new Outputs();
    List<String> done = new ArrayList<>();
    if (glb != null) {
      outputs.add(glb, GltfScene.glb(takes.get(0).stage(), Main.version()));
      done.add("Wrote " + glb + ".");
    }
    if (picture != null || animation != null) {
      try (Studio studio = Studio.open()) {
        draw(studio, takes, frames, outputs, done);
      } catch (NoGraphicsException | NoFontsException e) {
        throw new CallException(String.valueOf(e.getMessage()));
      } catch (OutOfMemoryError e) {
        throw new CallException("the image needs more memory than Java has; make it smaller");
      }
    }
    outputs.write();
    done.forEach(out::println);
  }

  private void draw(
      Studio studio, List<Take> takes, Animation frames, Outputs outputs, List<String> done)
      throws CallException, IOException, NoFontsException {
    if (picture != null) {
      ImageSize pixels =
          ImageSize.of(size != null ? size : takes.size() == 1 ? "1280x800" : "1920x800");
      OptionalDouble time = instant();
      List<Double> shown = time.isPresent() ? List.of(time.getAsDouble()) : List.of();
      Picture drawn = new Picture(studio, takes, shown, pixels.width(), pixels.height());
      outputs.add(picture, Picture.png(drawn.at(time)));
      done.add("Wrote " + picture + ", " + pixels + " pixels.");
    }
    if (animation != null) {
      ImageSize pixels =
          ImageSize.of(size != null ? size : takes.size() == 1 ? "960x600" : "1440x600");
      outputs.add(animation, frames.apng(studio, takes, pixels.width(), pixels.height()));
      done.add("Wrote " + animation + ", " + pixels + " pixels, " + frames.frames() + " frames.");
    }
  }

  private void limits(Animation frames, int scenes) throws CallException {
    OptionalDouble time = instant();
    if (picture != null && time.isPresent() && time.getAsDouble() > frames.cycle()) {
      throw new CallException(
          "--at "
              + at
              + ": the motion"
              + (scenes == 1 ? "" : " of both")
              + " ends at "
              + (Math.floor(frames.cycle() * 1e4) / 1e4)
              + "s; give a time up to that");
    }
    if (animation != null && frames.frames() > Animation.MOST_FRAMES) {
      throw new CallException(
          "--animation would have "
              + frames.frames()
              + " frames, more than "
              + Animation.MOST_FRAMES
              + "; give a lower --frames-per-second or a higher --slow");
    }
  }
}
