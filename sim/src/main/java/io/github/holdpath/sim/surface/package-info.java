/**
 * What tables tell of materials and of their friction on each other: ranges with their sources.
 * Read {@link io.github.holdpath.sim.surface.FrictionPairs} first.
 */
@NullMarked
package io.github.holdpath.sim.surface;

import org.jspecify.annotations.NullMarked;
