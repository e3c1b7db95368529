package io.github.holdpath.viewer.desk;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.panel.FaultsPanel;
import io.github.holdpath.viewer.panel.GivesWay;
import io.github.holdpath.viewer.panel.InputsPanel;
import io.github.holdpath.viewer.panel.Notice;
import io.github.holdpath.viewer.panel.Readout;
import io.github.holdpath.viewer.panel.StageView;
import io.github.holdpath.viewer.panel.Timeline;
import io.github.holdpath.viewer.panel.VerdictStrip;
import io.github.holdpath.viewer.panel.WrappedText;
import io.github.holdpath.viewer.shot.NoGraphicsException;
import io.github.holdpath.viewer.shot.RenderThread;
import io.github.holdpath.viewer.shot.Take;
import io.github.holdpath.viewer.state.Orbit;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Shown;
import io.github.holdpath.viewer.state.Stage;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.GridLayout;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.DoubleConsumer;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;

/**
 * The window. It shows whatever jobs it is given; time and cameras stay as they are when a job is
 * given anew. All methods but {@link #open}, {@link #change} and {@link #awaitClosed} are for the
 * event thread.
 */
public final class Desk {
  private static final String AS_IT_WAS = "as it was";

  private final RenderThread render;
  private final Looks looks;
  private final JFrame frame = new JFrame("Holdpath");
  private final Player player = new Player();
  private final List<StageView> seen = new ArrayList<>();
  private final Cameras cameras = new Cameras(seen);
  private final StageView first;
  private final StageView second;
  private final VerdictStrip[] verdicts = {new VerdictStrip(), new VerdictStrip()};
  private final JPanel stages = new JPanel(new GridLayout(1, 0, 3, 0));
  private final Timeline timeline;
  private final Readout readout = new Readout();
  private final WrappedText caution = new WrappedText("Caution");
  private final Acts acts;
  private final Transport transport;
  private final Columns columns;
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Session session = new Session(this);
  private final Exports exports = new Exports(session.notice());
  private final Files files;
  private final String version;
  private String title = "";
  private @Nullable Shown job;
  private @Nullable Shown asItWas;
  private Show show = Show.DEFAULT;
  private Optional<Shown> other = Optional.empty();
  private boolean comparesWithFirst;

  private Desk(RenderThread render, Looks looks, String version) {
    this.version = version;
    this.files = new Files(this, session);
    this.render = render;
    this.looks = looks;
    DoubleConsumer seek = player::seek;
    this.first = new StageView(render, cameras::turned, seek);
    this.second = new StageView(render, cameras::turned, seek);
    this.timeline = new Timeline(seek);
    this.columns = new Columns(stages, readout);
    this.acts = new Acts(this, player, cameras, looks);
    this.transport = new Transport(player, acts);
    frame.setJMenuBar(acts.menuBar());
    acts.bind(frame.getRootPane());
    // It would move its divider by them.
    columns.free(acts);
    layOut();
    player.listen(this::time);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            files.closeAfterAsking();
          }

