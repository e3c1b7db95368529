/**
 * Parts of the window, in Swing. Read {@link io.github.holdpath.viewer.panel.InputsPanel} first.
 */
@NullMarked
package io.github.holdpath.viewer.panel;

import org.jspecify.annotations.NullMarked;
