package io.github.holdpath.viewer.panel;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.overlay.Overlay;
import io.github.holdpath.viewer.shot.RenderThread;
import io.github.holdpath.viewer.shot.Studio;
import io.github.holdpath.viewer.state.Orbit;
import io.github.holdpath.viewer.state.Pick;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Shown;
import io.github.holdpath.viewer.state.View;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.DoubleConsumer;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.event.MouseInputAdapter;
import org.jspecify.annotations.Nullable;

/**
 * Shows a job in space: the image that the drawing thread made last. A drag turns the scene, with
 * shift or the right button shifts it, the wheel goes nearer, a double click shows all, a click on
 * the path goes to that time.
 */
public final class StageView extends JPanel {
  private static final long serialVersionUID = 1L;

  /** How long nothing must move before the image is drawn smoothly, ms. */
  private static final int REST = 150;

  /** How far from the path one may click, of the size of a letter. */
  private static final double REACH = 0.9;

  private final transient RenderThread render;
  private final transient BiConsumer<StageView, Orbit> turned;
  private final transient DoubleConsumer picked;
  private final transient Timer rest = new Timer(REST, e -> ask(Studio.SMOOTH));
  private transient @Nullable Shown shown;
  private transient @Nullable Orbit orbit;
  private transient @Nullable BufferedImage front;
  private transient Framing framing = StageView::corner;
  private boolean framed = true;
  private transient Show show = Show.DEFAULT;
  private double time;
  private long frames;
  private long lastNanos;

  /** Chooses a camera for a size in pixels. */
  @FunctionalInterface
  public interface Framing {
    /** The camera for what a view shows at its present size. */
    Orbit of(StageView view, Shown shown);
  }

