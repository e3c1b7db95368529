package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.read.SceneText;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Saves a draft as a scene file: written beside its place and moved there when it is whole. */
final class SceneSave {
  /** Fields that name files relative to the scene. */
  static final List<String> REFERENCES = List.of("route/recording/file", "robot/file");

  private SceneSave() {}

  /**
   * Saves.
   *
   * @throws SaveException if nothing was saved
   */
  static void save(Draft draft, Path target, boolean replace) throws SaveException {
    Path to = target.toAbsolutePath().normalize();
    if (!replace && Files.exists(to) && to.equals(draft.file().toAbsolutePath().normalize())) {
      throw new SaveException(
          to + " is the opened scene itself; say that it may be replaced, or give another name");
    }
    Path folder = Optional.ofNullable(to.getParent()).orElse(to);
    byte[] text = moved(draft, folder).text().getBytes(StandardCharsets.UTF_8);
    WholeFile.write(text, to, replace);
  }

  /** The text with its references as seen from another folder. */
  private static SceneText moved(Draft draft, Path folder) throws SaveException {
    SceneText text = draft.text();
    Path from =
        Optional.ofNullable(draft.file().toAbsolutePath().normalize().getParent()).orElse(folder);
    if (from.equals(folder)) {
      return text;
    }
    for (String pointer : REFERENCES) {
      Optional<String> name = text.words(pointer);
      if (name.isPresent() && !Path.of(name.get()).isAbsolute()) {
        text = text.withWords(pointer, seenFrom(folder, from.resolve(name.get()), pointer));
      }
    }
    return text;
  }

  private static String seenFrom(Path folder, Path file, String pointer) throws SaveException {
    try {
      return folder.relativize(file.normalize()).toString().replace(File.separatorChar, '/');
    } catch (IllegalArgumentException e) {
      throw new SaveException(
          pointer
              + " names "
              + file
              + ", to which no way leads from "
              + folder
              + "; save beside the opened scene, or on the same disk");
    }
  }
}
