package io.github.holdpath.scenes.plot;

import io.github.holdpath.sim.timelaw.LawKind;

/**
 * Colour and dashes of a curve. The colours were chosen so that they stay apart for eyes that do
 * not tell red, green or blue; the dashes tell the curves apart without any colour.
 */
enum Ink {
  TRAPEZOID("#1E242C", ""),
  S_CURVE("#1432D2", "12 4"),
  QUINTIC("#D94A18", "2.5 2.5"),
  MODIFIED_SINE("#871396", "9 3 2 3"),
  CYCLOIDAL("#2F9790", "5 3"),
  BLEND("#1432D2", ""),
  ARC("#D94A18", "6 3"),
  GREY("#6A6E75", ""),
  GREY_DASHED("#6A6E75", "4 4");

  private final String colour;
  private final String dashes;

  Ink(String colour, String dashes) {
    this.colour = colour;
    this.dashes = dashes;
  }

  /** The ink of a law. */
  static Ink of(LawKind law) {
    return switch (law) {
      case TRAPEZOID -> TRAPEZOID;
      case S_CURVE -> S_CURVE;
      case QUINTIC -> QUINTIC;
      case MODIFIED_SINE -> MODIFIED_SINE;
      case CYCLOIDAL -> CYCLOIDAL;
    };
  }

  String colour() {
    return colour;
  }

  /** Attributes of a line in this ink. */
  String stroke(double width) {
    String line = "fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + width + "\"";
    return dashes.isEmpty() ? line : line + " stroke-dasharray=\"" + dashes + "\"";
  }
}
