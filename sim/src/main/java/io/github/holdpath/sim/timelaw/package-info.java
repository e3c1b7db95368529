/**
 * Path position by time: the fastest laws within limits of speed, acceleration and jerk, and cam
 * laws stretched to keep them. {@link io.github.holdpath.sim.timelaw.RestToRest} plans one; read it
 * first. Theory page: {@code docs/theory/motion.md}.
 */
@NullMarked
package io.github.holdpath.sim.timelaw;

import org.jspecify.annotations.NullMarked;
