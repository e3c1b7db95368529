/** Tests that hold the demo scenes, their stories and the launcher true. */
@NullMarked
package io.github.holdpath.scenes;

import org.jspecify.annotations.NullMarked;
