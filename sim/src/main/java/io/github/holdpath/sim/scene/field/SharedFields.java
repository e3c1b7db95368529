package io.github.holdpath.sim.scene.field;

import static io.github.holdpath.sim.scene.field.FieldSpec.optional;
import static io.github.holdpath.sim.scene.field.FieldSpec.required;

import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;

/** Types and objects that stand in several places of a scene file. */
public final class SharedFields {
  /** A point, m. */
  public static final QuantityType POINT =
      QuantityType.list(Dimension.LENGTH, 3, Bounds.within(1000));

  /** Position and orientation. */
  public static final ObjectSpec POSE =
      ObjectSpec.of(
          "pose",
          "position and orientation of a frame",
          required("at", POINT, "the position", "\"0.9 -0.5 0.4 m\""),
          optional(
              "rpy",
              QuantityType.list(Dimension.ANGLE, 3, Bounds.within(1000)),
              "the orientation as turns about the fixed axes x, then y, then z",
              "\"180 0 90 deg\""),
          optional(
              "quaternion",
              new NumberListType(4, false, Bounds.within(1.001)),
              "the orientation as a unit quaternion w, x, y, z, in place of rpy",
              "[0, 1, 0, 0]"));

  private SharedFields() {}

  /** A speed, or a percentage of the scene's. */
  public static QuantityType speed(boolean percent) {
    return new QuantityType(Dimension.SPEED, 1, Bounds.positive(1000), percent);
  }

  /** An acceleration, or a percentage of the scene's. */
  public static QuantityType acceleration(boolean percent) {
    return new QuantityType(Dimension.ACCELERATION, 1, Bounds.positive(1e5), percent);
  }

  /** A jerk, or a percentage of the scene's. */
  public static QuantityType jerk(boolean percent) {
    return new QuantityType(Dimension.JERK, 1, Bounds.positive(1e8), percent);
  }

  /** A turning speed, or a percentage of the scene's. */
  public static QuantityType turnSpeed(boolean percent) {
    return new QuantityType(Dimension.TURN_SPEED, 1, Bounds.positive(1e4), percent);
  }

  /** A turning acceleration, or a percentage of the scene's. */
  public static QuantityType turnAcceleration(boolean percent) {
    return new QuantityType(Dimension.TURN_ACCELERATION, 1, Bounds.positive(1e6), percent);
  }

  /** A turning jerk, or a percentage of the scene's. */
  public static QuantityType turnJerk(boolean percent) {
    return new QuantityType(Dimension.TURN_JERK, 1, Bounds.positive(1e9), percent);
  }
}
