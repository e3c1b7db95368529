/**
 * Planned routes, and the motion that one asks for. Read {@link
 * io.github.holdpath.sim.motion.route.Route} first, then {@link
 * io.github.holdpath.sim.motion.route.RouteMotion}; {@link
 * io.github.holdpath.sim.motion.route.JointRoute} plans with a robot, as moves along its joints
 * need it. Theory page: {@code docs/theory/motion.md}, sections 5.5, 5.14, 5.16 and 5.18.
 */
@NullMarked
package io.github.holdpath.sim.motion.route;

import org.jspecify.annotations.NullMarked;