  /**
   * Shows nothing yet.
   *
   * @param render that draws
   * @param turned takes this view and the camera that the user chose with the mouse
   * @param picked takes a time that was clicked on, s
   */
  public StageView(
      RenderThread render, BiConsumer<StageView, Orbit> turned, DoubleConsumer picked) {
    this.render = render;
    this.turned = turned;
    this.picked = picked;
    rest.setRepeats(false);
    setOpaque(true);
    setFocusable(true);
    setPreferredSize(new Dimension(300, 300));
    setMinimumSize(new Dimension(200, 160));
    setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
    Hand hand = new Hand();
    addMouseListener(hand);
    addMouseMotionListener(hand);
    addMouseWheelListener(hand);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            reframe();
          }
        });
  }

  /** Shows a job, from where the camera stands. */
  public void show(Shown job) {
    boolean sameView = shown != null && orbit != null && fit(shown).equals(fit(job));
    shown = job;
    getAccessibleContext().setAccessibleName("The job in space: " + job.name());
    getAccessibleContext().setAccessibleDescription(job.stage().headline().verdict());
    if (sameView) {
      moved();
    } else {
      reframe();
    }
  }

  /** Switches what is shown besides the path. */
  public void show(Show what) {
    show = what;
    moved();
  }

  /** Points that must be in sight of a job. */
  public List<Vec3> fit(Shown job) {
    return job.stage().fit(show);
  }

  /** What is shown; null before the first. */
  public @Nullable Shown shown() {
    return shown;
  }

  /** Goes to a time, s. */
  public void time(double seconds) {
    if (seconds != time) {
      time = seconds;
      moved();
    }
  }

  /** Dress from a camera that stays as the view changes its size. */
  public void look(Orbit from) {
    orbit = from;
    framed = false;
    moved();
  }

  /** Chooses the camera now and whenever the view changes its size. */
  public void frame(Framing how) {
    framing = how;
    framed = true;
    reframe();
  }

  /** Where the camera stands; null before the first job is seen. */
  public @Nullable Orbit orbit() {
    return orbit;
  }

  /** Part of the image for the scene, and the image's size. */
  public View.Area area() {
    return Overlay.markedArea(pixels(getWidth()), pixels(getHeight()), em());
  }

  /** Width of the image, pixels of the screen. */
  public int imageWidth() {
    return pixels(getWidth());
  }

  /** Height of the image, pixels of the screen. */
  public int imageHeight() {
    return pixels(getHeight());
  }

  /** Number of images shown so far. */
  public long frames() {
    return frames;
  }

  /** How long the last image took to draw, ns. */
  public long lastNanos() {
    return lastNanos;
  }

  /** Draws again, as after a change of what is switched on. */
  public void moved() {
    ask(Studio.QUICK);
    rest.restart();
  }

  /** Ends what goes on behind it. */
  public void close() {
    rest.stop();
  }

  private static Orbit corner(StageView v, Shown s) {
    return Orbit.fitted(Orbit.Preset.CORNER, v.fit(s), v.area(), v.imageWidth(), v.imageHeight());
  }

  private void reframe() {
    Shown job = shown;
    if (job == null || getWidth() < 10 || getHeight() < 10) {
      return;
    }
    if (framed || orbit == null) {
      orbit = framing.of(this, job);
    }
    moved();
  }

  private @Nullable View view() {
    Shown job = shown;
    Orbit from = orbit;
    return job == null || from == null || getWidth() < 10 || getHeight() < 10
        ? null
        : from.view(fit(job), imageWidth(), imageHeight());
  }

  private void ask(int samples) {
    View view = view();
    Shown job = shown;
    if (view != null && job != null) {
      render.ask(
          this,
          new RenderThread.Wish(
              job.stage(),
              time,
              show,
              view,
              samples,
              em(),
              (image, nanos) -> SwingUtilities.invokeLater(() -> ready(image, nanos))));
    }
  }

  private void ready(BufferedImage image, long nanos) {
    BufferedImage old = front;
    front = image;
    frames++;
    lastNanos = nanos;
    if (old != null) {
      render.giveBack(old);
    }
    repaint();
  }

  private double scale() {
    return getGraphicsConfiguration() == null
        ? 1
        : getGraphicsConfiguration().getDefaultTransform().getScaleX();
  }

  private int pixels(int side) {
    return Math.max(1, (int) Math.round(side * scale()));
  }

  private double em() {
    return getFont() == null ? 12 : getFont().getSize2D() * scale();
  }

  @Override
  protected void paintComponent(Graphics g) {
    g.setColor(new Color(Tones.PAPER));
    g.fillRect(0, 0, getWidth(), getHeight());
    BufferedImage image = front;
    if (image != null) {
      ((Graphics2D) g)
          .setRenderingHint(
              RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      paint(g, image);
    } else {
      g.setColor(new Color(Tones.FAINT_INK));
      g.setFont(getFont());
      g.drawString("Drawing ...", getFont().getSize(), 2 * getFont().getSize());
    }
  }

  /** As large as the view; until an image of a new size is drawn the old one keeps its shape. */
  private void paint(Graphics g, BufferedImage image) {
    boolean fits = image.getWidth() == imageWidth() && image.getHeight() == imageHeight();
    double share =
        Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
    int width = fits ? getWidth() : (int) (share * image.getWidth());
    int height = fits ? getHeight() : (int) (share * image.getHeight());
    g.drawImage(image, (getWidth() - width) / 2, (getHeight() - height) / 2, width, height, null);
  }

  /** What the mouse does. */
  private final class Hand extends MouseInputAdapter {
    private int x;
    private int y;
    private boolean dragged;

    @Override
    public void mousePressed(MouseEvent e) {
      requestFocusInWindow();
      x = e.getX();
      y = e.getY();
      dragged = false;
    }

    @Override
    public void mouseDragged(MouseEvent e) {
      Orbit from = orbit;
      if (from == null) {
        return;
      }
      dragged = true;
      double across = (e.getX() - x) / (double) getHeight();
      double down = (e.getY() - y) / (double) getHeight();
      x = e.getX();
      y = e.getY();
      boolean shifts = e.isShiftDown() || SwingUtilities.isRightMouseButton(e);
      turned.accept(StageView.this, shifts ? from.panned(across, down) : from.turned(across, down));
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent e) {
      Orbit from = orbit;
      if (from != null) {
        turned.accept(StageView.this, from.zoomed(Math.pow(0.88, e.getPreciseWheelRotation())));
      }
    }

    @Override
    public void mouseClicked(MouseEvent e) {
      if (dragged || !SwingUtilities.isLeftMouseButton(e)) {
        return;
      }
      View view = view();
      Shown job = shown;
      if (view == null || job == null) {
        return;
      }
      OptionalDouble at =
          Pick.at(job.curves(), view, e.getX() * scale(), e.getY() * scale(), REACH * em(), time);
      if (at.isPresent()) {
        picked.accept(at.getAsDouble());
      } else if (e.getClickCount() == 2 && orbit != null) {
        turned.accept(
            StageView.this, orbit.refitted(fit(job), area(), imageWidth(), imageHeight()));
      }
    }
  }
}
