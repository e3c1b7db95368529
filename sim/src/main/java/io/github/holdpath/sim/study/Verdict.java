package io.github.holdpath.sim.study;

/** What a study says of a grip on a motion. */
public enum Verdict {
  /** The first-slip factor keeps the required safety all along the motion. */
  HOLDS("holds"),
  /** Somewhere it does not. */
  DOES_NOT_HOLD("does not hold");

  private final String label;

  Verdict(String label) {
    this.label = label;
  }

  /** Name in results and texts. */
  public String label() {
    return label;
  }
}
