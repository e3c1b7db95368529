package io.github.holdpath.viewer.overlay;

import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.sim.report.InstantLine;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.ForceArrows;
import io.github.holdpath.viewer.state.ForceKind;
import io.github.holdpath.viewer.state.PathRuns;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import io.github.holdpath.viewer.state.Waypoint;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Words over an image: headline above, caution below, the meaning of colours and arrows at the
 * left, names of places, values of forces and the mark of the worst place in the scene. All sizes
 * follow the image's.
 */
public final class Overlay {
  /** Text size per image height, and its bounds, pixels. */
  private static final double TEXT = 0.0175;

  private static final double LEAST_TEXT = 10;

  private final BufferedImage image;
  private final Graphics2D g;
  private final Stage scene;
  private final Playback.Instant now;
  private final Show show;
  private final View view;
  private final String name;
  private final double em;
  private final Pen pen;
  private final Placer placer;

  private Overlay(
      BufferedImage image,
      Graphics2D g,
      Stage scene,
      Playback.Instant now,
      Show show,
      View view,
      String name,
      double em) {
    this.image = image;
    this.g = g;
    this.scene = scene;
    this.now = now;
    this.show = show;
    this.view = view;
    this.name = name;
    this.em = em;
    this.pen = new Pen(g, view, em);
    this.placer = pen.placer;
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

  /** Draws the words of a scene over its image, as usually shown where it is tightest. */
  public static void draw(BufferedImage image, Stage scene, View view) {
    draw(image, scene, scene.playback().at(scene.worst().time()), Show.DEFAULT, view, "");
  }

  /**
   * Draws the words of a scene over its image.
   *
   * @param image to draw on
   * @param scene what is shown
   * @param now the instant that is shown, of the scene's playback
   * @param show what is shown besides the path
   * @param view from where
   * @param name before the title, to tell two scenes apart; empty for none
   */
  public static void draw(
      BufferedImage image, Stage scene, Playback.Instant now, Show show, View view, String name) {
    double em = em(view.width(), view.height());
    on(image, g -> new Overlay(image, g, scene, now, show, view, name, em).draw());
  }

  /**
   * Draws legend, names and the mark of the worst place, for a window that tells headline and
   * caution elsewhere.
   *
   * @param image to draw on
   * @param scene what it shows
   * @param now the instant that is shown, of the scene's playback
   * @param show what is shown besides the path
   * @param view from where
   * @param em size of the words, pixels
   */
  public static void drawMarks(
      BufferedImage image, Stage scene, Playback.Instant now, Show show, View view, double em) {
    on(image, g -> new Overlay(image, g, scene, now, show, view, "", em).marks());
  }

  private static void on(BufferedImage image, Consumer<Graphics2D> what) {
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      what.accept(g);
    } finally {
      g.dispose();
    }
  }

  /** Time, move, factor, margin and mode of an instant in one line, to be placed elsewhere. */
  public static String line(Stage scene, Playback.Instant now, Show show) {
    return scene.flies(now, show)
        ? InstantLine.gone(scene.scene(), now)
        : InstantLine.of(scene.scene(), scene.safety(), now);
  }

  private void draw() {
    double below = headline();
    double above = caution();
    if (show.line()) {
      line(above);
    }
    inScene(Math.max(10.5 * em, below + 0.9 * em));
  }

  private void marks() {
    illustration(view.height());
    inScene(1.6 * em);
  }

  private void inScene(double top) {
    List<ForceArrows.Arrow> arrows =
        scene.forces(now, show) ? scene.arrows().arrows(now.forces()) : List.of();
    Legend legend = new Legend(pen);
    double y = legend.margins(top, show.asItWas() && scene.twin().isPresent());
    legend.forces(y + 1.6 * em, scene.arrows(), arrows);
    path();
    arrows.forEach(this::hidden);
    if (show.labels()) {
      worst();
    }
    arrows.forEach(this::force);
    flight();
    if (show.labels()) {
      scene.waypoints().forEach(this::waypoint);
      axes();
    }
    scene.marks().forEach(this::floorMark);
  }

  /** Takes the path's places, one for each half letter: every label is compared with them. */
  private void path() {
    double lastX = Double.NEGATIVE_INFINITY;
    double lastY = Double.NEGATIVE_INFINITY;
    for (PathRuns.Link link : scene.links()) {
      View.Spot s = view.project(link.from());
      if (Math.hypot(s.x() - lastX, s.y() - lastY) >= em / 2) {
        placer.take(new Rectangle2D.Double(s.x() - em / 2, s.y() - em / 2, em, em));
        lastX = s.x();
        lastY = s.y();
      }
    }
  }

