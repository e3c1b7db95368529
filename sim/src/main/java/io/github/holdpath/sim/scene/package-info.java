/**
 * What a scene is once it has been read: immutable values in SI, and the faults of a file that
 * cannot be read. Knows nothing of JSON; {@link io.github.holdpath.sim.scene.read.SceneReader}
 * makes these values from a file. Read {@code Scene} first.
 *
 * <p>The packages inside, each built on those before it: {@code quantity} numbers with units,
 * {@code json} text to nodes with places, {@code field} nodes to checked fields, {@code recording},
 * {@code grip} and {@code route} the fields and values of their objects, {@code read} the whole
 * file.
 */
@NullMarked
package io.github.holdpath.sim.scene;

import org.jspecify.annotations.NullMarked;
