package io.github.holdpath.sim.motion;

/**
 * One move of a motion, with what it reaches. Peaks are those of the grip frame's origin and of the
 * turning, with all acceleration, along the path and across it; jerk is that along the path, but of
 * a move along the joints the whole. A peak that the law does not bound is infinite.
 *
 * @param index from 1
 * @param pointer place in the scene file
 * @param name given by the user, or empty
 * @param from start of the move, s
 * @param to end of the move, s
 * @param length of the path, m
 * @param turn angle turned through, rad
 * @param peakSpeed m/s
 * @param peakAcceleration m/s^2
 * @param peakJerk m/s^3
 * @param peakTurnSpeed rad/s
 * @param peakTurnAcceleration rad/s^2
 * @param peakTurnJerk rad/s^3
 */
public record MotionSegment(
    int index,
    String pointer,
    String name,
    double from,
    double to,
    double length,
    double turn,
    double peakSpeed,
    double peakAcceleration,
    double peakJerk,
    double peakTurnSpeed,
    double peakTurnAcceleration,
    double peakTurnJerk) {}
