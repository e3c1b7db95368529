/**
 * Surfaces and lines in doubles, Z up. Read {@link io.github.holdpath.viewer.mesh.MeshData} first.
 */
@NullMarked
package io.github.holdpath.viewer.mesh;

import org.jspecify.annotations.NullMarked;
