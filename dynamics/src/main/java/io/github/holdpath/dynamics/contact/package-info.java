/**
 * Contact patches between grip and part: shape, preload, friction and stiffness. Read {@link
 * io.github.holdpath.dynamics.contact.ContactPatch} first. Theory page, section 2.
 */
@NullMarked
package io.github.holdpath.dynamics.contact;

import org.jspecify.annotations.NullMarked;
