package io.github.holdpath.dynamics.grip;

/** How a magnet is switched, which says what a loss of power does to the part. */
public enum MagnetType {
  /** Always pulls; the part is stripped off. */
  PERMANENT("permanent"),
  /** A permanent magnet that is turned or shunted to let go; keeps its pull without power. */
  SWITCHED("switched permanent"),
  /** Pulls while current flows; lets go when power fails. */
  ELECTROMAGNET("electromagnet");

  private final String label;

  MagnetType(String label) {
    this.label = label;
  }

  /** Name in scene files and texts. */
  public String label() {
    return label;
  }

  /** Whether the pull stays when power fails (common practice, no source). */
  public boolean keepsWithoutPower() {
    return this != ELECTROMAGNET;
  }
}
