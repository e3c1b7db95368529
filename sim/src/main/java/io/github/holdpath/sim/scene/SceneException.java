package io.github.holdpath.sim.scene;

import java.util.List;
import java.util.stream.Collectors;

/** A user's file cannot be used; carries every fault of it. */
public final class SceneException extends Exception {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // the list is an immutable one of records that are never serialised
  private final List<Fault> faults;

  /** With at least one fault, in the order of the file. */
  public SceneException(List<Fault> faults) {
    super(faults.stream().map(Fault::toLine).collect(Collectors.joining("\n")));
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("a scene exception needs a fault");
    }
    this.faults = List.copyOf(faults);
  }

  /** Every fault of the file, in its order. */
  public List<Fault> faults() {
    return faults;
  }
}
