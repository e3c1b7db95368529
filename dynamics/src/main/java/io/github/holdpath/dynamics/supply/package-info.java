/**
 * What feeds a grip. Read {@link io.github.holdpath.dynamics.supply.Atmosphere} first. Theory page,
 * section 4.
 */
@NullMarked
package io.github.holdpath.dynamics.supply;

import org.jspecify.annotations.NullMarked;
