package io.github.holdpath.viewer.desk;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.edit.SaveException;
import io.github.holdpath.viewer.edit.WholeFile;
import io.github.holdpath.viewer.export.GltfScene;
import io.github.holdpath.viewer.panel.Notice;
import io.github.holdpath.viewer.shot.Animation;
import io.github.holdpath.viewer.shot.NoFontsException;
import io.github.holdpath.viewer.shot.NoGraphicsException;
import io.github.holdpath.viewer.shot.Picture;
import io.github.holdpath.viewer.shot.Studio;
import io.github.holdpath.viewer.shot.Take;
import io.github.holdpath.viewer.state.Show;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;

/** Makes files of what the window shows, beside the window's own work. */
final class Exports {
  private static final int WIDE = 1920;
  private static final int HIGH = 1080;
  private static final int FRAME_WIDE = 960;
  private static final int FRAME_HIGH = 600;
  private static final double RATE = 25;

  private final Notice notice;
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "holdpath export");
            thread.setDaemon(true);
            return thread;
          });

  Exports(Notice notice) {
    this.notice = notice;
  }

  /** What is made. */
  enum Kind {
    /** A still of the instant that is shown. */
    PICTURE("Picture", "png"),
    /** One cycle. */
    ANIMATION("Animated picture", "png"),
    /** The first job in space. */
    SPACE("3D file", "glb");

    private final String title;
    private final String ending;

    Kind(String title, String ending) {
      this.title = title;
      this.ending = ending;
    }

    String title() {
      return title;
    }

    /** Of the file's name. */
    String ending() {
      return ending;
    }
  }

  /**
   * Makes a file.
   *
   * @param kind what
   * @param takes one job, or two beside each other
   * @param show what is shown besides the path
   * @param time instant of a picture, s
   * @param along unit vector from the camera, world axes; empty for the one that shows most
   * @param version of the program, for the file
   * @param target where; a file that is there is replaced
   */
  void make(
      Kind kind,
      List<Take> takes,
      Show show,
      double time,
      Optional<Vec3> along,
      String version,
      Path target) {
    notice.say("Writing " + target + " ...", List.of());
    worker.execute(
        () -> {
          String said = made(kind, takes, show, time, along, version, target);
          SwingUtilities.invokeLater(() -> notice.say(said));
        });
  }

  private static String made(
      Kind kind,
      List<Take> takes,
      Show show,
      double time,
      Optional<Vec3> along,
      String version,
      Path target) {
    try {
      byte[] bytes =
          kind == Kind.SPACE
              ? GltfScene.glb(takes.get(0).stage(), version)
              : drawn(kind, takes, show, time, along);
      WholeFile.write(bytes, target, true);
      return "Wrote " + target + ".";
    } catch (SaveException | NoGraphicsException | NoFontsException e) {
      return String.valueOf(e.getMessage());
    } catch (IOException e) {
      return "could not make " + target + ": " + e.getMessage();
    } catch (OutOfMemoryError e) {
      return "the picture needs more memory than Java has; close other windows and try again";
    }
  }

  private static byte[] drawn(
      Kind kind, List<Take> takes, Show show, double time, Optional<Vec3> along)
      throws NoGraphicsException, NoFontsException, IOException {
    try (Studio studio = Studio.open()) {
      if (kind == Kind.PICTURE) {
        Picture picture = new Picture(studio, takes, show, List.of(time), along, WIDE, HIGH);
        return Picture.png(picture.at(OptionalDouble.of(time)));
      }
      double cycle = takes.stream().mapToDouble(Take::duration).max().orElseThrow();
      return new Animation(cycle, 1, RATE)
          .apng(studio, takes, show, along, takes.size() * FRAME_WIDE * 3 / 4, FRAME_HIGH);
    }
  }

  /** Ends after what is being written. */
  void close() {
    worker.shutdown();
  }

  /** Waits until what is being written is complete. */
  void await() throws InterruptedException {
    worker.awaitTermination(1, TimeUnit.HOURS);
  }
}
