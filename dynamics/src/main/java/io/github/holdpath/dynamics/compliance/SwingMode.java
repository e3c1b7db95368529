package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * One way in which a part swings freely on its grip.
 *
 * @param frequency undamped, Hz; infinite where nothing of the part's mass moves with it
 * @param shift of the grip frame's origin, grip frame, to any one scale with {@code turn}
 * @param turn of the part
 * @param direction in words, as {@code along x} or {@code about y and along x}: how the part's
 *     moving energy is parted among shifts of its centre of mass and turns about it
 */
public record SwingMode(double frequency, Vec3 shift, Vec3 turn, String direction) {}
