/**
 * Vectors, rotations, poses, wrenches and the motion state of a frame. Read {@link
 * io.github.holdpath.dynamics.spatial.Pose} first. Frames follow ISO 9787: W world, F flange, T
 * grip frame; {@code X_WT} is the pose of T in W. Theory page, section 1.
 */
@NullMarked
package io.github.holdpath.dynamics.spatial;

import org.jspecify.annotations.NullMarked;
