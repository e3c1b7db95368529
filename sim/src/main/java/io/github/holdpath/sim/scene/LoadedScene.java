package io.github.holdpath.sim.scene;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A scene and where it comes from.
 *
 * @param scene as read
 * @param fileName name of its file without folders
 * @param sha256 of the file's bytes, in hexadecimal digits
 * @param set values that were set from outside, by pointer, in their order
 */
public record LoadedScene(Scene scene, String fileName, String sha256, Map<String, String> set) {
  /** Copies the map. */
  public LoadedScene {
    set = Collections.unmodifiableMap(new LinkedHashMap<>(set));
  }
}
