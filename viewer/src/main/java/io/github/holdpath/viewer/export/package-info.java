/**
 * Files to take away: an animated picture and a 3D scene, written byte by byte after their open
 * specifications. Read {@link io.github.holdpath.viewer.export.Apng} and {@link
 * io.github.holdpath.viewer.export.GltfScene} first.
 */
@NullMarked
package io.github.holdpath.viewer.export;

import org.jspecify.annotations.NullMarked;
