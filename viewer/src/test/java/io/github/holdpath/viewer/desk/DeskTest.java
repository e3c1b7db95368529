package io.github.holdpath.viewer.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.edit.Job;
import io.github.holdpath.viewer.edit.JobState;
import io.github.holdpath.viewer.shot.NoGraphicsException;
import io.github.holdpath.viewer.shot.Picture;
import io.github.holdpath.viewer.state.Orbit;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Shown;
import io.github.holdpath.viewer.state.Stage;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import javax.swing.JSlider;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicSliderUI;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The window as a user handles it, by keys and mouse of the desktop. Skipped where there is no
 * display, unless {@code -Dholdpath.demandPictures=true}; {@code xvfb-run} makes one. Remake the
 * picture of the docs with {@code -DwritePictures=true}.
 */
class DeskTest {
  private static final Path SHOWN = Path.of("../docs/pictures/window-cartons.png");
  private static final Path GUIDE = Path.of("../docs/guide/README.md");

  private static final String SLIDER = "Acceleration, slider";

  /** Enough for a busy machine, ms. */
  private static final long PATIENCE = 60_000;

  private @Nullable Desk opened;
  private @Nullable Robot made;

  @BeforeAll
  static void needsADisplay() {
    if (!GraphicsEnvironment.isHeadless()) {
      return;
    }
    String why = "no display to open a window on; run under xvfb-run -a";
    if (Boolean.getBoolean("holdpath.demandPictures")) {
      throw new AssertionError(why);
    }
    abort(why);
  }

  @BeforeEach
  void makesARobot() throws Exception {
    Robot robot = new Robot();
    robot.setAutoDelay(40);
    made = robot;
  }

  @AfterEach
  void closes() throws Exception {
    Desk desk = opened;
    if (desk != null) {
      SwingUtilities.invokeAndWait(desk::close);
      desk.awaitClosed();
    }
  }

  private Robot robot() {
    return java.util.Objects.requireNonNull(made);
  }

  private Desk open(Shown one, Optional<Shown> two) throws Exception {
    try {
      Desk desk = Desk.open(one, two, Show.DEFAULT, "test");
      opened = desk;
      until("an image", () -> desk.stageView().frames() > 0);
      click(desk.stageView(), new Point(4, 4), InputEvent.BUTTON1_DOWN_MASK);
      until("the keyboard", () -> desk.stageView().isFocusOwner());
      return desk;
    } catch (NoGraphicsException e) {
      if (Boolean.getBoolean("holdpath.demandPictures")) {
        throw new AssertionError(e);
      }
      return abort(e.getMessage());
    }
  }

  private static Shown cartons() {
    return Shown.of("cartons", Demo.judged("cartons"));
  }

  private static void until(String what, BooleanSupplier is) throws InterruptedException {
    long end = System.currentTimeMillis() + PATIENCE;
    while (!is.getAsBoolean()) {
      assertTrue(System.currentTimeMillis() < end, "waited for " + what);
      Thread.sleep(20);
    }
  }

  private static <T> T onEvents(Callable<T> what) throws Exception {
    FutureTask<T> task = new FutureTask<>(what);
    SwingUtilities.invokeAndWait(task);
    return task.get();
  }

  private void key(int code) {
    robot().keyPress(code);
    robot().keyRelease(code);
  }

  private void click(JComponent on, Point at, int button) {
    Point p = new Point(at);
    SwingUtilities.convertPointToScreen(p, on);
    robot().mouseMove(p.x, p.y);
    robot().mousePress(button);
    robot().mouseRelease(button);
  }

