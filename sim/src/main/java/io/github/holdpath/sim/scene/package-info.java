/**
 * Reading of scene files: JSON text to an immutable {@link io.github.holdpath.sim.scene.Scene}, or
 * every fault of the file with its place. The one package that knows JSON and units; inside,
 * everything is SI. Read {@code SceneReader} first; docs/formats/scene.md is the user's page.
 */
@NullMarked
package io.github.holdpath.sim.scene;

import org.jspecify.annotations.NullMarked;
