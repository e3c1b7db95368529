package io.github.holdpath.viewer.shot;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.overlay.Overlay;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;

/**
 * Whole pictures of one scene, or of two side by side in one scale and with one clock: what is
 * drawn with the words over it. Made once for a size, it draws any instant.
 */
public final class Picture {
  /** Height of an image whose lines are one pixel wide, pixels. */
  private static final double LINE_HEIGHT = 1100;

  private final Studio studio;
  private final List<Take> takes;
  private final Show show;
  private final List<View> views;
  private final int width;
  private final int height;

  /**
   * For a size.
   *
   * @param studio that draws
   * @param takes one scene, or two
   * @param show what is shown besides the path
   * @param times instants that will be asked for, s, so that all of them fit; empty for the
   *     tightest
   * @param width of the image, pixels
   * @param height of the image, pixels
   */
  public Picture(
      Studio studio, List<Take> takes, Show show, List<Double> times, int width, int height) {
    this(studio, takes, show, times, Optional.empty(), width, height);
  }

  /**
   * The same, seen along a direction.
   *
   * @param studio that draws
   * @param takes one scene, or two
   * @param show what is shown besides the path
   * @param times instants that will be asked for, s, so that all of them fit; empty for the
   *     tightest
   * @param along unit vector from the camera, world axes; empty for the one that shows most
   * @param width of the image, pixels
   * @param height of the image, pixels
   */
  public Picture(
      Studio studio,
      List<Take> takes,
      Show show,
      List<Double> times,
      Optional<Vec3> along,
      int width,
      int height) {
    if (takes.isEmpty() || takes.size() > 2) {
      throw new IllegalArgumentException("takes must be one or two, but are " + takes.size());
    }
    this.studio = studio;
    this.takes = List.copyOf(takes);
    this.show = show;
    this.width = width;
    this.height = height;
    this.views = views(this.takes, show, times, along, width / takes.size(), height);
  }

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
    return of(studio, scene, scene.worst().time(), Show.DEFAULT, width, height);
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
    BufferedImage image = studio.drawLarge(scene.at(now, show, view), view, lineWidth(height));
    Overlay.draw(image, scene, now, show, view, "");
    return image;
  }

  /** The same camera for both, moved with the middle of what it looks at. */
  private static List<View> views(
      List<Take> takes,
      Show show,
      List<Double> times,
      Optional<Vec3> along,
      int width,
      int height) {
    List<Vec3> points = new ArrayList<>(takes.get(0).fit(show, times));
    Vec3 shift = Vec3.ZERO;
    if (takes.size() == 2) {
      List<Vec3> others = takes.get(1).fit(show, times);
      shift = middle(others).minus(middle(points));
      for (Vec3 p : others) {
        points.add(p.minus(shift));
      }
    }
    View.Area area = Overlay.sceneArea(width, height);
    View one =
        along
            .map(forward -> View.fitted(points, forward, area, width, height))
            .orElseGet(() -> View.fitted(points, area, width, height));
    if (takes.size() == 1) {
      return List.of(one);
    }
    Vec3 eye = one.eye().plus(shift);
    return List.of(one, new View(eye, one.forward(), one.halfAngle(), width, height, one.depth()));
  }

  private static Vec3 middle(List<Vec3> points) {
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Vec3 p : points) {
      double[] v = {p.x(), p.y(), p.z()};
      for (int k = 0; k < 3; k++) {
        least[k] = Math.min(least[k], v[k]);
        most[k] = Math.max(most[k], v[k]);
      }
    }
    return new Vec3((least[0] + most[0]) / 2, (least[1] + most[1]) / 2, (least[2] + most[2]) / 2);
  }

  /**
   * The image at one instant.
   *
   * @param time s, the same for both scenes; empty for each one's tightest instant. A motion that
   *     is over by then stays at its end
   */
  public BufferedImage at(OptionalDouble time) throws NoFontsException {
    List<BufferedImage> halves = new ArrayList<>();
    for (int i = 0; i < takes.size(); i++) {
      halves.add(one(takes.get(i), views.get(i), time));
    }
    if (halves.size() == 1) {
      return halves.get(0);
    }
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setColor(new Color(Tones.PAPER));
      g.fillRect(0, 0, width, height);
      g.drawImage(halves.get(0), 0, 0, null);
      g.drawImage(halves.get(1), width / 2, 0, null);
      g.setColor(new Color(Tones.SHADOW));
      int thick = lineWidth(height);
      g.fillRect(width / 2 - thick / 2, 0, thick, height);
    } finally {
      g.dispose();
    }
    return image;
  }

  private BufferedImage one(Take take, View view, OptionalDouble time) throws NoFontsException {
    Stage stage = take.stage();
    Playback.Instant now = stage.playback().at(time.orElse(stage.worst().time()));
    Show shown = show.withLine(time.isPresent());
    BufferedImage image = studio.drawLarge(stage.at(now, shown, view), view, lineWidth(height));
    NoFontsException.unless(Picture::measureALetter);
    Overlay.draw(image, stage, now, shown, view, takes.size() == 2 ? take.name() : "");
    return image;
  }

  private static void measureALetter() {
    new Font(Font.SANS_SERIF, Font.PLAIN, 12)
        .getStringBounds("x", new FontRenderContext(null, true, true));
  }

  private static int lineWidth(int height) {
    return (int) Math.max(1, Math.round(height / LINE_HEIGHT));
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