  @Test
  void playsStepsScrubsAndTurnsTheCameraByHand() throws Exception {
    Shown job = cartons();
    Desk desk = open(job, Optional.empty());
    assertEquals(job.result().orElseThrow().worst().time(), onEvents(desk::time), 1e-9);

    key(KeyEvent.VK_HOME);
    until("the start", () -> desk.time() == 0);
    key(KeyEvent.VK_RIGHT);
    until("a sample", () -> Math.abs(desk.time() - 0.001) < 1e-9);
    key(KeyEvent.VK_PAGE_DOWN);
    double stop = job.curves().stops().get(1);
    until("the end of the first move", () -> Math.abs(desk.time() - stop) < 1e-9);

    // Again and again: a slow machine shows few images before the end.
    key(KeyEvent.VK_L);
    long frames = desk.stageView().frames();
    key(KeyEvent.VK_SPACE);
    until("playing", () -> desk.stageView().frames() > frames + 3 && desk.playing());
    key(KeyEvent.VK_SPACE);
    until("a pause", () -> !desk.playing());

    int x = (int) desk.timeline().place(2);
    click(desk.timeline(), new Point(x, 80), InputEvent.BUTTON1_DOWN_MASK);
    double pixel = job.curves().duration() / desk.timeline().getWidth();
    until("the time clicked on", () -> Math.abs(desk.time() - 2) < 2 * pixel);
    until("the sum", () -> Math.abs(timeOfSum(desk) - desk.time()) < 1e-3);

    key(KeyEvent.VK_4);
    until("the view from above", () -> elevation(desk) > Orbit.STEEPEST - 1e-6);
    Point middle = new Point(desk.stageView().getWidth() / 2, desk.stageView().getHeight() - 20);
    SwingUtilities.convertPointToScreen(middle, desk.stageView());
    robot().mouseMove(middle.x, middle.y);
    robot().mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot().mouseMove(middle.x + 60, middle.y - 90);
    robot().mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    until("the drag", () -> elevation(desk) < Orbit.STEEPEST - 0.2);
  }

  /** Time in the second line of the sum, s. */
  private static double timeOfSum(Desk desk) {
    String sum = desk.readout().sum();
    return sum.contains("\nAt ")
        ? Double.parseDouble(sum.split("\nAt ", 2)[1].split(" ", 2)[0])
        : -1;
  }

  private static double elevation(Desk desk) {
    Orbit orbit = desk.stageView().orbit();
    return orbit == null ? Double.NaN : orbit.elevation();
  }

  @Test
  void closedWhileItPlaysItLeavesNoThread() throws Exception {
    Desk desk = open(cartons(), Optional.empty());
    key(KeyEvent.VK_SPACE);
    SwingUtilities.invokeLater(
        () ->
            desk.frame().dispatchEvent(new WindowEvent(desk.frame(), WindowEvent.WINDOW_CLOSING)));
    desk.awaitClosed();
    opened = null;
    until(
        "the end of its threads",
        () ->
            Thread.getAllStackTraces().keySet().stream()
                .noneMatch(
                    t ->
                        t.getName().startsWith("holdpath")
                            || (!t.isDaemon() && t.getName().startsWith("AWT"))));
  }

  @Test
  void twoJobsKeepOneTimeAndOneCameraUntilTheyAreUnlinked() throws Exception {
    Desk desk = open(cartons(), Optional.of(Shown.of("shaft", Demo.judged("shaft"))));
    until("both images", () -> desk.otherView().frames() > 0);
    assertFalse(onEvents(desk::rightIsShown), "two views need the room");
    key(KeyEvent.VK_3);
    until(
        "the view from the side",
        () ->
            Math.abs(elevation(desk)) < 0.1
                && java.util.Objects.equals(desk.stageView().orbit(), desk.otherView().orbit()));
    key(KeyEvent.VK_K);
    SwingUtilities.invokeAndWait(
        () -> {
          Orbit orbit = java.util.Objects.requireNonNull(desk.stageView().orbit());
          desk.stageView().look(orbit.zoomed(2));
        });
    assertFalse(
        java.util.Objects.equals(
            onEvents(desk.stageView()::orbit), onEvents(desk.otherView()::orbit)));
  }

