package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * What acts on a carried part at an instant, world axes. Gravity, inertia, air and the grip's force
 * add up to nothing (d'Alembert; theory, eqs. 1.1 and 1.2).
 *
 * @param centre of mass, m
 * @param velocity of the centre of mass, m/s
 * @param gravity weight, acts at the centre of mass, N
 * @param inertia minus mass times acceleration of the centre of mass, N
 * @param air drag and the inertia of the air carried along, at the centre of mass, N
 * @param grip where the grip acts: origin of the grip frame, m
 * @param force that the grip must put on the part, N
 * @param moment that the grip must put on the part besides, about the grip frame's origin, N m
 */
public record PartForces(
    Vec3 centre,
    Vec3 velocity,
    Vec3 gravity,
    Vec3 inertia,
    Vec3 air,
    Vec3 grip,
    Vec3 force,
    Vec3 moment) {
  /** From a motion state of the grip frame and the load that it asks. */
  static PartForces of(MassProperties body, MotionState state, RequiredWrench load) {
    var rotation = state.pose().rotation();
    Vec3 arm = rotation.rotate(body.centreOfMass());
    Vec3 w = state.angularVelocity();
    Vec3 a =
        state
            .acceleration()
            .plus(state.angularAcceleration().cross(arm))
            .plus(w.cross(w.cross(arm)));
    Vec3 inertia = a.times(-body.mass());
    Vec3 gravity = rotation.rotate(load.gravity().force()).times(-1);
    Vec3 force = rotation.rotate(load.total().force());
    return new PartForces(
        state.pose().position().plus(arm),
        state.velocity().plus(w.cross(arm)),
        gravity,
        inertia,
        force.plus(gravity).plus(inertia).times(-1),
        state.pose().position(),
        force,
        rotation.rotate(load.total().moment()));
  }
}
