/**
 * What an object of a scene file may hold: fields with their types, which read a value, say what
 * would be right and write themselves as JSON Schema. Knows no object of the format but those that
 * several share. Read {@code FieldType} first, then {@code Values}, the checked fields of one
 * object.
 */
@NullMarked
package io.github.holdpath.sim.scene.field;

import org.jspecify.annotations.NullMarked;
