/**
 * Recorded motions: their fields in a scene, and the table of poses, every fault of it by line.
 * docs/theory/recording.md is the page. Read {@code RecordingReader} first.
 */
@NullMarked
package io.github.holdpath.sim.scene.recording;

import org.jspecify.annotations.NullMarked;
