/**
 * Kinds of grip, each a set of contact patches with its drives. Read {@link
 * io.github.holdpath.dynamics.grip.GripModel} first. Theory page, sections 2 and 3.
 */
@NullMarked
package io.github.holdpath.dynamics.grip;

import org.jspecify.annotations.NullMarked;
