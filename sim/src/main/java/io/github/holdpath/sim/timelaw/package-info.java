/**
 * Path position by time: the fastest laws within limits of speed, acceleration and jerk, and cam
 * laws stretched to keep them. {@link io.github.holdpath.sim.timelaw.RestToRest} plans one; read it
 * first. {@link io.github.holdpath.sim.timelaw.StateToState} plans the move of one axis that does
 * not begin or end at rest, {@link io.github.holdpath.sim.timelaw.ChainLaw} a law over zones with
 * limits of their own. Theory page: {@code docs/theory/motion.md}.
 */
@NullMarked
package io.github.holdpath.sim.timelaw;

import org.jspecify.annotations.NullMarked;
