package io.github.holdpath.sim.scene.grip;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a magnet holds a material, from the words with which a user names it. Textbook knowledge
 * of ferromagnetism; a text that these words do not settle gets no answer.
 */
final class MagneticMaterials {
  /** Grades by number or letters, and the word for their structure. */
  private static final Set<String> AUSTENITIC =
      Set.of(
          "austenitic",
          "1.4301",
          "1.4305",
          "1.4307",
          "1.4310",
          "1.4401",
          "1.4404",
          "1.4541",
          "1.4571",
          "304",
          "304l",
          "316",
          "316l",
          "321",
          "v2a",
          "v4a");

  private static final Set<String> FERROMAGNETIC =
      Set.of("steel", "iron", "nickel", "cobalt", "tinplate", "ferritic", "martensitic");

  private static final Set<String> OTHER =
      Set.of(
          "aluminium",
          "aluminum",
          "magnesium",
          "copper",
          "brass",
          "bronze",
          "zinc",
          "titanium",
          "lead",
          "wood",
          "wooden",
          "plywood",
          "chipboard",
          "mdf",
          "board",
          "cardboard",
          "carton",
          "paper",
          "glass",
          "ceramic",
          "stone",
          "concrete",
          "plastic",
          "plastics",
          "abs",
          "pvc",
          "pet",
          "pe",
          "pp",
          "pom",
          "ptfe",
          "polyamide",
          "polycarbonate",
          "polyethylene",
          "polypropylene",
          "acrylic",
          "rubber",
          "foam",
          "textile",
          "leather",
          "cfrp",
          "gfrp");

  private MagneticMaterials() {}

  /**
   * Whether a material is ferromagnetic.
   *
   * @param material in the user's words
   * @return empty where the words do not tell, as for "stainless steel" without its kind
   */
  static Optional<Boolean> ferromagnetic(String material) {
    List<String> words =
        List.of(
            material.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", " ").strip().split(" "));
    if (words.stream().anyMatch(AUSTENITIC::contains)) {
      return Optional.of(false);
    }
    boolean holds = words.stream().anyMatch(FERROMAGNETIC::contains);
    boolean other = words.stream().anyMatch(OTHER::contains);
    boolean stainless =
        words.contains("stainless")
            && !words.contains("ferritic")
            && !words.contains("martensitic");
    return holds == other || stainless ? Optional.empty() : Optional.of(holds);
  }
}
