package io.github.holdpath.dynamics.grip;

import java.util.List;

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

  /**
   * Drives of fingers that move like this.
   *
   * @param fingers the patches of each finger with the directions in which it closes
   */
  List<Drive> drives(List<Drive> fingers) {
    return switch (this) {
      case SYNCHRONISED -> List.of(Drive.together(fingers));
      case INDEPENDENT -> List.copyOf(fingers);
      case SELF_LOCKING -> List.of();
    };
  }

  /**
   * Closures of fingers that move like this, see {@link GripModel#closures}.
   *
   * @param fingers the patches of each finger with the directions in which it closes
   */
  List<Drive> closures(List<Drive> fingers) {
    return this == SELF_LOCKING ? List.of(Drive.together(fingers)) : List.of();
  }
}