  /** Tells where it ends, pixels from the upper edge. Bodies behind it fade out. */
  private double headline() {
    pen.band(headlineWords());
    return headlineWords();
  }

  private double headlineWords() {
    Headline h = scene.headline();
    double y = 2.2 * em;
    String before = name.isEmpty() ? "" : name + ": ";
    y =
        pen.line(
            before + h.title() + " — " + h.subject(), em, y, Font.PLAIN, 1.05, Tones.FAINT_INK);
    y = pen.line(h.verdict(), em, y + 0.35 * em, Font.BOLD, 1.45, verdictRgb(h));
    if (h.tightest().isPresent()) {
      y = pen.line(h.tightest().get(), em, y, Font.PLAIN, 1.05, Tones.INK);
    }
    if (h.swing().isPresent()) {
      y = pen.line(h.swing().get(), em, y, Font.PLAIN, 1.05, Tones.INK);
    }
    placer.take(new Rectangle2D.Double(0, 0, view.width(), y));
    return y;
  }

  private static int verdictRgb(Headline h) {
    return (h.holds() ? MarginStep.WELL_ABOVE : MarginStep.BELOW).rgb();
  }

  /** Tells where it begins, pixels from the upper edge. */
  private double caution() {
    double above =
        upwards("Caution: " + scene.headline().caution(), view.height(), Tones.FAINT_INK);
    return illustration(above);
  }

  /** What the flight is and is not; tells where it begins. */
  private double illustration(double below) {
    return scene
        .flight()
        .filter(f -> show.drop())
        .map(f -> upwards(InstantLine.of(f.drop()), below, Tones.INK))
        .orElse(below);
  }

  /** A paragraph that ends above a place; tells where it begins. */
  private double upwards(String text, double below, int rgb) {
    List<String> lines = pen.wrap(text, Font.PLAIN, 0.85);
    double first = below - 1.25 * em * 0.9 * (lines.size() - 1) - 0.8 * em;
    placer.take(new Rectangle2D.Double(0, first - em, view.width(), below - first + em));
    pen.ground(0, first - 1.2 * em, view.width(), below - first + 1.2 * em);
    paragraph(lines, first, rgb);
    return first - em;
  }

  private void paragraph(List<String> lines, double from, int rgb) {
    double y = from;
    for (String text : lines) {
      pen.font(Font.PLAIN, 0.85);
      pen.colour(rgb);
      pen.words(text, em, y);
      y += 1.25 * em * 0.9;
    }
  }

  /** The line of the instant, with a swatch of the margin's colour, above the caution. */
  private void line(double below) {
    String text = line(scene, now, show);
    double y = below - 0.4 * em;
    FontMetrics metrics = pen.font(Font.BOLD, 1.2);
    double width = metrics.stringWidth(text) + 3.2 * em;
    placer.take(new Rectangle2D.Double(0, y - 1.6 * em, width, 2 * em));
    pen.ground(0, y - 1.4 * em, width, 2 * em);
    pen.colour(
        now.first()
            .map(f -> MarginStep.of(f.factor() / scene.safety()).rgb())
            .orElse(Tones.NOT_HELD));
    g.fill(new Rectangle2D.Double(em, y - 0.9 * em, em, em));
    pen.colour(Tones.INK);
    pen.words(text, 2.5 * em, y);
  }

  private void worst() {
    View.Spot s = view.project(scene.worst().grip().position());
    int rgb = scene.worstStep().rgb();
    double room = 1.35 * em;
    placer.take(new Rectangle2D.Double(s.x() - room, s.y() - room, 2 * room, 2 * room));
    ring(s, 1.1 * em, Tones.PAPER, 0.42 * em);
    ring(s, 1.1 * em, rgb, 0.2 * em);
    Optional<String> mark = scene.headline().mark();
    if (mark.isEmpty()) {
      return;
    }
    FontMetrics metrics = pen.font(Font.BOLD, 1.0);
    double width = metrics.stringWidth(mark.get()) + 1.2 * em;
    Optional<Rectangle2D> place = placer.beside(s.x(), s.y(), width, 1.9 * em, 1.8 * em, 8);
    if (place.isEmpty()) {
      return;
    }
    Rectangle2D box = place.get();
    pen.stroke(0.12 * em);
    pen.lead(s, box, 1.1 * em, rgb);
    pen.colour(Tones.PAPER);
    g.fill(box);
    pen.colour(rgb);
    g.draw(box);
    pen.colour(Tones.INK);
    pen.words(mark.get(), box.getX() + 0.6 * em, box.getY() + 1.3 * em);
  }

