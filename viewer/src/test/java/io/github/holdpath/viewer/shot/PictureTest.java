package io.github.holdpath.viewer.shot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.Drop;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.ForceArrows;
import io.github.holdpath.viewer.state.ForceKind;
import io.github.holdpath.viewer.state.Item;
import io.github.holdpath.viewer.state.Orbit;
import io.github.holdpath.viewer.state.PathRuns;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import io.github.holdpath.viewer.state.Waypoint;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pictures as drawn: what the path's pixels tell is read back. Where nothing can draw the tests are
 * skipped, unless {@code -Dholdpath.demandPictures=true}. Remake the picture of the docs with
 * {@code -DwritePictures=true}.
 */
class PictureTest {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 800;
  private static final Path SHOWN = Path.of("../docs/pictures/view-cartons.png");

  /** Pixels; a link nearer than this to one of another colour may be covered by it. */
  private static final double CLEAR = 14;

  private static @Nullable Studio opened;

  @BeforeAll
  static void open() throws NoGraphicsException {
    try {
      opened = Studio.open();
    } catch (NoGraphicsException e) {
      if (Boolean.getBoolean("holdpath.demandPictures")) {
        throw e;
      }
      abort("nothing here can draw: " + e.getMessage());
    }
  }

  @AfterAll
  static void close() {
    if (opened != null) {
      opened.close();
    }
  }

