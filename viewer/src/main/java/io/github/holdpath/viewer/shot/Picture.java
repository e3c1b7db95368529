package io.github.holdpath.viewer.shot;

import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.overlay.Overlay;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** A whole picture: the drawn scene with the words over it. */
public final class Picture {
  private Picture() {}

  /** The view of a scene in an image of a size in pixels, as usually shown. */
  public static View view(Stage scene, int width, int height) {
    return view(scene, Show.DEFAULT, width, height);
  }

  /** The same with what is shown besides the path. */
  public static View view(Stage scene, Show show, int width, int height) {
    return View.fitted(scene.fit(show), Overlay.sceneArea(width, height), width, height);
  }

  /** Draws scene and words, with the part where the grip is tightest. */
  public static BufferedImage of(Studio studio, Stage scene, int width, int height) {
    return of(studio, scene, scene.worstTime(), Show.DEFAULT, width, height);
  }

  /**
   * Draws scene and words at an instant.
   *
   * @param studio that draws
   * @param scene what is shown
   * @param time s
   * @param show what is shown besides the path
   * @param width of the image, pixels
   * @param height of the image, pixels
   */
  public static BufferedImage of(
      Studio studio, Stage scene, double time, Show show, int width, int height) {
    View view = view(scene, show, width, height);
    Playback.Instant now = scene.playback().at(time);
    BufferedImage image = studio.draw(scene.at(now, show), view, Studio.SMOOTH);
    Overlay.draw(image, scene, now, show, view);
    return image;
  }

  /** An image as the bytes of a PNG file. */
  public static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    if (!ImageIO.write(image, "png", bytes)) {
      throw new IOException("this Java cannot write PNG");
    }
    return bytes.toByteArray();
  }
}
