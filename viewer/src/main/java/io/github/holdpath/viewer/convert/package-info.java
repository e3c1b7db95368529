/**
 * The one door to the engine's numbers: doubles become floats and Z-up becomes Y-up here. Read
 * {@link io.github.holdpath.viewer.convert.ToEngine} first.
 */
@NullMarked
package io.github.holdpath.viewer.convert;

import org.jspecify.annotations.NullMarked;
