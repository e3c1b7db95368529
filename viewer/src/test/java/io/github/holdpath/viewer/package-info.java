/** Tests of the whole module. */
@NullMarked
package io.github.holdpath.viewer;

import org.jspecify.annotations.NullMarked;
