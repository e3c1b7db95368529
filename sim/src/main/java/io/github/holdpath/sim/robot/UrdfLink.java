package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.spatial.Pose;
import java.util.Optional;

/** A link as its file has it. */
record UrdfLink(String name, int line, Optional<Inertial> inertial) {
  /**
   * What {@code <inertial>} holds, not yet judged.
   *
   * @param mass kg
   * @param origin of the frame of the inertia, at the centre of mass, in the link's frame
   * @param inertia in that frame
   */
  record Inertial(double mass, Pose origin, Inertia inertia) {}

  /** Why this can be no body, in words; empty if it can. */
  String fault() {
    if (inertial.isEmpty()) {
      return "";
    }
    Inertial i = inertial.get();
    if (i.mass() < 0) {
      return "mass must not be negative, but is " + i.mass() + " kg";
    }
    if (i.mass() == 0 && !i.inertia().equals(Inertia.POINT)) {
      return "has an inertia without a mass; give the mass, or take the inertia out";
    }
    String fault = i.inertia().fault();
    return fault.isEmpty() ? "" : "inertia " + fault;
  }

  /** Mass properties in the link's frame; only without a fault. */
  LinkBody body() {
    return inertial
        .map(
            i ->
                new LinkBody(
                    i.mass(), i.origin().position(), i.inertia().rotated(i.origin().rotation())))
        .orElse(LinkBody.NONE);
  }
}
