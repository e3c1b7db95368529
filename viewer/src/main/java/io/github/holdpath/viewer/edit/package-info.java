/**
 * A scene that is being changed: its draft, the way back, judging beside the window, saving. Knows
 * no window and no graphics library. Read {@link io.github.holdpath.viewer.edit.Job} first.
 */
@NullMarked
package io.github.holdpath.viewer.edit;

import org.jspecify.annotations.NullMarked;
