package io.github.holdpath.sim.scene.recording;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.util.ArrayList;
import java.util.List;

/** Faults of a recording by line; the first twenty are kept, the others counted. */
final class RecordingFaults {
  /** Faults shown at most. */
  static final int SHOWN = 20;

  private final String file;
  private final List<Fault> first = new ArrayList<>();
  private int count;

  RecordingFaults(String file) {
    this.file = file;
  }

  /** Adds a fault of a line, from 1. */
  void at(long line, String message) {
    add(new Fault(file, Math.toIntExact(line), 1, "", message));
  }

  /** Adds a fault of the whole file. */
  void whole(String message) {
    add(new Fault(file, 0, 0, "", message));
  }

  /** Adds a fault that has its place already. */
  void add(Fault fault) {
    count++;
    int at = first.size();
    while (at > 0 && first.get(at - 1).line() > fault.line()) {
      at--;
    }
    first.add(at, fault);
    if (first.size() > SHOWN) {
      first.remove(SHOWN);
    }
  }

  boolean isEmpty() {
    return count == 0;
  }

  /** Throws what was found, if anything. */
  void throwIfAny() throws SceneException {
    if (isEmpty()) {
      return;
    }
    List<Fault> all = new ArrayList<>(first);
    if (count > first.size()) {
      all.add(new Fault(file, 0, 0, "", "and " + (count - first.size()) + " more faults"));
    }
    throw new SceneException(all);
  }
}
