package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawn scenes: good ones are read as drawn, spoilt ones are refused in the one way there is. */
class SceneFuzzTest {
  private static final long SEED = 20_260_101;
  private static final int SCENES = 300;
  private static final int MUTATIONS = 4000;

  /** A decimal of 6 digits times an exact power of ten. */
  private static final double RELATIVE = 1e-15;

  private static final String[] PIECES = {
    "\"",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "-",
    "1e400",
    "NaN",
    "null",
    "true",
    "0",
    "%",
    " kg",
    "mm",
    "\\",
    "\u0000",
    "\uFEFF",
    "é",
    "\"note\":",
    "\"at\"",
    "-1",
    "1e-400",
    "99999999999999999999",
    "180",
    "\n"
  };

  @TempDir Path folder;

  @Test
  void goodScenesAreReadAsDrawn() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < SCENES; i++) {
      double mass = drawn(random, 0.01, 50);
      double friction = drawn(random, 0, 1.5);
      double vacuum = drawn(random, 1, 90);
      int nx = 1 + random.nextInt(5);
      int ny = 1 + random.nextInt(5);
      double height = drawn(random, 0.1, 2);
      double speed = drawn(random, 1, 100);
      String text =
          String.format(
              Locale.ROOT,
              "{\"format\":\"holdpath-scene/1\",\"part\":{\"mass\":\"%s kg\",\"centreOfMass\":"
                  + "\"0 0 %s mm\",\"sphere\":\"%s mm\",\"inertia\":\"uniform sphere\"},\"grip\":{"
                  + "\"kind\":\"suction\",\"friction\":%s,\"requiredSafety\":1.5,\"cups\":{\"grid\":"
                  + "[%d,%d],\"spacing\":\"%s 30 mm\",\"diameter\":\"2 cm\"},\"supply\":{\"vacuum\":"
                  + "\"%s kPa\"}},\"law\":\"trapezoid\",\"limits\":{\"speed\":\"2 m/s\","
                  + "\"acceleration\":\"1 gn\"},\"route\":[{\"start\":{\"at\":\"0 0 0 m\",\"rpy\":"
                  + "\"180 0 %s deg\"}},{\"grip\":\"take\",\"wait\":\"0 s\"},{\"line\":{\"at\":"
                  + "\"0 0 %s m\"},\"speed\":\"%s %%\"}]}",
              mass,
              drawn(random, 0, 500),
              drawn(random, 1, 500),
              friction,
              nx,
              ny,
              drawn(random, 20, 300),
              vacuum,
              drawn(random, -360, 360),
              height,
              speed);
      Path file = SceneFiles.write(folder.resolve("drawn.json"), text);
      Scene scene = SceneFiles.read(file, Map.of()).scene();
      assertEquals(mass, scene.part().body().mass());
      SuctionGrip grip = (SuctionGrip) scene.grip();
      assertEquals(friction, grip.friction());
      assertEquals(nx * ny, grip.cups().size());
      double pull = vacuum * 1000 * Math.PI * 0.02 * 0.02 / 4;
      assertEquals(pull, grip.cups().get(0).pull(), 10 * RELATIVE * pull);
      assertEquals(2, ((Route) scene.motion()).steps().size());
    }
  }

  private static double drawn(SplittableRandom random, double from, double to) {
    return Math.rint((from + (to - from) * random.nextDouble()) * 1e6) / 1e6;
  }

  @Test
  void spoiltScenesAreRefusedByASceneException() {
    SplittableRandom random = new SplittableRandom(SEED);
    String[] good = {
      SceneFiles.text(SceneFiles.GOOD.resolve("suction.json")),
      SceneFiles.text(SceneFiles.GOOD.resolve("jaws.json")),
      SceneFiles.text(SceneFiles.GOOD.resolve("vee.json")),
      SceneFiles.text(SceneFiles.GOOD.resolve("centric.json")),
      SceneFiles.text(SceneFiles.GOOD.resolve("soft.json")),
      SceneTemplates.text("recording")
    };
    SceneFiles.write(folder.resolve("motion.csv"), SceneTemplates.recordingTable());
    int refused = 0;
    Path file = folder.resolve("spoilt.json");
    for (int i = 0; i < MUTATIONS; i++) {
      String text = good[i % good.length];
      for (int k = 1 + random.nextInt(3); k > 0; k--) {
        text = spoilt(text, random);
      }
      refused += isRefused(SceneFiles.write(file, text)) ? 1 : 0;
    }
    assertTrue(refused > MUTATIONS / 2, refused + " refused");
  }

  private static boolean isRefused(Path file) {
    try {
      SceneReader.read(file, Map.of());
      return false;
    } catch (SceneException e) {
      for (Fault f : e.faults()) {
        assertFalse(f.message().isBlank());
        assertFalse(f.message().contains("Exception"), f.toLine());
      }
      return true;
    }
  }

  private static String spoilt(String text, SplittableRandom random) {
    int at = random.nextInt(text.length());
    int end = Math.min(text.length(), at + 1 + random.nextInt(12));
    String piece = PIECES[random.nextInt(PIECES.length)];
    return switch (random.nextInt(4)) {
      case 0 -> text.substring(0, at) + text.substring(end);
      case 1 -> text.substring(0, at) + piece + text.substring(at);
      case 2 -> text.substring(0, at) + piece + text.substring(end);
      default -> swapped(text, random);
    };
  }

  /** Puts one value of the file in the place of another, so that the text stays JSON. */
  private static String swapped(String text, SplittableRandom random) {
    String[] lines = text.split("\"", -1);
    int a = random.nextInt(lines.length);
    int b = random.nextInt(lines.length);
    if (a % 2 == 1 && b % 2 == 1) {
      lines[a] = lines[b];
    }
    return String.join("\"", lines);
  }
}
