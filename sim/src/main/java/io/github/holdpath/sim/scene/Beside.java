package io.github.holdpath.sim.scene;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The files beside a scene, and what was made of them: who reads one scene again and again with
 * other values keeps this, so that what did not change is not read or computed anew. Of each kind
 * of thing the newest is kept. For any number of threads.
 */
public final class Beside {
  private final Path folder;
  private final Map<Class<?>, Kept> kept = new HashMap<>();

  private record Kept(Object key, Object value) {}

  private Beside(Path folder) {
    this.folder = folder;
  }

  /**
   * Beside a scene file, with nothing kept yet.
   *
   * @param scene the scene file
   */
  public static Beside file(Path scene) {
    Path parent = scene.getParent();
    return new Beside(parent == null ? Path.of("") : parent);
  }

  /** The folder of the scene. */
  public Path folder() {
    return folder;
  }

  /**
   * What tells one state of a file from another.
   *
   * @param name as the scene names it
   * @param size bytes
   * @param changed when it was written last
   */
  public record Stamp(String name, long size, FileTime changed) {}

  /** The state of a file as it is now; empty where there is none that can be read. */
  public Optional<Stamp> stamp(String name) {
    try {
      BasicFileAttributes file =
          Files.readAttributes(folder.resolve(name), BasicFileAttributes.class);
      return Optional.of(new Stamp(name, file.size(), file.lastModifiedTime()));
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** What was kept of a kind, if it was made of an equal key. */
  public synchronized <T> Optional<T> kept(Class<T> kind, Object key) {
    return Optional.ofNullable(kept.get(kind))
        .filter(k -> k.key().equals(key))
        .map(k -> kind.cast(k.value()));
  }

  /** Keeps a thing in place of the one of its kind before. */
  public synchronized <T> void keep(Class<T> kind, Object key, T value) {
    kept.put(kind, new Kept(key, value));
  }
}
