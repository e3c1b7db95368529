/**
 * JSON text to a tree of nodes, each with its line, column and pointer, and the faults found on the
 * way. Knows no field of a scene. Read {@code JsonNode} first, then {@code JsonTree}.
 */
@NullMarked
package io.github.holdpath.sim.scene.json;

import org.jspecify.annotations.NullMarked;
