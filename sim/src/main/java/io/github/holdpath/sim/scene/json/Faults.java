package io.github.holdpath.sim.scene.json;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the faults of one file while it is read. */
public final class Faults {
  private final String file;
  private final List<Fault> faults = new ArrayList<>();

  /**
   * Begins without a fault.
   *
   * @param file as the user named it
   */
  public Faults(String file) {
    this.file = file;
  }

  /** Notes a fault. */
  public void add(JsonNode.Place place, String message) {
    faults.add(new Fault(place.source(), place.line(), place.column(), place.pointer(), message));
  }

  /** Takes over faults that another reader has found. */
  public void addAll(List<Fault> others) {
    faults.addAll(others);
  }

  /** Number of faults so far. */
  public int count() {
    return faults.size();
  }

  /**
   * Ends the reading of a file that has faults.
   *
   * @throws SceneException with every fault, those of the file first, in its order
   */
  public void throwIfAny() throws SceneException {
    if (!faults.isEmpty()) {
      throw new SceneException(
          faults.stream()
              .sorted(
                  Comparator.comparing((Fault f) -> !f.file().equals(file))
                      .thenComparingInt(Fault::line)
                      .thenComparingInt(Fault::column))
              .toList());
    }
  }
}
