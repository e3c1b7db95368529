package io.github.holdpath.viewer.edit;

import java.util.ArrayList;
import java.util.List;

/**
 * Steps that can be taken back and taken again. Immutable.
 *
 * @param <T> what is changed; immutable too
 * @param steps the oldest first
 * @param at index of the step that counts
 */
record History<T>(List<T> steps, int at) {
  /** Steps kept at most; older ones are forgotten. */
  static final int MOST = 200;

  /** Copies the list. */
  History {
    steps = List.copyOf(steps);
  }

  /** With one step, which nothing takes back. */
  static <T> History<T> of(T first) {
    return new History<>(List.of(first), 0);
  }

  T now() {
    return steps.get(at);
  }

  /** With a step more; those taken back are forgotten. */
  History<T> then(T next) {
    List<T> kept = new ArrayList<>(steps.subList(Math.max(0, at + 2 - MOST), at + 1));
    kept.add(next);
    return new History<>(kept, kept.size() - 1);
  }

  /** With another last step, as while a slider is dragged. */
  History<T> instead(T last) {
    List<T> kept = new ArrayList<>(steps.subList(0, at));
    kept.add(last);
    return new History<>(kept, at);
  }

  boolean canUndo() {
    return at > 0;
  }

  boolean canRedo() {
    return at + 1 < steps.size();
  }

  /** One step back, if there is one. */
  History<T> undo() {
    return new History<>(steps, Math.max(0, at - 1));
  }

  /** One step forth, if there is one. */
  History<T> redo() {
    return new History<>(steps, Math.min(steps.size() - 1, at + 1));
  }
}