  @Test
  void aJobGivenAnewKeepsTimeAndCameraAndCanBeComparedWithTheFirst() throws Exception {
    Desk desk = open(cartons(), Optional.empty());
    SwingUtilities.invokeAndWait(
        () ->
            desk.stageView()
                .look(new Orbit(io.github.holdpath.dynamics.spatial.Vec3.ZERO, 1, 0.5, 4)));
    double time = onEvents(desk::time);
    Shown next = Shown.of("changed", Demo.judged("paint-tin"));
    SwingUtilities.invokeAndWait(() -> desk.show(next));
    assertEquals(Math.min(time, next.curves().duration()), onEvents(desk::time), 1e-9);
    Orbit orbit = java.util.Objects.requireNonNull(onEvents(desk.stageView()::orbit));
    assertEquals(4, orbit.distance(), 1e-12);
    key(KeyEvent.VK_C);
    until("the view beside", () -> desk.otherView().frames() > 0);
    Shown beside = java.util.Objects.requireNonNull(onEvents(desk.otherView()::shown));
    assertEquals("as it was", beside.name());
  }

  /** Opens a window on a copy of a demo scene that may be changed. */
  private Desk openCopy(Path folder, String name) throws Exception {
    Path copy = folder.resolve(name + ".json");
    Files.copy(Demo.file(name), copy);
    for (String robot : List.of("pallet-arm.urdf", "shaft-arm.urdf", "bench-arm.urdf")) {
      Files.copy(Demo.file(name).resolveSibling(robot), folder.resolve(robot));
    }
    Desk desk = open(Shown.of(name, Demo.judged(name)), Optional.empty());
    desk.change(copy, Map.of());
    until("the inputs", () -> desk.inputs().isPresent() && named(desk, SLIDER) != null);
    until(
        "the first state",
        () -> judged(desk) && desk.session().job().orElseThrow().state().first().isPresent());
    return desk;
  }

  /** Whether the newest draft is judged, and the window has heard of it. */
  private static boolean judged(Desk desk) {
    Shown seen = desk.stageView().shown();
    return seen != null
        && desk.session()
            .job()
            .map(Job::state)
            .filter(s -> s.phase() == JobState.Phase.JUDGED)
            .flatMap(JobState::shown)
            .filter(j -> j.stage().playback() == seen.stage().playback())
            .isPresent();
  }

  /** A part of the window by its accessible name; null if there is none. */
  private static @Nullable JComponent named(Container in, String name) {
    for (Component c : in.getComponents()) {
      if (c instanceof JComponent part
          && name.equals(part.getAccessibleContext().getAccessibleName())) {
        return part;
      }
      JComponent below = c instanceof Container inner ? named(inner, name) : null;
      if (below != null) {
        return below;
      }
    }
    return null;
  }

  private static @Nullable JComponent named(Desk desk, String name) {
    return named(desk.frame().getContentPane(), name);
  }

  /** Presses the mouse on the knob of a slider, wherever its look puts it; tells where. */
  private Point pressKnob(JSlider slider) throws Exception {
    BasicSliderUI look = (BasicSliderUI) slider.getUI();
    int x = 0;
    while (onEvents(slider::getValue) > look.valueForXPosition(x)) {
      x++;
    }
    int column = x;
    Point knob = new Point(x, onEvents(() -> middleOfTheKnob(slider, column)));
    SwingUtilities.convertPointToScreen(knob, slider);
    robot().mouseMove(knob.x, knob.y);
    robot().mousePress(InputEvent.BUTTON1_DOWN_MASK);
    return knob;
  }

