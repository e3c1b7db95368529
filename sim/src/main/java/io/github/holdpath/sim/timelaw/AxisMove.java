package io.github.holdpath.sim.timelaw;

import java.util.List;

/**
 * A planned move of one axis: phases of constant jerk in order of time, without gaps. Got from
 * {@link StateToState#plan}; units are those of its limits.
 *
 * @param phases at least one; the first begins at 0
 * @param recovery time until a start beyond the limits is back inside, s; 0 for a start inside
 */
public record AxisMove(List<LawPhase> phases, double recovery) {
  /** Keeps its own copy. */
  public AxisMove {
    phases = List.copyOf(phases);
  }

  /** Time from state to state, s. */
  public double duration() {
    return phases.get(phases.size() - 1).to();
  }

  /** The phase in which a time lies, the earlier one where two meet; times outside are clamped. */
  public LawPhase phaseAt(double time) {
    int i = 0;
    while (i < phases.size() - 1 && time > phases.get(i).to()) {
      i++;
    }
    return phases.get(i);
  }
}
