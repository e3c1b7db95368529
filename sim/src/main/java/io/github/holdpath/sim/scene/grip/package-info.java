/**
 * Kinds of grip: the fields of each and what builds it from them. Read {@code GripKinds} first; a
 * new kind is one constant there, its fields in a {@code ...Spec} and a {@code ...Builder}.
 */
@NullMarked
package io.github.holdpath.sim.scene.grip;

import org.jspecify.annotations.NullMarked;
