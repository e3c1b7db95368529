package io.github.holdpath.dynamics.grip;

/** How the fingers of a grip are driven; it changes the answer by factors, so it has no default. */
public enum Mechanism {
  /**
   * One drive moves all fingers together; guides carry what the load asks along the closing axis.
   */
  SYNCHRONISED("synchronised"),
  /** Each finger has its own force and floats on it. */
  INDEPENDENT("independent"),
  /** The closed finger stands like a wall. */
  SELF_LOCKING("self-locking");

  private final String label;

  Mechanism(String label) {
    this.label = label;
  }

  /** Name in scene files and texts. */
  public String label() {
    return label;
  }
}
