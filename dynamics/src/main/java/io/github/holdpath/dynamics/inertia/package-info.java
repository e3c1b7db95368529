/**
 * Mass, centre of mass and inertia of a rigid body. Read {@link
 * io.github.holdpath.dynamics.inertia.MassProperties} first. Theory page, section 1.
 */
@NullMarked
package io.github.holdpath.dynamics.inertia;

import org.jspecify.annotations.NullMarked;
