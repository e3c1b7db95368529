package io.github.holdpath.sim.robot;

import java.util.List;

/**
 * A chain read from a URDF file.
 *
 * @param chain from the root link to the tip link; the flange is the tip's frame
 * @param notes what the file leaves open and what was left out, a sentence each
 */
public record UrdfChain(Chain chain, List<String> notes) {
  /** Copies the notes. */
  public UrdfChain {
    notes = List.copyOf(notes);
  }
}
