/**
 * What a picture shows, from a result: path, part, grip, floor, view. Doubles, SI, world axes, Z
 * up. Read {@link io.github.holdpath.viewer.state.Stage} first.
 */
@NullMarked
package io.github.holdpath.viewer.state;

import org.jspecify.annotations.NullMarked;
