/**
 * Written values without a file around them: numbers with units, their bounds, and the known name
 * that is nearest to a misspelt one. Read {@code Quantity} first.
 */
@NullMarked
package io.github.holdpath.sim.scene.quantity;

import org.jspecify.annotations.NullMarked;
