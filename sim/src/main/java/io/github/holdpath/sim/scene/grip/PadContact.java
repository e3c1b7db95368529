package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.List;
import java.util.Optional;

/**
 * How flat or shaped pads touch the part.
 *
 * @param shape of each contact
 * @param axis of the grip frame along which its first side lies; a side across counts as 0
 */
record PadContact(PatchShape shape, int axis) {
  private static final int Z = 2;

  /**
   * Reads the fields {@code size} and {@code contact}.
   *
   * @param barAxes axes along which a bar touches every pad in a line
   * @param faceAxes axes along which a bar meets the pads with its ends
   * @param barWords the bar axes in words
   * @return empty if a field or the part's shape is faulty
   */
  static Optional<PadContact> read(
      Values pads,
      List<Integer> barAxes,
      List<Integer> faceAxes,
      String barWords,
      GripContext context) {
    Optional<Amount> size = pads.amount("size");
    Optional<String> stated = pads.text("contact");
    boolean unreadable = pads.isThere("contact") && stated.isEmpty();
    if (size.isEmpty() || unreadable || context.shapeIsFaulty()) {
      return Optional.empty();
    }
    PadContact face =
        new PadContact(new PatchShape.Rectangle(size.get().get(0), size.get().get(1)), 0);
    if (stated.equals(Optional.of("face"))) {
      return Optional.of(face);
    }
    Optional<PartShape.Cylinder> bar = context.bar();
    if (bar.isPresent() && barAxes.contains(bar.get().axis())) {
      return Optional.of(line(size.get(), bar.get()));
    }
    boolean ends = bar.isPresent() && faceAxes.contains(bar.get().axis());
    boolean sphere = context.shape().filter(PartShape.Sphere.class::isInstance).isPresent();
    if (stated.isPresent()) {
      context
          .faults()
          .add(
              pads.place("contact"),
              "a line needs a part with a cylinder or tube along "
                  + barWords
                  + "; give that shape, or write \"face\"");
    } else if (sphere || (bar.isPresent() && !ends)) {
      context
          .faults()
          .add(
              pads.place("contact"),
              "flat pads touch a "
                  + context.shape().orElseThrow().label()
                  + (sphere ? "" : " that lies like this")
                  + " in a point, which cannot hold a turn; for pads shaped to the part write"
                  + " \"contact\": \"face\"");
    } else {
      return Optional.of(face);
    }
    return Optional.empty();
  }

  /** A line along a bar, as long as the pad's side along it or as the bar, if that is shorter. */
  static PadContact line(Amount size, PartShape.Cylinder bar) {
    double side = size.get(bar.axis() == Z ? 1 : 0);
    return new PadContact(new PatchShape.Line(Math.min(side, bar.length())), bar.axis());
  }
}
