/**
 * The rendering core that draws without a window. Read {@link
 * io.github.holdpath.viewer.shot.Studio} first.
 */
@NullMarked
package io.github.holdpath.viewer.shot;

import org.jspecify.annotations.NullMarked;
