package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.InputNotes;
import io.github.holdpath.sim.scene.field.Values;

/** Shows that a safety factor was taken out of a data sheet's force. */
final class SafetyNote {
  private SafetyNote() {}

  /**
   * Notes a force as written, and as counted where a safety factor was in it.
   *
   * @param owner object that holds the force
   * @param name of its field, N
   * @param safety factor in the written value, 1 for none
   */
  static void add(InputNotes notes, Values owner, String name, double safety) {
    owner
        .amount(name)
        .ifPresent(
            a -> {
              String text =
                  safety == 1
                      ? a.text()
                      : a.text()
                          + ", "
                          + (float) (a.first() * safety)
                          + " N without the safety of "
                          + (float) safety
                          + " in it";
              notes.add(owner, name, text, Scene.Origin.NOT_STATED);
            });
  }
}
