package io.github.holdpath.viewer.panel;

import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.Curves;
import io.github.holdpath.viewer.state.Shown;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** Draws bands and curves of the timeline; heights are in sizes of a letter. */
final class TimelinePainter {
  /** Line of words above. */
  static final double HEAD = 1.9;

  private static final double BAND = 1.7;
  private static final double MARGIN = 6.2;
  private static final double CURVE = 3.7;
  private static final double FOOT = 1.7;
  private static final double GAP = 0.9;

  /** Margins above are drawn at the upper edge. */
  private static final double MOST_MARGIN = 2;

  private static final String NOT_HELD = "not held";

  private final Graphics2D g;
  private final Font font;
  private final double em;
  private final TimeAxis axis;
  private final int width;
  private final int height;
  private double y;

  /** How high the curves are of their usual height. */
  private double share = 1;

  TimelinePainter(Graphics2D g, Font font, TimeAxis axis, int width, int height) {
    this.g = g;
    this.font = font;
    this.em = font.getSize2D();
    this.axis = axis;
    this.width = width;
    this.height = height;
    g.setColor(new Color(Tones.PAPER));
    g.fillRect(0, 0, width, height);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /** Usual height for a number of jobs; where there is less, margin and curves are lower. */
  static double height(int jobs) {
    return HEAD + BAND * Math.max(1, jobs) + MARGIN + 2 * CURVE + 3 * GAP + FOOT;
  }

  void paint(List<Shown> jobs) {
    y = HEAD * em;
    if (jobs.isEmpty()) {
      return;
    }
    double words = HEAD + BAND * jobs.size() + 3 * GAP + FOOT;
    share = Math.min(1, (height / em - words) / (height(jobs.size()) - words));
    for (Shown job : jobs) {
      band(job, jobs.size() > 1 ? job.name() : "Moves");
    }
    double top = y;
    margin(jobs);
    curve("Speed", "m/s", jobs, Curves::speed);
    curve("Acceleration", "m/s²", jobs, Curves::acceleration);
    borders(jobs.get(0).curves(), top, y);
    foot();
  }

  private void band(Shown job, String name) {
    label(name, y + 1.15 * em, Tones.INK);
    for (Curves.Stretch s : job.curves().stretches()) {
      double x0 = axis.x(s.from());
      double x1 = axis.x(s.to());
      boolean move = s.move().isPresent();
      Rectangle2D box = new Rectangle2D.Double(x0, y + 0.1 * em, x1 - x0, (BAND - 0.2) * em);
      g.setColor(new Color(move ? 0xE4DFD2 : Tones.PAPER));
      g.fill(box);
      g.setColor(new Color(Tones.SHADOW));
      g.setStroke(new BasicStroke(1));
      g.draw(box);
      g.setFont(font.deriveFont((float) (0.9 * em)));
      String text = fitting(s.name(), x1 - x0 - 0.5 * em);
      g.setColor(new Color(move ? Tones.INK : Tones.FAINT_INK));
      g.drawString(text, (float) (x0 + 0.3 * em), (float) (y + 1.18 * em));
    }
    y += BAND * em;
  }

  private String fitting(String text, double room) {
    FontMetrics metrics = g.getFontMetrics();
    if (metrics.stringWidth(text) <= room) {
      return text;
    }
    for (int n = text.length() - 1; n > 0; n--) {
      String s = text.substring(0, n) + "…";
      if (metrics.stringWidth(s) <= room) {
        return s;
      }
    }
    return "";
  }

  private void margin(List<Shown> jobs) {
    y += GAP * em;
    double top = y;
    double bottom = y + MARGIN * share * em;
    double one = bottom - (bottom - top) / MOST_MARGIN;
    label("Margin", top + 1.0 * em, Tones.INK);
    g.setFont(font.deriveFont((float) (0.85 * em)));
    tick("2 and more", top, Tones.FAINT_INK);
    tick("1 required", one, Tones.INK);
    tick("0", bottom, Tones.FAINT_INK);
    colours(jobs.get(0).curves(), top, bottom, one);
    for (int i = 0; i < jobs.size(); i++) {
      line(jobs.get(i).curves().margin(), top, bottom, MOST_MARGIN, i);
    }
    g.setStroke(new BasicStroke((float) (0.13 * em)));
    g.setColor(new Color(Tones.INK));
    g.draw(new Line2D.Double(axis.left(), one, axis.right(), one));
    y = bottom;
  }

  /**
   * Columns below the curve by colour; between curve and the line at 1 hatched where it is short.
   */
  private void colours(Curves curves, double top, double bottom, double one) {
    double[] least = columns(curves.margin());
    Path2D hatched = new Path2D.Double();
    for (int i = 0; i < least.length; i++) {
      if (Double.isNaN(least[i])) {
        continue;
      }
      double x = axis.left() + i;
      double at = bottom - Math.min(MOST_MARGIN, least[i]) / MOST_MARGIN * (bottom - top);
      g.setColor(new Color(MarginStep.of(least[i]).rgb()));
      g.fill(new Rectangle2D.Double(x, at, 1, bottom - at));
      if (least[i] < 1) {
        hatched.append(new Rectangle2D.Double(x, one, 1, bottom - one), false);
      }
    }
    hatch(hatched, one, bottom);
    notHeld(least, column(curves.duration(), least.length), one);
  }

  /** Says so where there is no margin, if there is room. */
  private void notHeld(double[] least, int end, double one) {
    g.setFont(font.deriveFont((float) (0.85 * em)));
    g.setColor(new Color(Tones.FAINT_INK));
    double wide = g.getFontMetrics().stringWidth(NOT_HELD);
    int from = 0;
    for (int i = 0; i <= end; i++) {
      if (i < end && Double.isNaN(least[i])) {
        continue;
      }
      if (i - from > wide + em) {
        double x = axis.left() + (from + i - wide) / 2;
        g.drawString(NOT_HELD, (float) x, (float) (one + 1.6 * em));
      }
      from = i + 1;
    }
  }

  private void hatch(Shape where, double one, double bottom) {
    Shape before = g.getClip();
    g.clip(where);
    g.setStroke(new BasicStroke((float) (0.1 * em)));
    double high = bottom - one;
    for (double x = axis.left() - high; x < axis.right(); x += 0.5 * em) {
      g.setColor(new Color(Tones.PAPER));
      g.draw(new Line2D.Double(x, bottom, x + high, one));
      g.setColor(new Color(Tones.INK));
      g.draw(new Line2D.Double(x + 0.11 * em, bottom, x + 0.11 * em + high, one));
    }
    g.setClip(before);
  }

  /** The least value in each column of pixels; not a number where there is none. */
  private double[] columns(Curves.Curve curve) {
    int n = (int) Math.max(1, Math.ceil(axis.right() - axis.left()));
    double[] least = new double[n];
    Arrays.fill(least, Double.NaN);
    double[] times = curve.times();
    double[] values = curve.values();
    for (int i = 0; i < times.length; i++) {
      if (Double.isNaN(values[i])) {
        continue;
      }
      boolean goesOn = i + 1 < times.length && !Double.isNaN(values[i + 1]);
      int from = column(times[i], n);
      int to = goesOn ? column(times[i + 1], n) : from;
      for (int c = from; c <= to; c++) {
        least[c] = Double.isNaN(least[c]) ? values[i] : Math.min(least[c], values[i]);
      }
    }
    return least;
  }

  private int column(double time, int n) {
    return (int) Math.max(0, Math.min(n - 1, axis.x(time) - axis.left()));
  }

  private void curve(
      String name, String unit, List<Shown> jobs, Function<Curves, Curves.Curve> which) {
    y += GAP * em;
    double top = y;
    double bottom = y + CURVE * share * em;
    double largest =
        jobs.stream().mapToDouble(j -> which.apply(j.curves()).largest()).max().orElse(0);
    double end = largest > 0 ? largest * 1.05 : 1;
    label(name, top + 1.0 * em, Tones.INK);
    g.setFont(font.deriveFont((float) (0.85 * em)));
    g.setColor(new Color(Tones.FAINT_INK));
    g.drawString("in " + unit, (float) (0.8 * em), (float) (top + 2.2 * em));
    for (double v : TimeAxis.ticks(end, 2.5 * share)) {
      tick(Figures.tick(v), bottom - v / end * (bottom - top), Tones.FAINT_INK);
    }
    for (int i = 0; i < jobs.size(); i++) {
      line(which.apply(jobs.get(i).curves()), top, bottom, end, i);
    }
    y = bottom;
  }

  private void line(Curves.Curve curve, double top, double bottom, double end, int which) {
    double[] times = curve.times();
    double[] values = curve.values();
    Path2D path = new Path2D.Double();
    boolean down = false;
    for (int i = 0; i < times.length; i++) {
      if (Double.isNaN(values[i])) {
        down = false;
        continue;
      }
      double at = bottom - Math.min(end, values[i]) / end * (bottom - top);
      if (down) {
        path.lineTo(axis.x(times[i]), at);
      } else {
        path.moveTo(axis.x(times[i]), at);
      }
      down = true;
    }
    float thick = (float) (0.1 * em);
    if (which > 0) {
      // Over a dark colour the dashes need a ground of their own.
      g.setColor(new Color(Tones.PAPER));
      g.setStroke(new BasicStroke(2.6f * thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
      g.draw(path);
    }
    g.setColor(new Color(Tones.INK));
    g.setStroke(which == 0 ? new BasicStroke(thick) : dashes(thick));
    g.draw(path);
  }

  private BasicStroke dashes(float thick) {
    float[] lengths = {(float) (0.6 * em), (float) (0.35 * em)};
    return new BasicStroke(
        1.2f * thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, lengths, 0);
  }

  /** Where moves meet, through all curves. */
  private void borders(Curves curves, double top, double bottom) {
    g.setStroke(new BasicStroke(1));
    g.setColor(new Color((Tones.SHADOW & 0xFFFFFF) | 0x90000000, true));
    for (double t : curves.stops()) {
      g.draw(new Line2D.Double(axis.x(t), top, axis.x(t), bottom));
    }
  }

  private void foot() {
    g.setColor(new Color(Tones.AXIS));
    g.setStroke(new BasicStroke(1));
    g.draw(new Line2D.Double(axis.left(), y, axis.right(), y));
    label("Time", y + 1.3 * em, Tones.INK);
    g.setFont(font.deriveFont((float) (0.85 * em)));
    FontMetrics metrics = g.getFontMetrics();
    g.setColor(new Color(Tones.FAINT_INK));
    for (double t : axis.ticks(6 * em)) {
      String text = Figures.tick(t) + " s";
      double w = metrics.stringWidth(text);
      double x = Math.min(axis.x(t) - w / 2, width - w - 2);
      g.draw(new Line2D.Double(axis.x(t), y, axis.x(t), y + 0.3 * em));
      g.drawString(text, (float) x, (float) (y + 1.3 * em));
    }
  }

  private void label(String text, double base, int rgb) {
    g.setFont(font.deriveFont(Font.BOLD, (float) (0.92 * em)));
    g.setColor(new Color(rgb));
    g.drawString(fitting(text, axis.left() - 1.2 * em), (float) (0.8 * em), (float) base);
  }

  /** A number at the left of a curve, and its line. */
  private void tick(String text, double at, int rgb) {
    double w = g.getFontMetrics().stringWidth(text);
    g.setColor(new Color(Tones.GRID));
    g.setStroke(new BasicStroke(1));
    g.draw(new Line2D.Double(axis.left(), at, axis.right(), at));
    g.setColor(new Color(rgb));
    g.drawString(text, (float) (axis.left() - w - 0.5 * em), (float) (at + 0.32 * em));
  }
}
