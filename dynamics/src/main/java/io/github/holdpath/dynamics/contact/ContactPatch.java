package io.github.holdpath.dynamics.contact;

import io.github.holdpath.dynamics.spatial.Pose;

/**
 * One contact between grip and part.
 *
 * @param name as shown to the user
 * @param pose {@code X_TP}: patch frame in the grip frame, +z into the part
 * @param shape of the pressed area
 * @param friction mu, dimensionless, not negative
 * @param preload N0, normal force when the part is weightless, N, not negative
 * @param pull P, force along -z of vacuum or magnetism, N, not negative
 * @param stiffness in the patch frame
 * @param maxPressure permitted mean pressure on the part, Pa, infinite if none is given
 * @param maxPeakPressure permitted peak pressure on the part, Pa, infinite if none is given
 * @param ledge whether this is form fit that only pushes (no preload, no friction in shares)
 */
public record ContactPatch(
    String name,
    Pose pose,
    PatchShape shape,
    double friction,
    double preload,
    double pull,
    PatchStiffness stiffness,
    double maxPressure,
    double maxPeakPressure,
    boolean ledge) {
  /** Refuses negative numbers and a ledge with preload or pull. */
  public ContactPatch {
    notNegative("friction", friction);
    notNegative("preload", preload);
    notNegative("pull", pull);
    if (!(maxPressure > 0) || !(maxPeakPressure > 0)) {
      throw new IllegalArgumentException(
          "permitted pressure must be positive, but was " + maxPressure + ", " + maxPeakPressure);
    }
    if (ledge && (preload > 0 || pull > 0)) {
      throw new IllegalArgumentException("a ledge has neither preload nor pull");
    }
  }

  /** The same patch pressed and pulled with other forces. */
  public ContactPatch withForces(double otherPreload, double otherPull) {
    return new ContactPatch(
        name,
        pose,
        shape,
        friction,
        otherPreload,
        otherPull,
        stiffness,
        maxPressure,
        maxPeakPressure,
        ledge);
  }

  /** The same patch in another shape. */
  public ContactPatch withShape(PatchShape other) {
    return new ContactPatch(
        name, pose, other, friction, preload, pull, stiffness, maxPressure, maxPeakPressure, ledge);
  }

  /** The same patch in another place. */
  public ContactPatch withPose(Pose other) {
    return new ContactPatch(
        name,
        other,
        shape,
        friction,
        preload,
        pull,
        stiffness,
        maxPressure,
        maxPeakPressure,
        ledge);
  }

  /** The same patch with another friction. */
  public ContactPatch withFriction(double other) {
    return new ContactPatch(
        name, pose, shape, other, preload, pull, stiffness, maxPressure, maxPeakPressure, ledge);
  }

  /** Largest permitted normal force by mean pressure, N; infinite for a line or without a limit. */
  public double maxNormal() {
    return shape.area() > 0 ? maxPressure * shape.area() : Double.POSITIVE_INFINITY;
  }

  private static void notNegative(String name, double value) {
    if (!(value >= 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(
          name + " must be finite and not negative, but was " + value);
    }
  }
}
