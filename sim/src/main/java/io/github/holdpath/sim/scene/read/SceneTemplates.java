package io.github.holdpath.sim.scene.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** Scene files to begin with: complete, readable as they are, with a note in every object. */
public final class SceneTemplates {
  private static final List<String> KINDS =
      List.of("suction", "jaws", "centric", "soft", "magnet", "patches", "recording");
  private static final double STEP = 0.01;
  private static final double DURATION = 2;

  private SceneTemplates() {}

  /** Kinds of which there is a file. */
  public static List<String> kinds() {
    return KINDS;
  }

  /**
   * A scene file to fill in.
   *
   * @param kind one of {@link #kinds}; {@code recording} reads the table {@link #recordingTable}
   *     from {@code motion.csv} beside it
   * @return JSON text that ends with a line feed
   * @throws IllegalArgumentException for another kind
   */
  public static String text(String kind) {
    if (!KINDS.contains(kind)) {
      throw new IllegalArgumentException(
          "kind must be one of " + String.join(", ", KINDS) + ", but was " + kind);
    }
    String name = "new-" + kind + ".json";
    try (InputStream in = SceneTemplates.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program is incomplete: it lacks " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A table for the kind {@code recording}: a smooth move of 1 m along y with a turn of 90 deg
   * about the vertical while the grip looks down, in s and m, a row each 10 ms.
   *
   * @return CSV text with a line of names
   */
  public static String recordingTable() {
    StringBuilder table = new StringBuilder("t,x,y,z,qw,qx,qy,qz\n");
    int rows = (int) Math.round(DURATION / STEP);
    for (int i = 0; i <= rows; i++) {
      double u = (double) i / rows;
      double s = u * u * u * (10 + u * (6 * u - 15));
      double half = s * Math.PI / 4;
      table.append(
          String.format(
              Locale.ROOT,
              "%.2f,%.6f,%.6f,%.6f,%.9f,%.9f,%.9f,%.9f\n",
              i * STEP,
              0.8,
              s - 0.5,
              0.6,
              0.0,
              Math.cos(half),
              Math.sin(half),
              0.0));
    }
    return table.toString();
  }
}
