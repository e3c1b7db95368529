package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.grip.Vee;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The groove of vee pads.
 *
 * @param vee its angle
 * @param flank contact of the bar on each flank
 */
record VeeInput(Vee vee, PadContact flank) {
  private static final int Y = 1;
  private static final int Z = 2;

  /**
   * Reads the field {@code vee}.
   *
   * @param pads that have it
   * @return empty if faults were noted
   */
  static Optional<VeeInput> read(Values pads, GripContext context) {
    int before = context.faults().count();
    if (pads.isThere("contact")) {
      context
          .faults()
          .add(
              pads.place("contact"),
              "the flanks of a vee touch the bar along lines; take contact out, or take vee out for"
                  + " pads bored to the part");
    }
    Optional<Values> given = pads.group("vee");
    Optional<Amount> size = pads.amount("size");
    if (given.isEmpty() || context.shapeIsFaulty()) {
      return Optional.empty();
    }
    Optional<String> along = given.get().text("along");
    boolean unreadable = given.get().isThere("along") && along.isEmpty();
    checkPart(pads, given.get(), along, context);
    OptionalDouble angle = given.get().number("angle");
    if (context.faults().count() > before || unreadable || angle.isEmpty() || size.isEmpty()) {
      return Optional.empty();
    }
    PadContact flank =
        context
            .bar()
            .map(bar -> PadContact.line(size.get(), bar))
            .orElseGet(() -> line(size.get(), along.equals(Optional.of("z")) ? Z : 0));
    return Optional.of(new VeeInput(new Vee(angle.getAsDouble()), flank));
  }

  private static PadContact line(Amount size, int axis) {
    return new PadContact(new PatchShape.Line(size.get(axis == Z ? 1 : 0)), axis);
  }

  private static void checkPart(
      Values pads, Values vee, Optional<String> along, GripContext context) {
    Optional<PartShape> shape = context.shape();
    Optional<PartShape.Cylinder> bar = context.bar();
    if (bar.isPresent()) {
      String axis = String.valueOf("xyz".charAt(bar.get().axis()));
      if (bar.get().axis() == Y) {
        context
            .faults()
            .add(
                pads.place("vee"),
                "holds a bar along x or z, but the part's lies along y, in which the jaws close; put"
                    + " its axis along x or z, or take vee out");
      } else if (along.isPresent() && !along.get().equals(axis)) {
        context
            .faults()
            .add(
                vee.place("along"),
                "the part's "
                    + shape.orElseThrow().label()
                    + " lies along "
                    + axis
                    + "; write that, or leave along out");
      }
    } else if (shape.isPresent()) {
      context
          .faults()
          .add(
              pads.place("vee"),
              "holds a round bar, but the part is a "
                  + shape.get().label()
                  + "; give the part a cylinder or tube along x or z, or take vee out");
    } else if (!vee.isThere("along")) {
      context
          .faults()
          .add(
              vee.place("along"),
              "is missing: the part has no cylinder that tells along which axis the bar lies; write"
                  + " \"x\" or \"z\"");
    }
  }
}
