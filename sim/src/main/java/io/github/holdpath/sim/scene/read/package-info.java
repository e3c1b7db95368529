/**
 * The door: a scene file to a {@link io.github.holdpath.sim.scene.Scene} or every fault with its
 * place, files to begin with, and the format as JSON Schema. Read {@code SceneReader} first;
 * docs/formats/scene.md is the user's page.
 */
@NullMarked
package io.github.holdpath.sim.scene.read;

import org.jspecify.annotations.NullMarked;
