package io.github.holdpath.viewer.overlay;

import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.View;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes words of one image: sizes in em, each on a place of its own. */
final class Pen {
  private static final int GROUND = 0xCCF6F4EE;

  final Graphics2D g;
  final View view;
  final double em;
  final Placer placer;
  private final Map<String, Font> fonts = new HashMap<>();

  Pen(Graphics2D g, View view, double em) {
    this.g = g;
    this.view = view;
    this.em = em;
    this.placer = new Placer(view.width(), view.height());
  }

  FontMetrics font(int style, double size) {
    float points = (float) (size * em);
    g.setFont(
        fonts.computeIfAbsent(
            style + ":" + points, k -> new Font(Font.SANS_SERIF, style, 1).deriveFont(points)));
    return g.getFontMetrics();
  }

  void colour(int rgb) {
    g.setColor(new Color(rgb));
  }

  void stroke(double thick) {
    g.setStroke(new BasicStroke((float) thick));
  }

  void words(String text, double x, double y) {
    g.drawString(text, (float) x, (float) y);
  }

  /** A ground that keeps words readable over bodies, pixels. */
  void ground(double x, double y, double width, double height) {
    g.setColor(new Color(GROUND, true));
    g.fill(new Rectangle2D.Double(x, y, width, height));
  }

  /** Paper over all the image's width down to a place, and below it less and less. */
  void band(double below) {
    Color paper = new Color(Tones.PAPER);
    float fade = (float) (1.6 * em);
    g.setPaint(
        new GradientPaint(
            0,
            (float) below,
            paper,
            0,
            (float) below + fade,
            new Color(Tones.PAPER & 0xFFFFFF, true)));
    g.fill(new Rectangle2D.Double(0, 0, view.width(), below + fade));
  }

  /** A paragraph; tells where the next one begins, pixels from the upper edge. */
  double line(String text, double x, double y, int style, double size, int rgb) {
    double at = y;
    for (String part : wrap(text, style, size)) {
      font(style, size);
      colour(rgb);
      words(part, x, at);
      at += 1.45 * size * em;
    }
    return at;
  }

  List<String> wrap(String text, int style, double size) {
    FontMetrics metrics = font(style, size);
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

  /** A name beside a spot, on a ground that keeps it readable over lines; tells where. */
  Optional<Rectangle2D> label(
      View.Spot s, String text, double size, double gap, int rings, int rgb) {
    FontMetrics metrics = font(Font.PLAIN, size);
    double width = metrics.stringWidth(text) + 0.5 * em;
    Optional<Rectangle2D> place = placer.beside(s.x(), s.y(), width, 1.35 * em * size, gap, rings);
    place.ifPresent(
        box -> {
          ground(box.getX(), box.getY(), box.getWidth(), box.getHeight());
          colour(rgb);
          words(text, box.getX() + 0.25 * em, box.getY() + 1.05 * em * size);
        });
    return place;
  }

  /** A thin line from a spot to the nearest edge of a box. */
  void lead(View.Spot s, Rectangle2D box, double free, int rgb) {
    double endX = Math.max(box.getMinX(), Math.min(box.getMaxX(), s.x()));
    double endY = Math.max(box.getMinY(), Math.min(box.getMaxY(), s.y()));
    double away = Math.hypot(endX - s.x(), endY - s.y());
    if (away <= free) {
      return;
    }
    colour(rgb);
    g.draw(
        new Line2D.Double(
            s.x() + (endX - s.x()) * free / away,
            s.y() + (endY - s.y()) * free / away,
            endX,
            endY));
  }
}