  private static Studio studio() {
    return Optional.ofNullable(opened).orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "arm-log",
        "cartons",
        "chocolates",
        "circuit-board",
        "cover",
        "gear-blank",
        "glass-sheet",
        "paint-tin",
        "paint-tin-plain",
        "peaches",
        "shaft",
        "shaft-arm",
        "steel-sheet"
      })
  void pixelsOfThePathAreTheColoursOfItsMargins(String name) {
    Stage scene = Stage.of(Demo.judged(name));
    View view = Picture.view(scene, WIDTH, HEIGHT);
    BufferedImage image =
        studio().draw(scene.at(scene.playback().at(scene.worst().time())), view, Studio.SMOOTH);
    Set<MarginStep> seen = EnumSet.noneOf(MarginStep.class);
    int places = 0;
    for (PathRuns.Link link : scene.links()) {
      if (link.step().isPresent() && clear(link, scene.links(), view)) {
        View.Spot s = view.project(link.from().plus(link.to()).times(0.5));
        int pixel = image.getRGB((int) s.x(), (int) s.y()) & 0xFFFFFF;
        assertEquals(
            Integer.toHexString(link.rgb()), Integer.toHexString(pixel), "at " + link.from());
        seen.add(link.step().get());
        places++;
      }
    }
    assertTrue(places >= 20, places + " places");
    // A scene with much in hand all along its path has one colour only.
    long steps = scene.links().stream().flatMap(l -> l.step().stream()).distinct().count();
    assertTrue(seen.size() >= Math.min(2, steps), "colours " + seen);
  }

  /** Whether no link that may cover it is seen near it. */
  private static boolean clear(PathRuns.Link link, List<PathRuns.Link> all, View view) {
    View.Spot s = view.project(link.from());
    return all.stream()
        .filter(other -> mayCover(other, link))
        .map(other -> view.project(other.from()))
        .noneMatch(o -> Math.hypot(o.x() - s.x(), o.y() - s.y()) < CLEAR);
  }

  /**
   * A link of another colour; one that is not held only where it crosses, as on the same line it is
   * inside the thicker tube.
   */
  private static boolean mayCover(PathRuns.Link other, PathRuns.Link link) {
    if (other.step().isPresent()) {
      return other.rgb() != link.rgb();
    }
    Vec3 a = other.to().minus(other.from());
    Vec3 b = link.to().minus(link.from());
    return Math.abs(a.dot(b)) < 0.99 * a.norm() * b.norm();
  }

  @Test
  void everyWordAndColourOfThePictureIsThere() throws IOException {
    Stage scene = Stage.of(Demo.judged("cartons"));
    // A smaller one before it must leave no trace.
    Picture.of(studio(), scene, 320, 320);
    BufferedImage image = Picture.of(studio(), scene, WIDTH, HEIGHT);
    if (Boolean.getBoolean("writePictures")) {
      Files.write(SHOWN, Picture.png(image));
    }
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(Picture.png(image)));
    assertEquals(WIDTH, read.getWidth());
    assertEquals(HEIGHT, read.getHeight());
    for (MarginStep step : MarginStep.values()) {
      assertTrue(count(read, step.rgb()) > 100, step + " of the legend");
    }
    assertTrue(count(read, Tones.PAPER) > WIDTH * HEIGHT / 2, "paper");
    assertTrue(count(read, Tones.INK) > 500, "words");
  }

  private static int count(BufferedImage image, int rgb) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += (image.getRGB(x, y) & 0xFFFFFF) == rgb ? 1 : 0;
      }
    }
    return count;
  }

  /** How a scene looks where it is tightest, without words. */
  private static BufferedImage bare(Stage scene, double time, Show show) {
    View view = Picture.view(scene, show, WIDTH, HEIGHT);
    return studio().draw(scene.at(scene.playback().at(time), show), view, Studio.SMOOTH);
  }

  @Test
  void arrowsPointTheWayTheyAct() {
    Stage scene = Stage.of(Demo.judged("steel-sheet"));
    View view = Picture.view(scene, WIDTH, HEIGHT);
    BufferedImage with = bare(scene, scene.worst().time(), Show.DEFAULT);
    BufferedImage without = bare(scene, scene.worst().time(), Show.DEFAULT.withForces(false));
    Set<ForceKind> seen = EnumSet.noneOf(ForceKind.class);
    for (ForceArrows.Arrow a :
        scene.arrows().arrows(scene.playback().at(scene.worst().time()).forces())) {
      if (a.kind() == ForceKind.GRAVITY || a.kind() == ForceKind.FORCE) {
        double radius = scene.arrows().radius();
        Vec3 along = a.to().minus(a.from()).unit();
        View.Spot inHead = view.project(a.to().minus(along.times(2 * radius)));
        View.Spot beyond = view.project(a.to().plus(along.times(3 * radius)));
        assertEquals(a.kind().rgb(), pixel(with, inHead), a.kind() + " at its tip");
        assertTrue(pixel(with, beyond) != a.kind().rgb(), a.kind() + " ends at its tip");
        assertTrue(pixel(without, inHead) != a.kind().rgb());
        // The head is broader than the shaft: it tells the way.
        Vec3 aside = along.cross(view.forward()).unit().times(1.9 * radius);
        double head = 6 * radius;
        View.Spot broad = view.project(a.to().minus(along.times(head)).plus(aside));
        View.Spot slim = view.project(a.to().minus(along.times(2 * head)).plus(aside));
        assertEquals(a.kind().rgb(), pixel(with, broad), a.kind() + " has a head");
        assertTrue(pixel(with, slim) != a.kind().rgb(), a.kind() + " has a shaft");
        seen.add(a.kind());
      }
    }
    assertEquals(EnumSet.of(ForceKind.GRAVITY, ForceKind.FORCE), seen);
  }

  private static int pixel(BufferedImage image, View.Spot s) {
    return image.getRGB((int) s.x(), (int) s.y()) & 0xFFFFFF;
  }

  @Test
  void robotIsDrawnBehindThePath() {
    Stage scene = Stage.of(Demo.judged("cartons"));
    View view = Picture.view(scene, WIDTH, HEIGHT);
    BufferedImage with = bare(scene, scene.worst().time(), Show.DEFAULT);
    BufferedImage without = bare(scene, scene.worst().time(), Show.DEFAULT.withRobot(false));
    int changed = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        changed += with.getRGB(x, y) == without.getRGB(x, y) ? 0 : 1;
      }
    }
    assertTrue(changed > WIDTH * HEIGHT / 50, changed + " pixels of robot");
    int before = 0;
    for (PathRuns.Link link : scene.links()) {
      View.Spot s = view.project(link.from().plus(link.to()).times(0.5));
      assertEquals(pixel(without, s), pixel(with, s), "path at " + link.from());
      View.Spot above = new View.Spot(s.x(), s.y() - 12, s.depth());
      before += pixel(with, above) == pixel(without, above) ? 0 : 1;
    }
    assertTrue(before > 20, "links before the robot: " + before);
  }

  @Test
  void marksAndNamesStandAtTheirPlaces() {
    Stage scene = Stage.of(Demo.judged("cartons"));
    View view = Picture.view(scene, WIDTH, HEIGHT);
    BufferedImage named = Picture.of(studio(), scene, WIDTH, HEIGHT);
    Show bare = Show.DEFAULT.withLabels(false);
    BufferedImage plain = Picture.of(studio(), scene, scene.worst().time(), bare, WIDTH, HEIGHT);
    View.Spot worst = view.project(scene.worst().grip().position());
    double em = 0.0175 * HEIGHT;
    int ring = 0;
    for (int k = 0; k < 36; k++) {
      double a = Math.toRadians(10 * k);
      View.Spot s =
          new View.Spot(worst.x() + 1.1 * em * Math.cos(a), worst.y() + 1.1 * em * Math.sin(a), 1);
      ring += pixel(named, s) == scene.worstStep().rgb() ? 1 : 0;
    }
    assertTrue(ring > 24, "ring of the worst place, " + ring + " of 36");
    for (Waypoint w : scene.waypoints()) {
      View.Spot s = view.project(w.place());
      assertEquals(Tones.PAPER, pixel(named, s), w.label());
      assertTrue(pixel(plain, s) != Tones.PAPER, w.label());
      assertTrue(inkAbout(named, s) > inkAbout(plain, s) + 20, "name " + w.label());
    }
  }

  /** Pixels of ink within the room that a name may take. */
  private static int inkAbout(BufferedImage image, View.Spot s) {
    int count = 0;
    for (int y = (int) Math.max(0, s.y() - 60); y < Math.min(HEIGHT, s.y() + 60); y++) {
      for (int x = (int) Math.max(0, s.x() - 120); x < Math.min(WIDTH, s.x() + 120); x++) {
        count += (image.getRGB(x, y) & 0xFFFFFF) == Tones.INK ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void flightIsBeadedToTheLanding() {
    Stage told = Stage.of(Demo.judged("cartons"));
    Stage scene = told.withDropAt(0.5 * told.scene().moved().heldTo());
    Drop drop = scene.flight().orElseThrow().drop();
    Show show = Show.DEFAULT.withDrop(true);
    View view = Picture.view(scene, show, WIDTH, HEIGHT);
    BufferedImage image = bare(scene, drop.lands(), show);
    assertEquals(Tones.FLIGHT, pixel(image, view.project(drop.landing())));
    assertTrue(drop.reach() > 0.1, "reach " + drop.reach());
    BufferedImage words =
        Picture.of(studio(), scene, drop.lands(), show.withLine(true), WIDTH, HEIGHT);
    assertTrue(count(words, Tones.INK) > count(image, Tones.INK) + 500, "label");
    assertEquals(0, count(bare(scene, drop.lands(), Show.DEFAULT), Tones.FLIGHT));
  }

  @Test
  void theSameSceneGivesTheSameBytes() throws IOException {
    StudyResult result = Demo.judged("shaft");
    byte[] one = Picture.png(Picture.of(studio(), Stage.of(result), 640, 480));
    byte[] two = Picture.png(Picture.of(studio(), Stage.of(result), 640, 480));
    assertArrayEquals(one, two);
  }

  private static List<Take> two() {
    return List.of(
        Take.of(Demo.judged("cartons"), "A, cartons.json"),
        Take.of(Demo.judged("peaches"), "B, peaches.json"));
  }

  @Test
  void aTiledImageIsTheWholeOne() {
    Stage scene = Stage.of(Demo.judged("cartons"));
    View view = Picture.view(scene, 2500, 400);
    List<Item> items = scene.at(scene.playback().at(scene.worst().time()));
    BufferedImage whole = studio().draw(items, view, Studio.SMOOTH);
    BufferedImage tiled = studio().drawLarge(items, view, 1);
    int differ = 0;
    for (int y = 0; y < 400; y++) {
      for (int x = 0; x < 2500; x++) {
        differ += whole.getRGB(x, y) == tiled.getRGB(x, y) ? 0 : 1;
      }
    }
    // Where a border falls on a sample, rounding in another frustum may decide otherwise.
    assertTrue(differ < 500, differ + " pixels differ");
  }

  @Test
  void linesGrowWithTheImage() {
    Stage scene = Stage.of(Demo.judged("cartons"));
    View view = Picture.view(scene, 1000, 800);
    List<Item> items = scene.at(scene.playback().at(scene.worst().time()));
    int thin = count(studio().drawLarge(items, view, 1), Tones.PAPER);
    int thick = count(studio().drawLarge(items, view, 4), Tones.PAPER);
    assertTrue(thick < thin - 10_000, thin + " pixels of paper, then " + thick);
  }

  @Test
  void twoScenesHaveOneScaleAndEachItsVerdict() throws Exception {
    List<Take> takes = two();
    BufferedImage image =
        new Picture(studio(), takes, Show.DEFAULT, List.of(), 1600, 800).at(OptionalDouble.empty());
    assertEquals(1600, image.getWidth());
    for (int half = 0; half < 2; half++) {
      BufferedImage side = image.getSubimage(800 * half, 0, 799, 800);
      boolean holds = takes.get(half).stage().headline().holds();
      assertTrue(count(side, (holds ? MarginStep.WELL_ABOVE : MarginStep.BELOW).rgb()) > 300);
      for (MarginStep step : MarginStep.values()) {
        assertTrue(count(side, step.rgb()) > 60, step + " of the legend of side " + half);
      }
    }
  }

  @Test
  void anotherInstantShowsThePartElsewhere() throws Exception {
    List<Take> takes = List.of(Take.of(Demo.judged("cartons"), ""));
    Picture picture = new Picture(studio(), takes, Show.DEFAULT, List.of(0.2, 1.4), 640, 400);
    byte[] one = Picture.png(picture.at(OptionalDouble.of(0.2)));
    byte[] two = Picture.png(picture.at(OptionalDouble.of(1.4)));
    assertArrayEquals(one, Picture.png(picture.at(OptionalDouble.of(0.2))));
    assertFalse(Arrays.equals(one, two));
  }

  @Test
  void aDirectionThatIsAskedForIsTheOneThatIsSeen() throws Exception {
    List<Take> takes = List.of(Take.of(Demo.judged("cartons"), ""));
    List<byte[]> files = new ArrayList<>();
    for (double bearing : new double[] {0.3, 0.3, 2.0}) {
      Optional<Vec3> along = Optional.of(new Orbit(Vec3.ZERO, bearing, 0.4, 1).forward());
      Picture picture = new Picture(studio(), takes, Show.DEFAULT, List.of(0.9), along, 640, 400);
      files.add(Picture.png(picture.at(OptionalDouble.of(0.9))));
    }
    assertArrayEquals(files.get(0), files.get(1));
    assertFalse(Arrays.equals(files.get(0), files.get(2)));
  }

  @Test
  void anAnimationOfTwoScenesIsOneCycleOfTheLonger() throws Exception {
    List<Take> takes = two();
    double cycle = Math.max(takes.get(0).duration(), takes.get(1).duration());
    Animation animation = new Animation(cycle, 1, 4);
    byte[] file = animation.apng(studio(), takes, Show.DEFAULT, 700, 360);
    assertArrayEquals(file, animation.apng(studio(), takes, Show.DEFAULT, 700, 360));
    BufferedImage first = ImageIO.read(new ByteArrayInputStream(file));
    assertEquals(700, first.getWidth());
    assertTrue(count(first, Tones.PAPER) > 700 * 360 / 3);
  }
}
