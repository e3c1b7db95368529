/**
 * Judging a whole motion: worst case, per segment and over all, with what the numbers rest on. Read
 * {@link io.github.holdpath.sim.study.HoldStudy} first. Theory page, section 3.
 */
@NullMarked
package io.github.holdpath.sim.study;

import org.jspecify.annotations.NullMarked;
