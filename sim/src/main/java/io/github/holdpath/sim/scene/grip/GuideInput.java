package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.grip.GuideRating;
import io.github.holdpath.dynamics.grip.JawGuide;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what is told of the guides of jaws. */
final class GuideInput {
  private static final double NONE = Double.POSITIVE_INFINITY;

  private GuideInput() {}

  /**
   * The guide of each jaw.
   *
   * @param grip with the field {@code guide}
   * @param pads with the field {@code overhang}
   * @return empty where the file tells nothing, or after a fault
   */
  static Optional<JawGuide> read(Values grip, Values pads, GripContext context) {
    if (grip.isThere("guide") && !pads.isThere("overhang")) {
      context
          .faults()
          .add(
              pads.place("overhang"),
              "is missing: the load of a guide grows with the distance along z from the guide to"
                  + " the middle of the pad; for example \"60 mm\"");
    }
    OptionalDouble overhang = pads.number("overhang");
    Optional<Amount> moments = grip.group("guide").flatMap(g -> g.amount("moments"));
    if (overhang.isEmpty() || (grip.isThere("guide") && moments.isEmpty())) {
      return Optional.empty();
    }
    context.notes().add(grip, "guide", Scene.Origin.NOT_STATED);
    double force = grip.group("guide").map(g -> g.number("force").orElse(NONE)).orElse(NONE);
    GuideRating rating =
        moments
            .map(m -> new GuideRating(m.get(0), m.get(1), m.get(2), force))
            .orElse(new GuideRating(NONE, NONE, NONE, NONE));
    return Optional.of(new JawGuide(overhang.getAsDouble(), rating));
  }
}
