/**
 * Colours by margin and of all else. Read {@link io.github.holdpath.viewer.colour.MarginStep}
 * first.
 */
@NullMarked
package io.github.holdpath.viewer.colour;

import org.jspecify.annotations.NullMarked;