  /** The knob alone is blue in the light theme. */
  private static int middleOfTheKnob(JSlider slider, int column) {
    BufferedImage image =
        new BufferedImage(slider.getWidth(), slider.getHeight(), BufferedImage.TYPE_INT_RGB);
    slider.paint(image.getGraphics());
    int sum = 0;
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      int rgb = image.getRGB(column, y);
      if ((rgb & 0xFF) - (rgb >> 16 & 0xFF) > 60) {
        sum += y;
        count++;
      }
    }
    assertTrue(count > 0, "no knob in " + slider.getBounds());
    return sum / count;
  }

  @Test
  void aSliderThatIsDraggedRecoloursThePathAndCanBeTakenBack(@TempDir Path folder)
      throws Exception {
    Desk desk = openCopy(folder, "cartons");
    JSlider slider = (JSlider) java.util.Objects.requireNonNull(named(desk, SLIDER));
    Stage before = java.util.Objects.requireNonNull(desk.stageView().shown()).stage();
    int value = slider.getValue();
    Point knob = pressKnob(slider);
    for (int i = 1; i <= 20; i++) {
      robot().mouseMove(knob.x - i, knob.y);
    }
    until("the hold", slider::getValueIsAdjusting);
    robot().mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    until("the drag", () -> slider.getValue() < value);
    until("the verdict", () -> judged(desk));
    Stage after = java.util.Objects.requireNonNull(onEvents(desk.stageView()::shown)).stage();
    assertTrue(after.worst().factor() > 1.02 * before.worst().factor(), "slower holds better");
    assertFalse(after.links().equals(before.links()));
    assertTrue(after.twin().isPresent(), "the path as it was");
    picture(desk);
    assertTrue(desk.frame().getTitle().contains("(changed)"), desk.frame().getTitle());
    click(desk.stageView(), new Point(4, 4), InputEvent.BUTTON1_DOWN_MASK);
    robot().keyPress(KeyEvent.VK_CONTROL);
    key(KeyEvent.VK_Z);
    robot().keyRelease(KeyEvent.VK_CONTROL);
    until("the step back", () -> slider.getValue() == value && judged(desk));
    until("no changes", () -> !desk.frame().getTitle().contains("(changed)"));
  }

  @Test
  void makesFilesOfWhatItShowsAndTellsWhereItCannot(@TempDir Path folder) throws Exception {
    Desk desk = open(cartons(), Optional.of(Shown.of("shaft", Demo.judged("shaft"))));
    Path picture = folder.resolve("both.png");
    SwingUtilities.invokeAndWait(() -> desk.export(Exports.Kind.PICTURE, picture));
    until("the picture", () -> desk.notice().text().equals("Wrote " + picture + "."));
    assertEquals(1920, javax.imageio.ImageIO.read(picture.toFile()).getWidth());
    Path space = folder.resolve("path.glb");
    SwingUtilities.invokeAndWait(() -> desk.export(Exports.Kind.SPACE, space));
    until("the 3D file", () -> desk.notice().text().equals("Wrote " + space + "."));
    Path none = picture.resolve("in-a-file.png");
    SwingUtilities.invokeAndWait(() -> desk.export(Exports.Kind.PICTURE, none));
    until("the refusal", () -> desk.notice().text().startsWith("cannot save in " + picture));
    try (var files = Files.list(folder)) {
      assertEquals(2, files.count());
    }
  }

  @Test
  void aFileThatChangesIsOfferedAgainAndItsFaultsLeaveTheLastGoodOne(@TempDir Path folder)
      throws Exception {
    Desk desk = openCopy(folder, "steel-sheet");
    Path file = folder.resolve("steel-sheet.json");
    String good = Files.readString(file);
    double factor =
        java.util.Objects.requireNonNull(desk.stageView().shown()).stage().worst().factor();
    Files.writeString(file, good.replace("\"friction\"", "\"frction\""));
    until("the offer", () -> desk.notice().text().contains("changed on disk"));
    SwingUtilities.invokeAndWait(() -> desk.session().reload(Job.Changes.DROP));
    until("its faults", () -> desk.faults().isVisible());
    assertTrue(desk.faults().text().contains("friction"), desk.faults().text());
    assertEquals(
        factor,
        java.util.Objects.requireNonNull(onEvents(desk.stageView()::shown))
            .stage()
            .worst()
            .factor(),
        0);
    Files.writeString(file, "no JSON at all");
    SwingUtilities.invokeAndWait(() -> desk.session().reload(Job.Changes.DROP));
    until("its one fault", () -> desk.faults().text().contains("line 1"));
    Files.writeString(file, good);
    SwingUtilities.invokeAndWait(() -> desk.session().reload(Job.Changes.DROP));
    until("no faults", () -> !desk.faults().isVisible() && judged(desk));
  }

  @Test
  void aBrokenSceneLeavesTheOneThatIsShown(@TempDir Path folder) throws Exception {
    Desk desk = openCopy(folder, "steel-sheet");
    Path broken = folder.resolve("broken.json");
    String text = Files.readString(folder.resolve("steel-sheet.json"));
    Files.writeString(broken, text.replace("\"friction\"", "\"frction\""));
    SwingUtilities.invokeAndWait(() -> desk.session().open(broken, Map.of()));
    until("its faults", () -> desk.faults().isVisible());
    assertTrue(onEvents(desk.faults()::head).contains("broken.json"));
    assertTrue(desk.frame().getTitle().contains("steel-sheet"), desk.frame().getTitle());
    assertTrue(judged(desk), "the scene that is shown can still be changed");
    SwingUtilities.invokeAndWait(() -> desk.session().open(folder.resolve("gone.json"), Map.of()));
    until("its one fault", () -> desk.faults().text().contains("no such file"));
    SwingUtilities.invokeAndWait(
        () -> desk.session().open(folder.resolve("steel-sheet.json"), Map.of()));
    until("no faults", () -> !desk.faults().isVisible() && judged(desk));
  }

  @Test
  void aSmallWindowAndLargeTextKeepAllButtonsAndTheScene(@TempDir Path folder) throws Exception {
    Desk desk = openCopy(folder, "steel-sheet");
    assertTrue(onEvents(desk::rightIsShown), "there is room for the sum");
    assertTrue(onEvents(desk.readout()::help).contains("The whole job just holds at"));
    SwingUtilities.invokeAndWait(() -> desk.frame().setSize(1024, 700));
    robot().keyPress(KeyEvent.VK_CONTROL);
    key(KeyEvent.VK_EQUALS);
    key(KeyEvent.VK_EQUALS);
    robot().keyRelease(KeyEvent.VK_CONTROL);
    until("the sum to give way", () -> !desk.rightIsShown());
    JComponent last =
        java.util.Objects.requireNonNull(named(desk, "Beside the job as it was first"));
    until(
        "the last button in sight",
        () ->
            SwingUtilities.convertPoint(last, last.getWidth(), 0, desk.frame()).x
                <= desk.frame().getWidth());
    until("room for the scene", () -> desk.stageView().getHeight() > 180);
    assertTrue(desk.stageView().getWidth() > 480, "width of the scene");
  }

  @Test
  void aPartThatHoldsAllAlongFallsFromWhereItIs() throws Exception {
    Desk desk = open(Shown.of("shaft", Demo.judged("paint-tin")), Optional.empty());
    key(KeyEvent.VK_D);
    until("the words", () -> desk.notice().text().contains("illustration of the supply lost"));
    assertTrue(
        java.util.Objects.requireNonNull(onEvents(desk.stageView()::shown))
            .stage()
            .flight()
            .isPresent());
  }

  @Test
  void everyKeyStandsInTheGuide() throws Exception {
    Desk desk = open(cartons(), Optional.empty());
    String guide = Files.readString(GUIDE);
    for (Act act : desk.acts()) {
      String row = "| " + act.menu() + " | " + act.name() + " | " + act.keysInWords() + " |";
      assertTrue(guide.contains(row), "the guide lacks the row\n" + row);
    }
  }

  private static void picture(Desk desk) throws Exception {
    if (!Boolean.getBoolean("writePictures")) {
      return;
    }
    until("the sum", () -> !desk.readout().sum().isEmpty());
    Thread.sleep(1500);
    var bounds = desk.frame().getBounds();
    Files.write(SHOWN, Picture.png(new Robot().createScreenCapture(bounds)));
  }
}
