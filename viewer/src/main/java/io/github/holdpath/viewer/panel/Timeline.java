package io.github.holdpath.viewer.panel;

import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.Curves;
import io.github.holdpath.viewer.state.Shown;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import java.util.function.DoubleConsumer;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.event.MouseInputAdapter;
import org.jspecify.annotations.Nullable;

/**
 * The job over time: moves and waits as a band, below it margin, speed and acceleration, with a
 * cursor at the time that is shown. A click or a drag goes to a time, the mouse reads values.
 */
public final class Timeline extends JPanel {
  private static final long serialVersionUID = 1L;

  /** How long no other draft must come before its curves are drawn, ms. */
  private static final int REST = 60;

  private transient List<Shown> jobs = List.of();
  private transient @Nullable BufferedImage drawn;
  private transient TimeAxis axis = new TimeAxis(0, 0, 0);
  private final transient Timer rest = new Timer(REST, e -> redraw());
  private double time;
  private double hover = Double.NaN;

  /**
   * Shows nothing yet.
   *
   * @param picked takes a time that was clicked on, s
   */
  public Timeline(DoubleConsumer picked) {
    rest.setRepeats(false);
    setOpaque(true);
    setFocusable(true);
    setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
    getAccessibleContext().setAccessibleName("The job over time");
    MouseInputAdapter hand =
        new MouseInputAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            mouseDragged(e);
          }

          @Override
          public void mouseDragged(MouseEvent e) {
            if (SwingUtilities.isLeftMouseButton(e)) {
              picked.accept(axis.time(e.getX()));
            }
            mouseMoved(e);
          }

          @Override
          public void mouseMoved(MouseEvent e) {
            hover = axis.time(e.getX());
            repaint();
          }

          @Override
          public void mouseExited(MouseEvent e) {
            hover = Double.NaN;
            repaint();
          }
        };
    addMouseListener(hand);
    addMouseMotionListener(hand);
  }

  /**
   * Shows one job, or two over each other. The curves of a job that is still being judged wait for
   * a rest, so that the colours of its path need not wait for them.
   */
  public void show(List<Shown> all) {
    boolean waits = !jobs.isEmpty() && all.stream().anyMatch(j -> j.result().isEmpty());
    if (all.size() != jobs.size()) {
      revalidate();
    }
    jobs = List.copyOf(all);
    if (waits) {
      rest.restart();
    } else {
      redraw();
    }
  }

  private void redraw() {
    rest.stop();
    drawn = null;
    repaint();
  }

  /** Moves the cursor, s. */
  public void time(double seconds) {
    getAccessibleContext().setAccessibleDescription(reading(seconds));
    if (seconds != time) {
      time = seconds;
      repaint();
    }
  }

  /** The place of a time, pixels from the left edge. */
  public double place(double seconds) {
    return axis.x(seconds);
  }

  /** What the curves tell at a time, in words. */
  public String reading(double at) {
    StringJoiner all = new StringJoiner("     ");
    for (Shown job : jobs) {
      all.add((jobs.size() > 1 ? job.name() + ": " : "") + reading(job.curves(), at));
    }
    return Figures.seconds(at) + "   " + all;
  }

  private static String reading(Curves c, double time) {
    double t = Math.min(time, c.duration());
    List<Curves.Stretch> here =
        c.stretches().stream().filter(x -> x.from() <= t && t <= x.to()).toList();
    // Where a wait meets a move, what happens is the move's.
    String where =
        here.stream()
            .filter(x -> x.move().isPresent())
            .findFirst()
            .or(() -> here.stream().findFirst())
            .map(Curves.Stretch::name)
            .orElse("");
    OptionalDouble margin = CurveReader.at(c.margin(), t, false);
    return where
        + ", margin "
        + (margin.isPresent() ? Figures.margin(margin.getAsDouble()) : "- (not held)")
        + ", speed "
        + Figures.figure(CurveReader.at(c.speed(), t, true).orElse(0))
        + " m/s, acceleration "
        + Figures.figure(CurveReader.at(c.acceleration(), t, true).orElse(0))
        + " m/s²";
  }

  @Override
  public Dimension getPreferredSize() {
    double em = getFont() == null ? 12 : getFont().getSize2D();
    return new Dimension(900, (int) Math.ceil(TimelinePainter.height(jobs.size()) * em));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      double scale = g.getTransform().getScaleX();
      int width = (int) Math.round(getWidth() * scale);
      int height = (int) Math.round(getHeight() * scale);
      BufferedImage image = drawn;
      if (image == null || image.getWidth() != width || image.getHeight() != height) {
        image = new BufferedImage(Math.max(1, width), Math.max(1, height), 1);
        draw(image, scale);
        drawn = image;
      }
      g.drawImage(image, 0, 0, getWidth(), getHeight(), null);
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      cursor(g);
    } finally {
      g.dispose();
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    drawn = null;
  }

  @Override
  public void setFont(java.awt.Font font) {
    super.setFont(font);
    drawn = null;
  }

  private void draw(BufferedImage image, double scale) {
    Graphics2D g = image.createGraphics();
    try {
      g.scale(scale, scale);
      double em = getFont().getSize2D();
      double duration = jobs.stream().mapToDouble(j -> j.curves().duration()).max().orElse(0);
      axis = new TimeAxis(10 * em, getWidth() - 1.5 * em, duration);
      new TimelinePainter(g, getFont(), axis, getWidth(), getHeight()).paint(jobs);
    } finally {
      g.dispose();
    }
  }

  private void cursor(Graphics2D g) {
    double em = getFont().getSize2D();
    double top = TimelinePainter.HEAD * em;
    if (!Double.isNaN(hover)) {
      g.setColor(new Color(Tones.SHADOW));
      g.draw(new Line2D.Double(axis.x(hover), top, axis.x(hover), getHeight()));
    }
    double x = axis.x(time);
    g.setColor(new Color(Tones.INK));
    g.setStroke(new BasicStroke(2));
    g.draw(new Line2D.Double(x, top, x, getHeight()));
    double r = 0.45 * em;
    g.fillPolygon(
        new int[] {(int) (x - r), (int) (x + r), (int) x},
        new int[] {(int) (top - r), (int) (top - r), (int) (top + r)},
        3);
    g.setFont(getFont());
    g.drawString(
        (Double.isNaN(hover) ? "" : "under the mouse: ")
            + reading(Double.isNaN(hover) ? time : hover),
        (float) axis.left(),
        (float) (1.25 * em));
  }
}
