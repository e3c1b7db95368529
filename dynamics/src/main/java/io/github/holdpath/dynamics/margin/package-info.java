/**
 * How far a grip is from letting go: load shares of the patches, first-slip factor, opening, speed
 * headroom. Read {@link io.github.holdpath.dynamics.margin.HoldModel} first. Theory page, section
 * 3.
 */
@NullMarked
package io.github.holdpath.dynamics.margin;

import org.jspecify.annotations.NullMarked;
