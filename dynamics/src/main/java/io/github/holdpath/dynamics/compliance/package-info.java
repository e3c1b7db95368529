/**
 * A grip that gives: how a part swings on its grip, exactly solved mode by mode, and what the grip
 * then has to carry. Read {@link io.github.holdpath.dynamics.compliance.GripResponse} first. Theory
 * page, section 7.
 */
@NullMarked
package io.github.holdpath.dynamics.compliance;

import org.jspecify.annotations.NullMarked;
