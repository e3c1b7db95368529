package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.Fault;
import java.util.List;
import java.util.Optional;

/**
 * How a job stands.
 *
 * @param draft as it was last changed
 * @param shown the newest draft that could be judged; stays where the draft has faults
 * @param first as it was when it was opened, judged in full; empty until then
 * @param faults of the draft that was looked at last; none if it could be read
 * @param phase how far the draft is judged
 * @param canUndo whether there is a step to take back
 * @param canRedo whether there is a step to take again
 * @param unsaved whether there are changes that no file has
 */
public record JobState(
    Draft draft,
    Optional<Judged> shown,
    Optional<Judged> first,
    List<Fault> faults,
    Phase phase,
    boolean canUndo,
    boolean canRedo,
    boolean unsaved) {
  /** How far a draft is judged. */
  public enum Phase {
    /** Not looked at yet; what is shown is older. */
    WAITING,
    /** Its colours are shown, the verdict is being computed. */
    JUDGING,
    /** Judged in full. */
    JUDGED,
    /** It has faults; what is shown is the last that had none. */
    FAULTY
  }

  /** Copies the list. */
  public JobState {
    faults = List.copyOf(faults);
  }
}
