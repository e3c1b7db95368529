package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.JawGuide;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.field.Values;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds grips with two parallel jaws. */
final class JawsBuilder {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);
  private static final List<Integer> BESIDE_THE_PADS = List.of(0, 2);
  private static final List<Integer> FROM_PAD_TO_PAD = List.of(1);

  private JawsBuilder() {}

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  static Optional<JawGrip> build(Values grip, GripContext context) {
    int before = context.faults().count();
    Optional<Clamping> clamping = Clamping.read(grip, context);
    ReachRule.check(grip, grip, "opening", context);
    Optional<Values> pads = grip.group("pads");
    if (pads.isEmpty()) {
      return Optional.empty();
    }
    PatchStiffness stiffness = LedgeBuilder.stiffness(pads.get(), context.notes());
    Optional<VeeInput> vee =
        pads.get().isThere("vee") ? VeeInput.read(pads.get(), context) : Optional.empty();
    Optional<PadContact> contact =
        pads.get().isThere("vee")
            ? vee.map(VeeInput::flank)
            : PadContact.read(pads.get(), BESIDE_THE_PADS, FROM_PAD_TO_PAD, "x or z", context);
    boolean alongX = contact.filter(c -> c.axis() == 0).isPresent();
    List<Ledge> ledges =
        LedgeBuilder.build(
            grip, pads.get(), stiffness, JawGrip.patchNames(vee.isPresent(), alongX), context);
    Optional<JawGuide> guide = GuideInput.read(grip, pads.get(), context);
    OptionalDouble opening = grip.number("opening");
    if (context.faults().count() > before
        || contact.isEmpty()
        || clamping.isEmpty()
        || opening.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new JawGrip(
            opening.getAsDouble(),
            contact.get().shape(),
            alongX ? X : Z,
            vee.map(VeeInput::vee),
            clamping.get().mechanism(),
            clamping.get().force(),
            clamping.get().friction(),
            stiffness,
            context.damage("maxPressure"),
            context.damage("maxPeakPressure"),
            ledges,
            guide));
  }
}
