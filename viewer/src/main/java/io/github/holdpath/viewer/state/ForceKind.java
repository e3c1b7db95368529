package io.github.holdpath.viewer.state;

/** What acts on the part: each with its own colour, shaft and word. */
public enum ForceKind {
  /** Weight. */
  GRAVITY("gravity", 0x5B2A86),
  /** Minus mass times acceleration; its shaft is dashed. */
  INERTIA("inertia", 0x1F7A3D),
  /** Drag and the air carried along; its shaft is dashed. */
  AIR("air", 0x7A7F33),
  /** Force that the grip must put on the part. */
  FORCE("required force", 0xC2257F),
  /** Moment that the grip must put on the part about the grip's origin; a bent arrow. */
  MOMENT("required moment", 0x8A1458);

  private final String label;
  private final int rgb;

  ForceKind(String label, int rgb) {
    this.label = label;
    this.rgb = rgb;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Colour as {@code 0xRRGGBB}, apart from those of margins. */
  public int rgb() {
    return rgb;
  }

  /** Whether its shaft is dashed. */
  public boolean dashed() {
    return this == INERTIA || this == AIR;
  }

  /** Unit of its value. */
  public String unit() {
    return this == MOMENT ? "N m" : "N";
  }
}
