package io.github.holdpath.sim.motion.recorded;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Numbers of a comma separated test resource with one header line. */
final class NumberTable {
  private NumberTable() {}

  static List<double[]> read(String resource) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(NumberTable.class.getResourceAsStream(resource), resource)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines()
          .skip(1)
          .map(
              line -> Arrays.stream(line.split(",", -1)).mapToDouble(Double::parseDouble).toArray())
          .toList();
    }
  }
}
