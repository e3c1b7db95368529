package io.github.holdpath.sim.scene;

import java.util.Map;

/**
 * A scene with where it came from.
 *
 * @param scene what the file describes
 * @param fileName as the user named it
 * @param sha256 of the file's bytes, hexadecimal
 * @param set values put in place of the file's, by pointer
 */
public record LoadedScene(Scene scene, String fileName, String sha256, Map<String, String> set) {}
