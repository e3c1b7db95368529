package io.github.holdpath.dynamics.inertia;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * Mass properties of a rigid body in a stated frame.
 *
 * @param mass kg, positive
 * @param centreOfMass in the frame, m
 * @param inertia about the centre of mass, axes parallel to the frame
 */
public record MassProperties(double mass, Vec3 centreOfMass, Inertia inertia) {
  /** Refuses a mass that is not positive and an inertia that no body can have. */
  public MassProperties {
    if (!(mass > 0) || !Double.isFinite(mass)) {
      throw new IllegalArgumentException("mass must be positive, but was " + mass);
    }
    String fault = inertia.fault();
    if (!fault.isEmpty()) {
      throw new IllegalArgumentException("inertia " + fault);
    }
  }

  /** These properties, given in frame B, in frame A of {@code X_AB}. */
  public MassProperties seenFrom(Pose pose) {
    return new MassProperties(mass, pose.apply(centreOfMass), inertia.rotated(pose.rotation()));
  }

  /** Two bodies as one, both in the same frame. */
  public MassProperties plus(MassProperties o) {
    double total = mass + o.mass;
    Vec3 c = centreOfMass.times(mass / total).plus(o.centreOfMass.times(o.mass / total));
    Inertia sum =
        inertia
            .plus(Inertia.ofPointAt(mass, centreOfMass.minus(c)))
            .plus(o.inertia)
            .plus(Inertia.ofPointAt(o.mass, o.centreOfMass.minus(c)));
    return new MassProperties(total, c, sum);
  }
}
