package io.github.holdpath.sim.path;

import java.util.List;

/**
 * Faults of the corners of a chain, in the order of the way. With every faulty zone replaced by its
 * {@link ChainFault#largestZone} the chain can be built, if none of them is 0.
 *
 * @param faults at least one
 */
public record ChainFaults(List<ChainFault> faults) implements ChainOutcome {
  /** Copies the list; refuses an empty one. */
  public ChainFaults {
    faults = List.copyOf(faults);
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("faults must not be empty");
    }
  }
}
