/**
 * Parts of the window, each on its own. Read {@link io.github.holdpath.viewer.panel.StageView}
 * first.
 */
@NullMarked
package io.github.holdpath.viewer.panel;

import org.jspecify.annotations.NullMarked;
