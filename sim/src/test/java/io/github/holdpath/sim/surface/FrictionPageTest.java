package io.github.holdpath.sim.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The page of the tables; {@code -DwriteFriction=true} writes it anew. */
class FrictionPageTest {
  private static final Path PAGE = Path.of("../docs/formats/friction.md");

  @Test
  void pageIsTheTables() throws IOException {
    String page = page();
    if (Boolean.getBoolean("writeFriction")) {
      Files.writeString(PAGE, page);
    }
    assertEquals(page, Files.readString(PAGE), "write it anew with -DwriteFriction=true");
  }

  private static String page() {
    StringBuilder text =
        new StringBuilder(
            """
            # Friction and materials

            Generated from the program's tables. A scene may name a pair in place of a number:

            ```json
            "friction": { "pair": "steel, steel", "state": "oily" }
            ```

            The order of the two and capitals do not matter. The low end of the range counts, and the result says so; it stays *assumed* unless `origins` says otherwise.

            **Measure.** Static friction scatters: clean metal by a factor of three, and the same pair from one lot to the next. A table cannot know your surface. A part that slips can hurt someone: before a robot runs on these numbers, measure real parts in their worst state (the angle at which a part slides on a tilted pad of the grip; its tangent is mu), write the number, and give its origin.

            *common practice, no source*: values that the trade works with, without a publication behind them. *from memory*: not looked up. The cited ranges were carried over from a collection: look them up before you cite them yourself. No pair is known dusty: measure it.

            ## Static friction

            | pair | state | range | source |
            | --- | --- | --- | --- |
            """);
    for (FrictionRange r : FrictionPairs.load().all()) {
      String range = r.low() == r.high() ? "" + r.low() : r.low() + " to " + r.high();
      text.append("| ").append(r.pair()).append(" | ").append(r.state().label());
      text.append(" | ").append(range).append(" | ").append(r.source()).append(" |\n");
    }
    text.append(
        """

        ## Materials

        `part/material` is free text; where it names one of these and the part has a shape, a mass far from what the shape can weigh is a warning. Packages are left alone, as their filling makes their mass. The last column tells whether a magnet holds the material.

        | material | density, kg/m^3 | source | magnetic |
        | --- | --- | --- | --- |
        """);
    for (Material m : Materials.load().all()) {
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %.0f to %.0f | %s | %s |%n",
              m.name(),
              m.leastDensity(),
              m.mostDensity(),
              m.source() + (m.wraps() ? "; package" : ""),
              m.magnetic() ? "yes" : "no"));
    }
    return text.toString().replace("\r", "");
  }
}
