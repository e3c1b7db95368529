package io.github.holdpath.sim.motion.joint;

import java.util.ArrayList;
import java.util.List;

/**
 * A robot cannot follow a motion.
 *
 * @param pointer of the move in the scene file in which it happens; empty at the very start
 * @param time first instant at which it happens, s
 * @param words what happens, where, by how much and what to do about it
 * @param further faults that were found with it, as of other corners between the same two stops
 */
public record JointFault(String pointer, double time, String words, List<JointFault> further)
    implements JointOutcome {
  /** Copies the list. */
  public JointFault {
    further = List.copyOf(further);
  }

  /** A fault alone. */
  public JointFault(String pointer, double time, String words) {
    this(pointer, time, words, List.of());
  }

  /** It and the further ones, in order. */
  public List<JointFault> all() {
    List<JointFault> all = new ArrayList<>();
    all.add(this);
    further.forEach(fault -> all.addAll(fault.all()));
    return all;
  }
}
