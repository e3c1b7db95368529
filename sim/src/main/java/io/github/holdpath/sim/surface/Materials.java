package io.github.holdpath.sim.surface;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Table of materials: density, and whether a magnet holds them. */
public final class Materials {
  private final List<Material> materials;

  private Materials(List<Material> materials) {
    this.materials = List.copyOf(materials);
  }

  /** Reads the table that comes with the program. */
  public static Materials load() {
    return new Materials(Table.rows("materials.csv", 6).stream().map(Materials::material).toList());
  }

  private static Material material(List<String> row) {
    return new Material(
        row.get(0),
        Double.parseDouble(row.get(1)),
        Double.parseDouble(row.get(2)),
        row.get(3).equals("yes"),
        row.get(4).equals("yes"),
        row.get(5));
  }

  /** All materials, in the order of the table. */
  public List<Material> all() {
    return materials;
  }

  /**
   * The material that a free text names: the longest known name that stands in it as whole words,
   * in any letters. A plain "stainless steel" names none, as some are magnetic and some not.
   */
  public Optional<Material> named(String text) {
    String words = text.toLowerCase(Locale.ROOT);
    Optional<Material> found =
        materials.stream()
            .filter(m -> standsIn(words, m.name().toLowerCase(Locale.ROOT)))
            .max(Comparator.comparingInt(m -> m.name().length()));
    boolean anyStainless = standsIn(words, "stainless");
    return found.filter(m -> !anyStainless || m.name().contains("stainless"));
  }

  private static boolean standsIn(String text, String name) {
    return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])")
        .matcher(text)
        .find();
  }
}
