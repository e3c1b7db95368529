/** Loads on a held part and the limits of its grip: mechanics alone, no files, no time laws. */
@NullMarked
package io.github.holdpath.dynamics;

import org.jspecify.annotations.NullMarked;
