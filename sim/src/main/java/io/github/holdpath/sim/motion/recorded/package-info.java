/**
 * Recordings, and the smooth motion that is fitted to one. Read {@link
 * io.github.holdpath.sim.motion.recorded.RecordedMotion} first. Theory page: {@code
 * docs/theory/recording.md}.
 */
@NullMarked
package io.github.holdpath.sim.motion.recorded;

import org.jspecify.annotations.NullMarked;
