package io.github.holdpath.viewer.shot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.Item;
import io.github.holdpath.viewer.state.PathRuns;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
  @ValueSource(strings = {"cartons", "peaches", "shaft", "arm-log", "glass-sheet"})
  void pixelsOfThePathAreTheColoursOfItsMargins(String name) {
    Stage scene = Stage.of(Demo.judged(name));
    View view = Picture.view(scene, WIDTH, HEIGHT);
    BufferedImage image =
        studio().draw(scene.at(scene.playback().at(scene.worstTime())), view, Studio.SMOOTH);
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
    assertTrue(seen.size() >= 2, "colours " + seen);
  }

  /** Whether no link of another colour is seen near it. */
  private static boolean clear(PathRuns.Link link, List<PathRuns.Link> all, View view) {
    View.Spot s = view.project(link.from());
    return all.stream()
        .filter(other -> other.step().isPresent() && other.rgb() != link.rgb())
        .map(other -> view.project(other.from()))
        .noneMatch(o -> Math.hypot(o.x() - s.x(), o.y() - s.y()) < CLEAR);
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
    List<Item> items = scene.at(scene.playback().at(scene.worstTime()));
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
    List<Item> items = scene.at(scene.playback().at(scene.worstTime()));
    int thin = count(studio().drawLarge(items, view, 1), Tones.PAPER);
    int thick = count(studio().drawLarge(items, view, 4), Tones.PAPER);
    assertTrue(thick < thin - 10_000, thin + " pixels of paper, then " + thick);
  }

  @Test
  void twoScenesHaveOneScaleAndEachItsVerdict() throws Exception {
    List<Take> takes = two();
    BufferedImage image =
        new Picture(studio(), takes, List.of(), 1600, 800).at(OptionalDouble.empty());
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
    Picture picture = new Picture(studio(), takes, List.of(0.2, 1.4), 640, 400);
    byte[] one = Picture.png(picture.at(OptionalDouble.of(0.2)));
    byte[] two = Picture.png(picture.at(OptionalDouble.of(1.4)));
    assertArrayEquals(one, Picture.png(picture.at(OptionalDouble.of(0.2))));
    assertFalse(Arrays.equals(one, two));
  }

  @Test
  void anAnimationOfTwoScenesIsOneCycleOfTheLonger() throws Exception {
    List<Take> takes = two();
    double cycle = Math.max(takes.get(0).duration(), takes.get(1).duration());
    Animation animation = new Animation(cycle, 1, 4);
    byte[] file = animation.apng(studio(), takes, 700, 360);
    assertArrayEquals(file, animation.apng(studio(), takes, 700, 360));
    BufferedImage first = ImageIO.read(new ByteArrayInputStream(file));
    assertEquals(700, first.getWidth());
    assertTrue(count(first, Tones.PAPER) > 700 * 360 / 3);
  }
}
