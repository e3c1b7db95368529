package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.CentricGrip;
import io.github.holdpath.dynamics.grip.JawGuide;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.Spin;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Builds grips with three or more jaws on a circle. */
final class CentricBuilder {
  private static final int Z = 2;

  private CentricBuilder() {}

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  static Optional<CentricGrip> build(Values grip, GripContext context) {
    int before = context.faults().count();
    Optional<Clamping> clamping = Clamping.read(grip, context);
    Optional<Spin> spin = grip.group("spin").flatMap(s -> spin(s, context));
    Optional<Values> given = grip.group("pads");
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Values pads = given.get();
    ReachRule.check(grip, pads, "diameter", context);
    PatchStiffness stiffness = LedgeBuilder.stiffness(pads, context.notes());
    Optional<PadContact> contact = PadContact.read(pads, List.of(Z), List.of(), "z", context);
    OptionalDouble count = pads.number("count");
    List<Ledge> ledges = LedgeBuilder.build(grip, pads, stiffness, names("pad ", count), context);
    Optional<JawGuide> guide = GuideInput.read(grip, pads, context);
    Optional<String> side = pads.text("side");
    OptionalDouble diameter = pads.number("diameter");
    boolean inside = side.equals(Optional.of("inside"));
    if (clamping.isPresent() && spin.isPresent() && side.isPresent()) {
      checkSpin(grip, clamping.get().force(), inside, spin.get(), context);
    }
    if (context.faults().count() > before
        || contact.isEmpty()
        || clamping.isEmpty()
        || count.isEmpty()
        || diameter.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new CentricGrip(
            (int) count.getAsDouble(),
            diameter.getAsDouble(),
            inside,
            contact.get().shape(),
            contact.get().axis() == Z,
            clamping.get().mechanism(),
            clamping.get().force(),
            spin,
            clamping.get().friction(),
            stiffness,
            context.damage("maxPressure"),
            context.damage("maxPeakPressure"),
            ledges,
            guide));
  }

  /** Names of the patches of fingers, which ledges must not take. */
  static List<String> names(String word, OptionalDouble count) {
    return IntStream.rangeClosed(1, (int) count.orElse(0)).mapToObj(i -> word + i).toList();
  }

  private static Optional<Spin> spin(Values spin, GripContext context) {
    for (String name : List.of("speed", "jawMass", "jawRadius")) {
      context.notes().add(spin, name, Scene.Origin.NOT_STATED);
    }
    OptionalDouble turns = spin.number("speed");
    OptionalDouble mass = spin.number("jawMass");
    OptionalDouble radius = spin.number("jawRadius");
    return turns.isEmpty() || mass.isEmpty() || radius.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Spin(2 * Math.PI * turns.getAsDouble(), mass.getAsDouble(), radius.getAsDouble()));
  }

  private static void checkSpin(
      Values grip, double force, boolean inside, Spin spin, GripContext context) {
    if (CentricGrip.heldForce(force, inside, Optional.of(spin)) > 0) {
      return;
    }
    context
        .faults()
        .add(
            grip.place("spin"),
            String.format(
                Locale.ROOT,
                "opens the grip: at this speed each jaw is thrown outward with %.1f N, more than"
                    + " the %.1f N that press it inward; put a lower speed, or take lighter jaws or"
                    + " more force",
                spin.outward(),
                force));
  }
}
