package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.spatial.MotionState;

/**
 * The least first-slip factor over a stretch of motion.
 *
 * @param time s
 * @param segment the move it belongs to, from 1; 0 where the motion has no move
 * @param first factor, mode and patch
 * @param state motion of the grip frame there
 * @param load required wrench there, in the grip frame
 */
public record Worst(
    double time, int segment, FirstSlip first, MotionState state, RequiredWrench load) {}
