package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.MagnetGrip;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a result rests on, a sentence each that names what to do. */
final class Assumptions {
  private Assumptions() {}

  /**
   * Collects them.
   *
   * @param rigid why the part counts as rigid on its grip; empty where it swings
   */
  static List<String> of(Scene scene, Motion motion, Optional<String> rigid) {
    List<String> list = new ArrayList<>();
    for (Scene.InputNote input : scene.inputs()) {
      list.add(input.pointer() + " " + input.text() + ": " + remedy(input.origin()));
    }
    boolean alike =
        scene.grip().patches().stream()
            .filter(p -> !p.ledge())
            .allMatch(p -> p.stiffness().equals(PatchStiffness.ALIKE));
    if (alike) {
      list.add(
          "No stiffness is given: all patches count as equally stiff and the part as rigid on its"
              + " grip; give the grip's stiffness to see it swing.");
    } else {
      rigid.ifPresent(list::add);
    }
    list.add(
        "Pull and force stand at their nominal value while the part is held: wait until they do"
            + " before lifting.");
    if (scene.grip() instanceof MagnetGrip magnet) {
      list.add(
          "One sheet hangs on the magnets: see to it that they take no second one, which may drop"
              + " on the way.");
      if (!magnet.type().keepsWithoutPower()) {
        list.add(
            "An electromagnet lets go when its power fails: keep people away from below, or secure"
                + " the part or the power.");
      }
    }
    if (scene.grip().patches().stream()
        .allMatch(
            p -> Double.isInfinite(p.maxPressure()) && Double.isInfinite(p.maxPeakPressure()))) {
      list.add("Crush is not checked: give part/damage/maxPressure to check it.");
    }
    list.addAll(scene.grip().assumptions());
    scene.robot().ifPresent(r -> list.addAll(r.notes()));
    list.addAll(motion.notes());
    return list;
  }

  private static String remedy(Scene.Origin origin) {
    return switch (origin) {
      case MEASURED -> "measured; measure again when part, surface or tool changes.";
      case DATA_SHEET -> "data sheet; check that its conditions are yours.";
      case ESTIMATED -> "estimated; measure it before relying on the result.";
      case ASSUMED -> "assumed; measure it on real parts in their worst state.";
      case NOT_STATED -> "origin not stated; name it under origins.";
    };
  }
}
