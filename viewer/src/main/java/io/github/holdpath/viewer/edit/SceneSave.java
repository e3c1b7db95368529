package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.read.SceneText;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
    Path folder = Optional.ofNullable(to.getParent()).orElse(to);
    if (Files.isDirectory(to)) {
      throw new SaveException(to + " is a folder; give the name of a file in it");
    }
    if (!replace && Files.exists(to)) {
      boolean opened = to.equals(draft.file().toAbsolutePath().normalize());
      throw new SaveException(
          to
              + (opened ? " is the opened scene itself" : " is there already")
              + "; say that it may be replaced, or give another name");
    }
    String text = moved(draft, folder).text();
    try {
      write(text, folder, to, replace);
    } catch (FileAlreadyExistsException e) {
      throw new SaveException(to + " is there already; give another name");
    } catch (IOException | SecurityException e) {
      throw new SaveException(
          "cannot save in "
              + folder
              + "; see that it is a folder that you may write in and that its disk has room, or"
              + " save elsewhere. No file has changed, and your changes are still here");
    }
  }

  private static void write(String text, Path folder, Path to, boolean replace) throws IOException {
    Path beside = Files.createTempFile(folder, ".holdpath-", ".tmp");
    try {
      // A file of its own keeps to the rights that such files have here, not to those of a
      // temporary one.
      Files.delete(beside);
      Files.write(beside, text.getBytes(StandardCharsets.UTF_8));
      if (!replace) {
        Files.move(beside, to);
        return;
      }
      try {
        Files.move(beside, to, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(beside, to, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(beside);
    }
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
