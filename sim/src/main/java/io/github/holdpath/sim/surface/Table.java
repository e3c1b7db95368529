package io.github.holdpath.sim.surface;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Tables that come with the program: a row a line, cells parted by semicolons, # for remarks. */
final class Table {
  private Table() {}

  static List<List<String>> rows(String name, int cells) {
    try (InputStream in = Objects.requireNonNull(Table.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(line -> List.of(line.split(";", -1)))
          .peek(row -> check(name, cells, row))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void check(String name, int cells, List<String> row) {
    if (row.size() != cells) {
      throw new IllegalStateException(name + " needs " + cells + " cells, but has " + row);
    }
  }
}
