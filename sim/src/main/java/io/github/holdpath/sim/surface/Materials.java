package io.github.holdpath.sim.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Table of materials: density, and whether a magnet holds them. */
public final class Materials {
  private final List<Material> materials;

  private Materials(List<Material> materials) {
    this.materials = List.copyOf(materials);
  }

  /** Reads the table that comes with the program. */
  public static Materials load() {
    return new Materials(Table.rows("materials.csv", 7).stream().map(Materials::material).toList());
  }

  private static Material material(List<String> row) {
    return new Material(
        row.get(0),
        row.get(1).isEmpty() ? List.of() : List.of(row.get(1).split("\\|")),
        Double.parseDouble(row.get(2)),
        Double.parseDouble(row.get(3)),
        row.get(4).equals("yes"),
        row.get(5).equals("yes"),
        row.get(6));
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
    List<Named> found = found(text);
    return found.stream().max(Comparator.comparingInt(n -> n.name.length())).map(Named::material);
  }

  /**
   * Whether a magnet holds what a free text names.
   *
   * @return empty where the words do not settle it: no material is named, or one that a magnet
   *     holds beside one that it does not
   */
  public Optional<Boolean> magnetic(String text) {
    List<Boolean> answers =
        found(text).stream().map(n -> n.material.magnetic()).distinct().toList();
    return answers.size() == 1 ? Optional.of(answers.get(0)) : Optional.empty();
  }

  /** A name that stands in a text. */
  private record Named(Material material, String name) {}

  /** Names in a text that are not part of a longer name in it. */
  private List<Named> found(String text) {
    String words = text.toLowerCase(Locale.ROOT);
    List<Named> all = new ArrayList<>();
    for (Material m : materials) {
      names(m).filter(n -> standsIn(words, n)).forEach(n -> all.add(new Named(m, n)));
    }
    boolean kindTold = all.stream().anyMatch(n -> n.material.name().contains("stainless"));
    if (standsIn(words, "stainless") && !kindTold) {
      return List.of();
    }
    return all.stream()
        .filter(
            n ->
                all.stream()
                    .noneMatch(o -> o.name.length() > n.name.length() && o.name.contains(n.name)))
        .filter(n -> !(kindTold && n.name.equals("steel")))
        .toList();
  }

  private static Stream<String> names(Material m) {
    return Stream.concat(Stream.of(m.name()), m.otherNames().stream())
        .map(n -> n.toLowerCase(Locale.ROOT));
  }

  private static boolean standsIn(String text, String name) {
    return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])")
        .matcher(text)
        .find();
  }
}
