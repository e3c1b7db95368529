package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.Optional;

/** Whether the gripper's stroke reaches the part. */
final class ReachRule {
  private ReachRule() {}

  /**
   * Notes a fault where an opening or diameter lies outside of {@code range}.
   *
   * @param grip with the field {@code range}
   * @param owner object that holds the opening or diameter
   * @param name of its field
   */
  static void check(Values grip, Values owner, String name, GripContext context) {
    Optional<Amount> range = grip.amount("range");
    Optional<Amount> size = owner.amount(name);
    if (range.isEmpty()) {
      return;
    }
    if (!(range.get().get(0) < range.get().get(1))) {
      context
          .faults()
          .add(
              grip.place("range"),
              range.get().text()
                  + " must go from the least to the greatest; for example \"30 80 mm\"");
      return;
    }
    if (size.isPresent()
        && (size.get().first() < range.get().get(0) || size.get().first() > range.get().get(1))) {
      context
          .faults()
          .add(
              owner.place(name),
              size.get().text()
                  + " is out of the gripper's reach, "
                  + range.get().text()
                  + "; take other fingers or another gripper and put their range");
    }
  }
}
