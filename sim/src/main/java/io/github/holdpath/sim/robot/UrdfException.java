package io.github.holdpath.sim.robot;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A URDF file cannot be used; carries every fault that was found. */
public final class UrdfException extends Exception {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // the list is an immutable one of records that are never serialised
  private final List<UrdfFault> faults;

  /** With at least one fault. */
  public UrdfException(List<UrdfFault> faults) {
    super(sorted(faults).stream().map(UrdfFault::toLine).collect(Collectors.joining("\n")));
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("a URDF exception needs a fault");
    }
    this.faults = sorted(faults);
  }

  /** Every fault, by line. */
  public List<UrdfFault> faults() {
    return faults;
  }

  private static List<UrdfFault> sorted(List<UrdfFault> faults) {
    return faults.stream().sorted(Comparator.comparingInt(UrdfFault::line)).toList();
  }
}
