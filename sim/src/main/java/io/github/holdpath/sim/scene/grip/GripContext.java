package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.InputNotes;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the building of a grip needs besides its own fields.
 *
 * @param site surroundings, absent if faulty
 * @param part fields of the part, absent if it is not an object
 * @param shape of the part
 * @param faults takes what is wrong
 * @param notes takes values whose origin the result names
 */
public record GripContext(
    Optional<Scene.Site> site,
    Optional<Values> part,
    Optional<PartShape> shape,
    Faults faults,
    InputNotes notes) {
  /** Permitted pressure on the part, Pa; infinite if none is given. */
  double damage(String name) {
    return part.flatMap(p -> p.group("damage"))
        .map(d -> d.number(name).orElse(Double.POSITIVE_INFINITY))
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The part's shape where it is a cylinder or tube. */
  Optional<PartShape.Cylinder> bar() {
    return shape.filter(PartShape.Cylinder.class::isInstance).map(PartShape.Cylinder.class::cast);
  }

  /** Whether the file gives a shape that cannot be read, so that nothing may be judged by it. */
  boolean shapeIsFaulty() {
    return shape.isEmpty()
        && part.filter(p -> Stream.of("box", "cylinder", "tube", "sphere").anyMatch(p::isThere))
            .isPresent();
  }

  /** Notes a fault where the part names a peak pressure, which jaws' pads alone are judged by. */
  void peakIsForJaws(String others) {
    part.flatMap(p -> p.group("damage"))
        .filter(d -> d.isThere("maxPeakPressure"))
        .ifPresent(
            d ->
                faults.add(
                    d.place("maxPeakPressure"),
                    "belongs to the pads of jaws, not to " + others + "; write maxPressure"));
  }
}