          @Override
          public void windowClosed(WindowEvent e) {
            end();
          }
        });
  }

  /**
   * Opens a window with one job, or two beside each other.
   *
   * @param shown what to show
   * @param second what to show beside it
   * @param show what is shown of both besides the path
   * @param version of the program, for files that it makes
   * @throws NoGraphicsException if nothing on this machine can draw
   */
  public static Desk open(Shown shown, Optional<Shown> second, Show show, String version)
      throws NoGraphicsException {
    RenderThread render = RenderThread.start();
    Desk[] made = {};
    try {
      Desk[] out = new Desk[1];
      SwingUtilities.invokeAndWait(
          () -> {
            Looks looks = new Looks();
            looks.begin();
            Desk desk = new Desk(render, looks, version);
            out[0] = desk;
            desk.show(shown);
            desk.beside(second);
            desk.shows(show);
            desk.appear();
          });
      made = out;
      return made[0];
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the window was opened", e);
    } catch (java.lang.reflect.InvocationTargetException e) {
      throw e.getCause() instanceof RuntimeException bug ? bug : new IllegalStateException(e);
    } finally {
      if (made.length == 0) {
        render.close();
      }
    }
  }

  /** Waits until the user has closed the window and its threads have ended. */
  public void awaitClosed() throws InterruptedException {
    closed.await();
    render.close();
    exports.await();
  }

  /** Shows a job in place of the one before; time and camera stay. */
  public void show(Shown shown) {
    boolean begins = job == null;
    job = shown;
    if (begins) {
      asItWas = shown;
      title = shown.name();
    }
    refresh();
    if (begins) {
      cameras.preset(Orbit.Preset.CORNER);
    }
  }

  /** Takes another job as what was there first, to compare with. */
  void first(Shown shown) {
    boolean beside = comparesWithFirst;
    asItWas = shown;
    if (beside) {
      beside(Optional.of(shown.named(AS_IT_WAS)));
      comparesWithFirst = true;
    }
  }

  /**
   * Lets the user change a scene file; its values come into the fields at the left. From any
   * thread.
   *
   * @param file scene file
   * @param values that are set in place of the file's, by pointer
   */
  public void change(Path file, Map<String, String> values) {
    SwingUtilities.invokeLater(() -> session.open(file, values));
  }

  /** What the window is called after. */
  void title(String name) {
    title = name;
    retitle();
  }

  private void retitle() {
    frame.setTitle("Holdpath: " + title + other.map(s -> " and " + s.name()).orElse(""));
  }

  void refreshActs() {
    acts.all().forEach(Act::refresh);
  }

  Session session() {
    return session;
  }

  Files files() {
    return files;
  }

  /** Says one sentence. */
  public Notice notice() {
    return session.notice();
  }

  /** All faults of the scene file. */
  public FaultsPanel faults() {
    return session.faults();
  }

  /** The scene's inputs; empty while only results are shown. */
  public Optional<InputsPanel> inputs() {
    return session.inputs();
  }

  /** Makes a file of what is shown, from where it is seen. */
  void export(Exports.Kind kind, Path target) {
    List<Take> takes =
        jobs().stream().map(j -> new Take(j.stage().forAnotherThread(), j.name())).toList();
    Optional<Vec3> along = Optional.ofNullable(first.orbit()).map(Orbit::forward);
    exports.make(kind, takes, show, player.clock().time(), along, version, target);
  }

  /** Shows or hides the inputs. */
  void changeLeft() {
    columns.changeLeft();
  }

  boolean leftIsShown() {
    return columns.leftIsShown();
  }

  /** Shows another job beside the first, or none. */
  public void beside(Optional<Shown> shown) {
    boolean changes = shown.isPresent() != other.isPresent();
    other = shown;
    comparesWithFirst = false;
    refresh();
    if (changes) {
      // Two views need the room; the sum is one key away.
      columns.showRight(shown.isEmpty() && columns.hasRoom());
      cameras.preset(Orbit.Preset.CORNER);
    }
  }

  /** Puts a part, as fields for the inputs, at the left of the window. */
  public void left(JComponent part) {
    columns.left(part, session.numbers());
  }

  /** The window itself. */
  public JFrame frame() {
    return frame;
  }

  /** The view of the first job. */
  public StageView stageView() {
    return first;
  }

  /** The view beside it. */
  public StageView otherView() {
    return second;
  }

  /** The curves over time. */
  public Timeline timeline() {
    return timeline;
  }

  /** The sum at the time that is shown. */
  public Readout readout() {
    return readout;
  }

  /** Time that is shown, s. */
  public double time() {
    return player.clock().time();
  }

  /** Whether the time runs. */
  public boolean playing() {
    return player.clock().playing();
  }

  /** Everything that can be done. */
  List<Act> acts() {
    return acts.all();
  }

  boolean comparing() {
    return other.isPresent();
  }

  /** Shows the job as it was first beside the present one, or ends that. */
  void compareWithFirst() {
    Shown before = asItWas;
    boolean begins = other.isEmpty() && before != null;
    beside(begins && before != null ? Optional.of(before.named(AS_IT_WAS)) : Optional.empty());
    comparesWithFirst = begins;
  }

  Show shows() {
    return show;
  }

  /** Switches what is shown besides the path. */
  void shows(Show what) {
    boolean drops = what.drop() && !show.drop();
    show = what;
    if (drops) {
      letGo();
    }
    first.show(what);
    second.show(what);
    timeline.show(overTime());
  }

  /**
   * Where the grip holds all along, the part falls from where it is: as if the supply were lost.
   */
  private void letGo() {
    Shown now = job;
    if (now == null || now.stage().flight().isPresent()) {
      return;
    }
    double time = player.clock().time();
    Stage falls = now.stage().withDropAt(time);
    if (falls.flight().isPresent()) {
      show(Shown.of(now.name(), falls, now.result()));
      notice()
          .say(
              String.format(
                  Locale.ROOT,
                  "No factor falls below 1, so nothing leaves the grip by itself. Shown is an"
                      + " illustration of the supply lost at %.3f s.",
                  time));
    } else {
      notice().say("The part is not held at this time; go to a time at which it is.");
    }
  }

  /** Shows or hides the sum at the right. */
  void changeRight() {
    columns.showRight(!columns.rightIsShown());
  }

  boolean rightIsShown() {
    return columns.rightIsShown();
  }

  void toWorst() {
    if (job != null) {
      player.clock().pause();
      player.seek(job.stage().worst().time());
    }
  }

  /** After a change of theme or text size. */
  void redress() {
    timeline.show(overTime());
    seen.forEach(StageView::moved);
    for (VerdictStrip verdict : verdicts) {
      verdict.redress();
    }
    inputs().ifPresent(InputsPanel::redress);
    columns.redress();
    refreshActs();
    frame.revalidate();
  }

  private void layOut() {
    stages.setMinimumSize(new Dimension(300, 200));
    stages.setPreferredSize(new Dimension(900, 520));
    JPanel all = new JPanel(new BorderLayout());
    JPanel top = new JPanel(new BorderLayout());
    top.add(session.notice(), BorderLayout.NORTH);
    top.add(session.faults(), BorderLayout.CENTER);
    all.add(top, BorderLayout.NORTH);
    all.add(columns.whole(), BorderLayout.CENTER);
    all.add(new GivesWay(transport, timeline, caution), BorderLayout.SOUTH);
    frame.setContentPane(all);
  }

  private void appear() {
    Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    frame.setSize(Math.min(1680, room.width), Math.min(980, room.height));
    columns.fit(frame.getWidth());
    frame.setMinimumSize(new Dimension(640, 480));
    frame.setLocationRelativeTo(null);
    frame.setVisible(true);
    first.requestFocusInWindow();
    toWorst();
  }

  private List<Shown> jobs() {
    List<Shown> all = new ArrayList<>();
    if (job != null) {
      all.add(job);
    }
    other.ifPresent(all::add);
    return all;
  }

  /** What the curves show: the job as it was too, where that is seen beside the path. */
  private List<Shown> overTime() {
    List<Shown> all = jobs();
    Shown before = asItWas;
    boolean changed = job != null && job.stage().twin().isPresent();
    if (all.size() == 1 && changed && show.asItWas() && before != null) {
      all.add(before.named(AS_IT_WAS));
    }
    return all;
  }

  private void refresh() {
    Shown shown = job;
    if (shown == null) {
      return;
    }
    boolean two = other.isPresent();
    if (stages.getComponentCount() != (two ? 2 : 1)) {
      rebuild(two);
    }
    first.show(shown);
    verdicts[0].show(shown, two);
    other.ifPresent(second::show);
    other.ifPresent(s -> verdicts[1].show(s, true));
    timeline.show(overTime());
    readout.show(shown);
    caution.setText("Caution: " + shown.stage().headline().caution());
    retitle();
    player.job(
        jobs().stream().mapToDouble(s -> s.curves().duration()).max().orElse(0),
        shown.curves().stops());
  }

  private void rebuild(boolean two) {
    stages.removeAll();
    seen.clear();
    place(verdicts[0], first);
    verdicts[0].levelWith(two ? Optional.of(verdicts[1]) : Optional.empty());
    verdicts[1].levelWith(two ? Optional.of(verdicts[0]) : Optional.empty());
    if (two) {
      place(verdicts[1], second);
    }
    frame.revalidate();
  }

  private void place(VerdictStrip verdict, StageView view) {
    JPanel both = new JPanel(new BorderLayout());
    both.add(verdict, BorderLayout.NORTH);
    both.add(view, BorderLayout.CENTER);
    stages.add(both);
    seen.add(view);
  }

  private void time(double seconds) {
    seen.forEach(v -> v.time(seconds));
    timeline.time(seconds);
    transport.time(seconds);
    readout.time(seconds);
  }

  private void end() {
    player.close();
    first.close();
    second.close();
    readout.close();
    session.close();
    exports.close();
    closed.countDown();
  }

  /** Closes the window as the user does. */
  public void close() {
    frame.dispose();
  }
}