  private void ring(View.Spot s, double radius, int rgb, double thick) {
    pen.colour(rgb);
    pen.stroke(thick);
    g.draw(new Ellipse2D.Double(s.x() - radius, s.y() - radius, 2 * radius, 2 * radius));
  }

  /** Dots where something, as the path, lies before the shaft of an arrow. */
  private void hidden(ForceArrows.Arrow a) {
    if (a.kind() == ForceKind.MOMENT) {
      return;
    }
    View.Spot from = view.project(a.from());
    View.Spot to = view.project(a.to());
    double way = Math.hypot(to.x() - from.x(), to.y() - from.y());
    double r = 0.13 * em;
    for (double at = 0; at < way; at += 5 * r) {
      double x = from.x() + (to.x() - from.x()) * at / way;
      double y = from.y() + (to.y() - from.y()) * at / way;
      if (covered(x, y, a.kind().rgb())) {
        pen.colour(Tones.PAPER);
        g.fill(new Ellipse2D.Double(x - 1.5 * r, y - 1.5 * r, 3 * r, 3 * r));
        pen.colour(a.kind().rgb());
        g.fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
      }
    }
  }

  /** Whether a pixel has the colour of a step of the path, and not that of an arrow. */
  private boolean covered(double x, double y, int rgb) {
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    if (column < 0 || row < 0 || column >= image.getWidth() || row >= image.getHeight()) {
      return false;
    }
    int there = image.getRGB(column, row) & 0xFFFFFF;
    return there != rgb
        && (there == Tones.NOT_HELD
            || Arrays.stream(MarginStep.values()).anyMatch(s -> s.rgb() == there));
  }

  /** Name and value beside the tip of an arrow. */
  private void force(ForceArrows.Arrow a) {
    View.Spot s = view.project(a.to());
    String text = a.kind().label() + " " + Legend.number(a.value()) + " " + a.kind().unit();
    pen.label(s, text, 0.9, 0.7 * em, 8, a.kind().rgb())
        .ifPresent(
            box -> {
              pen.stroke(0.07 * em);
              pen.lead(s, box, 0.5 * em, a.kind().rgb());
            });
  }

  /** Speeds at both ends of the flight. */
  private void flight() {
    scene
        .flight()
        .filter(f -> show.drop())
        .ifPresent(
            f -> {
              View.Spot from = view.project(f.drop().centre(f.drop().leaves()));
              View.Spot to = view.project(f.drop().landing());
              pen.label(from, "illustration: leaves", 0.9, 0.7 * em, 8, Tones.FLIGHT);
              String speed = Legend.number(rounded(f.drop().landingSpeed())) + " m/s, ";
              String energy = Legend.number(rounded(f.drop().landingEnergy())) + " J";
              pen.label(to, "lands: " + speed + energy, 0.9, 0.7 * em, 8, Tones.FLIGHT);
            });
  }

  private static double rounded(double v) {
    return new java.math.BigDecimal(v).round(new java.math.MathContext(2)).doubleValue();
  }

  private void waypoint(Waypoint w) {
    View.Spot s = view.project(w.place());
    double r = 0.28 * em;
    pen.colour(Tones.PAPER);
    g.fill(new Ellipse2D.Double(s.x() - r, s.y() - r, 2 * r, 2 * r));
    pen.stroke(0.12 * em);
    pen.colour(Tones.INK);
    g.draw(new Ellipse2D.Double(s.x() - r, s.y() - r, 2 * r, 2 * r));
    pen.label(s, w.label(), 0.95, 0.7 * em, 6, Tones.INK)
        .ifPresent(
            box -> {
              pen.stroke(0.07 * em);
              pen.lead(s, box, 1.1 * em, Tones.INK);
            });
  }

  private void axes() {
    String[] names = {"x", "y", "z"};
    for (int k = 0; k < scene.axes().size(); k++) {
      View.Spot s = view.project(scene.axes().get(k));
      pen.label(s, names[k], 0.95, 0.3 * em, 3, Tones.AXIS);
    }
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
    FontMetrics metrics = pen.font(Font.PLAIN, 0.8);
    double width = metrics.stringWidth(mark.text());
    for (View.Spot s : List.of(near, far)) {
      Rectangle2D box =
          new Rectangle2D.Double(s.x() - width / 2, s.y() + 0.3 * em, width, 1.1 * em);
      if (placer.free(box)) {
        placer.take(box);
        double edge = 0.15 * em;
        pen.ground(box.getX() - edge, box.getY(), width + 2 * edge, box.getHeight());
        g.setColor(new Color(Tones.FAINT_INK));
        pen.words(mark.text(), box.getX(), box.getY() + 0.85 * em);
        return;
      }
    }
  }
}
