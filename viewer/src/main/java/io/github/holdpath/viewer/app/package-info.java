/** The command {@code view}. Read {@link io.github.holdpath.viewer.app.ViewCommand} first. */
@NullMarked
package io.github.holdpath.viewer.app;

import org.jspecify.annotations.NullMarked;
