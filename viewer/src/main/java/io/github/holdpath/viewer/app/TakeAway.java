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
import io.github.holdpath.viewer.state.Show;
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
  private static final String FIRST = "first";
  private static final List<String> PARTS = List.of("robot", "tool", "part", "forces", "labels");

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

  @Option(
      names = "--drop",
      arity = "0..1",
      paramLabel = "TIME",
      fallbackValue = FIRST,
      description =
          "Show as an illustration how the part flies on where it leaves the grip: where the factor"
              + " first falls below 1, or at a time at which the supply is lost, as 1.2s.")
  private @Nullable String drop;

  @Option(
      names = "--without",
      split = ",",
      paramLabel = "WHAT",
      description = "What not to show: robot, tool, part, forces, labels; several with commas.")
  private List<String> without = List.of();

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
      if (picture == null && animation == null) {
        throw new CallException(
            "--size is that of a picture or an animation; name one with --picture or --animation");
      }
      ImageSize.of(size);
    }
    if (!at.equals(WORST) && picture == null) {
      throw new CallException("--at is the instant of a picture; name one with --picture FILE");
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
    for (String what : without) {
      if (!PARTS.contains(what)) {
        throw new CallException("--without " + what + ": known are " + String.join(", ", PARTS));
      }
    }
    dropTime();
  }

  /** When the part is let go; empty for the first instant at which it does not hold, or never. */
  private OptionalDouble dropTime() throws CallException {
    return drop == null || drop.equals(FIRST)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Seconds.of("--drop", drop, "1.2s, or leave it out"));
  }

  /** What is shown besides the path. */
  Show show() {
    return new Show(
        !without.contains("robot"),
        !without.contains("tool"),
        !without.contains("part"),
        true,
        !without.contains("forces"),
        !without.contains("labels"),
        false,
        true,
        drop != null);
  }

  private List<Take> dropped(List<Take> takes) throws CallException {
    if (drop == null) {
      return takes;
    }
    OptionalDouble time = dropTime();
    List<Take> let =
        time.isEmpty() ? takes : takes.stream().map(t -> t.withDropAt(time.getAsDouble())).toList();
    if (let.stream().allMatch(t -> t.stage().flight().isEmpty())) {
      throw new CallException(
          time.isEmpty()
              ? "--drop: no factor falls below 1, so nothing leaves the grip; give a time at which"
                  + " the supply is lost, as --drop 1.2s"
              : "--drop " + drop + ": the part is not held then; give a time at which it is");
    }
    return let;
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
  void write(List<Take> judged, PrintWriter out) throws CallException, IOException {
    // No window is opened, so none of the desktop's parts may be asked for.
    System.setProperty("java.awt.headless", "true");
    List<Take> takes = dropped(judged);
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
      Picture drawn = new Picture(studio, takes, show(), shown, pixels.width(), pixels.height());
      outputs.add(picture, Picture.png(drawn.at(time)));
      done.add("Wrote " + picture + ", " + pixels + " pixels.");
    }
    if (animation != null) {
      ImageSize pixels =
          ImageSize.of(size != null ? size : takes.size() == 1 ? "960x600" : "1440x600");
      outputs.add(animation, frames.apng(studio, takes, show(), pixels.width(), pixels.height()));
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
