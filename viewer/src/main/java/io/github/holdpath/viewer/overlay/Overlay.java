package io.github.holdpath.viewer.overlay;

import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.PathRuns;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import io.github.holdpath.viewer.state.Waypoint;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Words over an image: headline above, caution below, the meaning of the colours at the left, names
 * of places and the mark of the worst one in the scene. All sizes follow the image's.
 */
public final class Overlay {
  /** Text size per image height, and its bounds, pixels. */
  private static final double TEXT = 0.0175;

  private static final double LEAST_TEXT = 10;

  private final Graphics2D g;
  private final Stage scene;
  private final View view;
  private final double em;
  private final Placer placer;

  private Overlay(Graphics2D g, Stage scene, View view, double em) {
    this.g = g;
    this.scene = scene;
    this.view = view;
    this.em = em;
    this.placer = new Placer(view.width(), view.height());
  }

  private static double em(int width, int height) {
    return Math.max(LEAST_TEXT, TEXT * Math.min(height, width * 0.7));
  }

  /**
   * The part of an image that the words leave to the scene.
   *
   * @param width of the image, pixels
   * @param height of the image, pixels
   */
  public static View.Area sceneArea(int width, int height) {
    double em = em(width, height);
    return new View.Area(13 * em, 10 * em, width - 9 * em, height - 7 * em);
  }

  /**
   * The part of an image that legend and marks leave to the scene.
   *
   * @param width of the image, pixels
   * @param height of the image, pixels
   * @param em size of the words, pixels
   */
  public static View.Area markedArea(int width, int height, double em) {
    double left = Math.min(11 * em, width * 0.3);
    double across = Math.min(7 * em, width * 0.15);
    double down = Math.min(3 * em, height * 0.2);
    return new View.Area(left, down, width - across, height - down);
  }

  /** Draws the words of a scene over its image. */
  public static void draw(BufferedImage image, Stage scene, View view) {
    on(image, scene, view, em(view.width(), view.height()), Overlay::draw);
  }

  /**
   * Draws legend, names and the mark of the worst place, for a window that tells headline and
   * caution elsewhere.
   *
   * @param image to draw on
   * @param scene what it shows
   * @param view from where
   * @param em size of the words, pixels
   */
  public static void drawMarks(BufferedImage image, Stage scene, View view, double em) {
    on(image, scene, view, em, Overlay::marks);
  }

