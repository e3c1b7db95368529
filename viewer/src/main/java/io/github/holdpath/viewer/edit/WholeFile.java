package io.github.holdpath.viewer.edit;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** Writes files as a whole or not at all: beside their place, and moved there when complete. */
public final class WholeFile {
  private WholeFile() {}

  /**
   * Writes a file.
   *
   * @param bytes its content
   * @param target its place
   * @param replace whether a file that is there may be replaced
   * @throws SaveException telling what to do; no file has changed then
   */
  public static void write(byte[] bytes, Path target, boolean replace) throws SaveException {
    Path to = target.toAbsolutePath().normalize();
    Path folder = Optional.ofNullable(to.getParent()).orElse(to);
    if (Files.isDirectory(to)) {
      throw new SaveException(to + " is a folder; give the name of a file in it");
    }
    if (!replace && Files.exists(to)) {
      throw new SaveException(
          to + " is there already; say that it may be replaced, or give another name");
    }
    try {
      move(bytes, folder, to, replace);
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

  private static void move(byte[] bytes, Path folder, Path to, boolean replace) throws IOException {
    Path beside = Files.createTempFile(folder, ".holdpath-", ".tmp");
    try {
      // A file of its own keeps to the rights that such files have here, not to those of a
      // temporary one.
      Files.delete(beside);
      Files.write(beside, bytes);
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
}
