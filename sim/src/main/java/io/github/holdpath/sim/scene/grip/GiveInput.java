package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import java.util.Optional;

/** Reads how the part swings on its grip, which only a known stiffness can answer. */
public final class GiveInput {
  private GiveInput() {}

  /**
   * Damping, which the result names as assumed unless told, and the swing that counts as settled.
   *
   * @param fields of the grip
   * @param grip as built
   * @param context takes faults and notes
   * @return empty where the grip's stiffness is not known
   */
  public static Optional<Scene.Give> read(Values fields, GripModel grip, GripContext context) {
    if (!grip.stiffnessKnown()) {
      for (String name : new String[] {"damping", "settle"}) {
        if (fields.isThere(name)) {
          context
              .faults()
              .add(
                  fields.place(name),
                  "has no stiffness that it belongs to, and without one the part counts as rigid on"
                      + " its grip; give \"stiffness\": { \"normal\": \"6 N/mm\" } of the cups or"
                      + " pads too, or take this out");
        }
      }
      return Optional.empty();
    }
    double damping = fields.number("damping").orElse(Scene.Give.USUAL_DAMPING);
    context.notes().add(fields, "damping", Double.toString(damping), Scene.Origin.ASSUMED);
    return Optional.of(new Scene.Give(damping, fields.number("settle")));
  }
}
