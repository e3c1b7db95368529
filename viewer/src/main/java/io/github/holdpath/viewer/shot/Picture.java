package io.github.holdpath.viewer.shot;

import io.github.holdpath.viewer.overlay.Overlay;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** A whole picture: the drawn scene with the words over it. */
public final class Picture {
  private Picture() {}

  /** The view of a scene in an image of a size in pixels. */
  public static View view(Stage scene, int width, int height) {
    return View.fitted(scene.fit(), Overlay.sceneArea(width, height), width, height);
  }

  /** Draws scene and words, with the part where the grip is tightest. */
  public static BufferedImage of(Studio studio, Stage scene, int width, int height) {
    View view = view(scene, width, height);
    BufferedImage image =
        studio.draw(scene.at(scene.playback().at(scene.worstTime())), view, Studio.SMOOTH);
    Overlay.draw(image, scene, view);
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
