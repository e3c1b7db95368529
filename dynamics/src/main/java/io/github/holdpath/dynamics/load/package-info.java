/**
 * The wrench that a grip must put on the part it carries, from the motion of the grip frame. Read
 * {@link io.github.holdpath.dynamics.load.LoadModel} first. Theory page, section 1.
 */
@NullMarked
package io.github.holdpath.dynamics.load;

import org.jspecify.annotations.NullMarked;