  private static void on(
      BufferedImage image, Stage scene, View view, double em, Consumer<Overlay> what) {
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      what.accept(new Overlay(g, scene, view, em));
    } finally {
      g.dispose();
    }
  }

  private void draw() {
    double below = headline();
    caution();
    legend(Math.max(10.5 * em, below + 0.9 * em));
    inScene();
  }

  private void marks() {
    legend(1.6 * em);
    inScene();
  }

  private void inScene() {
    for (PathRuns.Link link : scene.links()) {
      View.Spot s = view.project(link.from());
      placer.take(new Rectangle2D.Double(s.x() - em / 2, s.y() - em / 2, em, em));
    }
    worst();
    scene.waypoints().forEach(this::waypoint);
    axes();
    scene.floor().forEach(this::floorMark);
  }

  /** Tells where it ends, pixels from the upper edge. */
  private double headline() {
    Headline h = scene.headline();
    double y = 2.2 * em;
    y = line(h.title() + " — " + h.subject(), em, y, Font.PLAIN, 1.05, Tones.FAINT_INK);
    y = line(h.verdict(), em, y + 0.35 * em, Font.BOLD, 1.45, verdictRgb(h));
    if (h.tightest().isPresent()) {
      y = line(h.tightest().get(), em, y, Font.PLAIN, 1.05, Tones.INK);
    }
    if (h.swing().isPresent()) {
      y = line(h.swing().get(), em, y, Font.PLAIN, 1.05, Tones.INK);
    }
    placer.take(new Rectangle2D.Double(0, 0, view.width(), y));
    return y;
  }

  private static int verdictRgb(Headline h) {
    return (h.holds() ? MarginStep.WELL_ABOVE : MarginStep.BELOW).rgb();
  }

  private void caution() {
    List<String> lines = wrap("Caution: " + scene.headline().caution(), 0.85);
    double y = view.height() - 1.25 * em * (lines.size() - 1) * 0.9 - 0.8 * em;
    placer.take(new Rectangle2D.Double(0, y - em, view.width(), view.height()));
    for (String text : lines) {
      font(Font.PLAIN, 0.85);
      g.setColor(new Color(Tones.FAINT_INK));
      g.drawString(text, (float) em, (float) y);
      y += 1.25 * em * 0.9;
    }
  }

  private double line(String text, double x, double y, int style, double size, int rgb) {
    double at = y;
    for (String part : wrap(text, style == Font.BOLD ? size * 1.1 : size)) {
      font(style, size);
      g.setColor(new Color(rgb));
      g.drawString(part, (float) x, (float) at);
      at += 1.45 * size * em;
    }
    return at;
  }

  private List<String> wrap(String text, double size) {
    FontMetrics metrics = font(Font.PLAIN, size);
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && metrics.stringWidth(longer) > view.width() - 2 * em) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** From the best step down to the worst, as high in the image as in the meaning. */
  private void legend(double start) {
    double x = em;
    double y = start;
    double top = y - 1.2 * em;
    font(Font.BOLD, 0.95);
    g.setColor(new Color(Tones.INK));
    g.drawString("Margin", (float) x, (float) y);
    font(Font.PLAIN, 0.85);
    g.setColor(new Color(Tones.FAINT_INK));
    g.drawString("factor / required", (float) x, (float) (y + 1.2 * em));
    y += 2.1 * em;
    MarginStep[] steps = MarginStep.values();
    for (int i = steps.length - 1; i >= 0; i--) {
      y = legendRow(y, steps[i].rgb(), range(steps[i]), steps[i].passes() ? 0.75 : 1.1);
      if (steps[i] == MarginStep.JUST_ABOVE) {
        g.setColor(new Color(Tones.INK));
        g.setStroke(new BasicStroke((float) (em * 0.08)));
        g.draw(new Line2D.Double(x, y - 0.02 * em, x + 9 * em, y - 0.02 * em));
        y += 0.35 * em;
      }
    }
    y = legendRow(y + 0.3 * em, Tones.NOT_HELD, "not held", 0.4);
    placer.take(new Rectangle2D.Double(0, top, 10.5 * em, y - top));
  }

  private double legendRow(double y, int rgb, String text, double thick) {
    g.setColor(new Color(rgb));
    double middle = y + 0.65 * em;
    if (thick > 1) {
      for (int k = 0; k < 3; k++) {
        double x = em + 0.85 * em * k;
        g.fill(new Rectangle2D.Double(x, middle - 0.3 * em, 0.85 * em, 0.6 * em));
        g.fill(
            new Rectangle2D.Double(x + 0.2 * em, middle - thick * em / 2, 0.45 * em, thick * em));
      }
    } else {
      g.fill(new Rectangle2D.Double(em, middle - thick * em / 2, 2.55 * em, thick * em));
    }
    font(Font.PLAIN, 0.9);
    g.setColor(new Color(Tones.INK));
    g.drawString(text, (float) (4.2 * em), (float) (middle + 0.33 * em));
    return y + 1.4 * em;
  }

  private static String range(MarginStep step) {
    if (step.from() == 0) {
      return "below " + step.to();
    }
    return Double.isInfinite(step.to())
        ? step.from() + " and more"
        : step.from() + " to " + step.to();
  }

  private void worst() {
    View.Spot s = view.project(scene.worst());
    Color colour = new Color(scene.worstStep().rgb());
    ring(s, 1.1 * em, new Color(Tones.PAPER), 0.42 * em);
    ring(s, 1.1 * em, colour, 0.2 * em);
    Optional<String> mark = scene.headline().mark();
    if (mark.isEmpty()) {
      return;
    }
    FontMetrics metrics = font(Font.BOLD, 1.0);
    double width = metrics.stringWidth(mark.get()) + 1.2 * em;
    Optional<Rectangle2D> place = placer.beside(s.x(), s.y(), width, 1.9 * em, 1.8 * em, 8);
    if (place.isEmpty()) {
      return;
    }
    Rectangle2D box = place.get();
    double endX = Math.max(box.getMinX(), Math.min(box.getMaxX(), s.x()));
    double endY = Math.max(box.getMinY(), Math.min(box.getMaxY(), s.y()));
    double away = Math.hypot(endX - s.x(), endY - s.y());
    g.setStroke(new BasicStroke((float) (0.12 * em)));
    g.setColor(colour);
    g.draw(
        new Line2D.Double(
            s.x() + (endX - s.x()) * 1.1 * em / away,
            s.y() + (endY - s.y()) * 1.1 * em / away,
            endX,
            endY));
    g.setColor(new Color(Tones.PAPER));
    g.fill(box);
    g.setColor(colour);
    g.draw(box);
    g.setColor(new Color(Tones.INK));
    g.drawString(mark.get(), (float) (box.getX() + 0.6 * em), (float) (box.getY() + 1.3 * em));
  }

  private void ring(View.Spot s, double radius, Color colour, double thick) {
    g.setColor(colour);
    g.setStroke(new BasicStroke((float) thick));
    g.draw(new Ellipse2D.Double(s.x() - radius, s.y() - radius, 2 * radius, 2 * radius));
  }

  private void waypoint(Waypoint w) {
    View.Spot s = view.project(w.place());
    double r = 0.28 * em;
    g.setColor(new Color(Tones.PAPER));
    g.fill(new Ellipse2D.Double(s.x() - r, s.y() - r, 2 * r, 2 * r));
    g.setStroke(new BasicStroke((float) (0.12 * em)));
    g.setColor(new Color(Tones.INK));
    g.draw(new Ellipse2D.Double(s.x() - r, s.y() - r, 2 * r, 2 * r));
    label(s, w.label(), 0.95, 0.7 * em, 6, Tones.INK);
  }

  private void axes() {
    String[] names = {"x", "y", "z"};
    for (int k = 0; k < scene.axes().size(); k++) {
      View.Spot s = view.project(scene.axes().get(k));
      label(s, names[k], 0.95, 0.3 * em, 3, Tones.AXIS);
    }
  }

  /** A name beside a spot, on a ground that keeps it readable over lines. */
  private void label(View.Spot s, String text, double size, double gap, int rings, int rgb) {
    FontMetrics metrics = font(Font.PLAIN, size);
    double width = metrics.stringWidth(text) + 0.5 * em;
    placer
        .beside(s.x(), s.y(), width, 1.35 * em * size, gap, rings)
        .ifPresent(
            box -> {
              g.setColor(new Color(0xCCF6F4EE, true));
              g.fill(box);
              g.setColor(new Color(rgb));
              g.drawString(
                  text, (float) (box.getX() + 0.25 * em), (float) (box.getY() + 1.05 * em * size));
            });
  }

  /** A number of the floor, at the nearer end of its line that is in sight and free. */
  private void floorMark(Stage.FloorMark mark) {
    View.Spot near = view.project(mark.one());
    View.Spot far = view.project(mark.other());
    if (near.depth() > far.depth()) {
      View.Spot swap = near;
      near = far;
      far = swap;
    }
    FontMetrics metrics = font(Font.PLAIN, 0.8);
    double width = metrics.stringWidth(mark.text());
    for (View.Spot s : List.of(near, far)) {
      Rectangle2D box =
          new Rectangle2D.Double(s.x() - width / 2, s.y() + 0.3 * em, width, 1.1 * em);
      if (placer.free(box)) {
        placer.take(box);
        g.setColor(new Color(Tones.FAINT_INK));
        g.drawString(mark.text(), (float) box.getX(), (float) (box.getY() + 0.85 * em));
        return;
      }
    }
  }

  private FontMetrics font(int style, double size) {
    g.setFont(new Font(Font.SANS_SERIF, style, 1).deriveFont((float) (size * em)));
    return g.getFontMetrics();
  }
}
