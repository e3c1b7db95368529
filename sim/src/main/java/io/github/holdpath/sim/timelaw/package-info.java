/**
 * Path position by time: the fastest laws within limits of speed, acceleration and jerk. Theory
 * page, section 5.
 */
@NullMarked
package io.github.holdpath.sim.timelaw;

import org.jspecify.annotations.NullMarked;
