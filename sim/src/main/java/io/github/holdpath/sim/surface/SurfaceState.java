package io.github.holdpath.sim.surface;

import java.util.Optional;
import java.util.stream.Stream;

/** What lies between two surfaces. */
public enum SurfaceState {
  /** Dry and as clean as a workshop is. */
  DRY("dry"),
  /** With a film of oil or grease. */
  OILY("oily"),
  /** With water. */
  WET("wet"),
  /** With dust or loose fibres. */
  DUSTY("dusty");

  private final String label;

  SurfaceState(String label) {
    this.label = label;
  }

  /** Name in scene files and texts. */
  public String label() {
    return label;
  }

  /** The state of a name, in any letters. */
  public static Optional<SurfaceState> of(String name) {
    return Stream.of(values()).filter(s -> s.label.equalsIgnoreCase(name.strip())).findFirst();
  }
}
