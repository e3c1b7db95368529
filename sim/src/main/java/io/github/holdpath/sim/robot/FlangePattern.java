package io.github.holdpath.sim.robot;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Bolt pattern of a robot's flange as ISO 9409-1 designates it: {@code ISO 9409-1-50-4-M6} has 4
 * threaded holes M6 on a pitch circle of 50 mm. The form of the designation and the list of common
 * ones are from memory; the standard was not read.
 *
 * @param pitchCircle diameter on which the holes' centres lie, m
 * @param holes number of threaded holes, evenly spread unless some are left out
 * @param thread nominal diameter of the metric thread, m
 */
public record FlangePattern(double pitchCircle, int holes, double thread) {
  private static final Pattern FORM =
      Pattern.compile(
          "\\s*(?:ISO\\s*9409-1\\s*-\\s*)?(\\d{1,4}(?:[.,]\\d)?)-(\\d{1,2})-M(\\d{1,2})\\s*",
          Pattern.CASE_INSENSITIVE);

  /** Patterns often met, from memory. */
  public static final List<String> COMMON =
      List.of(
          "ISO 9409-1-25-4-M4",
          "ISO 9409-1-31.5-4-M5",
          "ISO 9409-1-40-4-M6",
          "ISO 9409-1-50-4-M6",
          "ISO 9409-1-63-4-M6",
          "ISO 9409-1-80-6-M8",
          "ISO 9409-1-100-6-M8",
          "ISO 9409-1-125-6-M10",
          "ISO 9409-1-160-6-M10",
          "ISO 9409-1-200-6-M12");

  /** Refuses patterns that cannot be: fewer than two holes, or holes that overlap. */
  public FlangePattern {
    LevelAxes.checkLength(pitchCircle, "pitchCircle");
    LevelAxes.checkLength(thread, "thread");
    if (holes < 2) {
      throw new IllegalArgumentException("holes must be at least 2, but were " + holes);
    }
    if (!fits(pitchCircle, holes, thread)) {
      throw new IllegalArgumentException(
          "holes must leave room for each other, but " + holes + " on the pitch circle overlap");
    }
  }

  private static boolean fits(double pitchCircle, int holes, double thread) {
    return pitchCircle * Math.sin(Math.PI / holes) > thread;
  }

  /**
   * Reads a designation, with or without the standard's number before it; empty if it is none.
   *
   * @param designation as {@code ISO 9409-1-50-4-M6} or {@code 50-4-M6}
   */
  public static Optional<FlangePattern> parse(String designation) {
    Matcher m = FORM.matcher(designation);
    if (!m.matches()) {
      return Optional.empty();
    }
    double circle = Double.parseDouble(m.group(1).replace(',', '.')) / 1000;
    int holes = Integer.parseInt(m.group(2));
    double thread = Integer.parseInt(m.group(3)) / 1000.0;
    boolean real = holes >= 2 && thread > 0 && fits(circle, holes, thread);
    return real ? Optional.of(new FlangePattern(circle, holes, thread)) : Optional.empty();
  }

  /** The designation that the standard gives it. */
  public String designation() {
    double mm = Math.round(pitchCircle * 1e4) / 10.0;
    String circle = mm == Math.rint(mm) ? Long.toString((long) mm) : Double.toString(mm);
    return "ISO 9409-1-" + circle + "-" + holes + "-M" + Math.round(thread * 1000);
  }
}
