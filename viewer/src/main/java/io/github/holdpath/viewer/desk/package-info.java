/** The window: its parts put together. Read {@link io.github.holdpath.viewer.desk.Desk} first. */
@NullMarked
package io.github.holdpath.viewer.desk;

import org.jspecify.annotations.NullMarked;
