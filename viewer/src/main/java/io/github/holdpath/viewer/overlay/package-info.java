/**
 * Words and numbers over the image. Read {@link io.github.holdpath.viewer.overlay.Overlay} first.
 */
@NullMarked
package io.github.holdpath.viewer.overlay;

import org.jspecify.annotations.NullMarked;
