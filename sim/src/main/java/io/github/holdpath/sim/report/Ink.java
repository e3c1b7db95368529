package io.github.holdpath.sim.report;

/** Colour on a terminal, never the only sign of anything. */
public enum Ink {
  /** No colour. */
  PLAIN("", "", ""),
  /** ANSI colours, blue and orange: apart for colour-blind eyes too. */
  ANSI("\u001b[1;34m", "\u001b[1;38;5;166m", "\u001b[0m");

  private final String good;
  private final String bad;
  private final String off;

  Ink(String good, String bad, String off) {
    this.good = good;
    this.bad = bad;
    this.off = off;
  }

  String good(String s) {
    return good + s + off;
  }

  String bad(String s) {
    return bad + s + off;
  }
}
