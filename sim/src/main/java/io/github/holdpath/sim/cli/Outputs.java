package io.github.holdpath.sim.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Files that a command writes: all are written beside their place first and moved there together,
 * so that none is ever half there.
 */
final class Outputs {
  private final List<Path> targets = new ArrayList<>();
  private final List<String> texts = new ArrayList<>();

  /** Takes note of a file; nothing is written yet. */
  void add(Path target, String text) {
    targets.add(target);
    texts.add(text);
  }

  /**
   * Writes all of them.
   *
   * @throws CallException naming the file that cannot be written; then none is
   */
  void write() throws CallException {
    List<Path> beside = new ArrayList<>();
    try {
      for (int i = 0; i < targets.size(); i++) {
        beside.add(writeBeside(targets.get(i), texts.get(i)));
      }
      for (int i = 0; i < targets.size(); i++) {
        move(beside.get(i), targets.get(i));
      }
    } finally {
      for (Path path : beside) {
        try {
          Files.deleteIfExists(path);
        } catch (IOException e) {
          // A leftover beside the file does no harm; the outcome of the command is known.
          continue;
        }
      }
    }
  }

  private static Path writeBeside(Path target, String text) throws CallException {
    try {
      if (Files.isDirectory(target)) {
        throw new CallException(target + " is a folder; name a file to write");
      }
      Path folder = target.toAbsolutePath().getParent();
      if (folder == null || !Files.isDirectory(folder)) {
        throw new CallException("the folder of " + target + " does not exist; make it first");
      }
      Path beside = Files.createTempFile(folder, ".holdpath-", ".part");
      Files.writeString(beside, text, StandardCharsets.UTF_8);
      return beside;
    } catch (IOException e) {
      throw new CallException(
          target + " cannot be written (" + e.getMessage() + "); choose another place");
    }
  }

  private static void move(Path beside, Path target) throws CallException {
    try {
      Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new CallException(
          target + " cannot be replaced (" + e.getMessage() + "); choose another place");
    }
  }
}
