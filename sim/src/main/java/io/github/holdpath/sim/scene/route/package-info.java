/**
 * Planned routes: the fields of their steps, and the steps built from them. Read {@code RouteSpec}
 * first, then {@code RouteBuilder}.
 */
@NullMarked
package io.github.holdpath.sim.scene.route;

import org.jspecify.annotations.NullMarked;
