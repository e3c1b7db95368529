package io.github.holdpath.sim.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Files that a command writes: all are written beside their place first and moved there together,
 * so that none is ever half there.
 */
public final class Outputs {
  private final List<Path> targets = new ArrayList<>();
  private final List<byte[]> contents = new ArrayList<>();

  /**
   * Takes note of a file; nothing is written yet.
   *
   * @throws CallException if this is no name of a file, or that of one noted before
   */
  public void add(String name, String text) throws CallException {
    add(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Takes note of a file; nothing is written yet.
   *
   * @throws CallException if this is no name of a file, or that of one noted before
   */
  public void add(String name, byte[] content) throws CallException {
    try {
      Path target = Path.of(name);
      Path whole = target.toAbsolutePath().normalize();
      if (targets.stream().anyMatch(t -> t.toAbsolutePath().normalize().equals(whole))) {
        throw new CallException(name + " is named for two outputs; give each its own file");
      }
      targets.add(target);
      contents.add(content.clone());
    } catch (InvalidPathException e) {
      throw new CallException("\"" + name + "\" is not a file name: " + e.getReason());
    }
  }

  /**
   * Refuses to write over a file that the command reads.
   *
   * @throws CallException if a target is that file
   */
  public void keep(Path input) throws CallException {
    for (Path target : targets) {
      try {
        if (Files.exists(target) && Files.isSameFile(target, input)) {
          throw new CallException(target + " is the scene itself; name another file to write");
        }
      } catch (IOException e) {
        throw new CallException(target + " cannot be looked at; choose another place");
      }
    }
  }

  /**
   * Writes all of them.
   *
   * @throws CallException naming the file that cannot be written; then none is
   */
  public void write() throws CallException {
    List<Path> beside = new ArrayList<>();
    try {
      for (int i = 0; i < targets.size(); i++) {
        beside.add(beside(targets.get(i), i));
        fill(beside.get(i), targets.get(i), contents.get(i));
      }
      for (int i = 0; i < targets.size(); i++) {
        move(beside.get(i), targets.get(i));
      }
    } finally {
      for (Path path : beside) {
        try {
          Files.deleteIfExists(path);
        } catch (IOException ignored) {
          // A leftover beside the file does no harm; the outcome of the command is known.
        }
      }
    }
  }

  /** A name that no other run of this program writes to, in the folder of the target. */
  private static Path beside(Path target, int index) throws CallException {
    if (Files.isDirectory(target)) {
      throw new CallException(target + " is a folder; name a file to write");
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new CallException("the folder of " + target + " does not exist; make it first");
    }
    return folder.resolve(".holdpath-" + ProcessHandle.current().pid() + "-" + index + ".part");
  }

  /** Writes with the permissions that any new file gets. */
  private static void fill(Path beside, Path target, byte[] content) throws CallException {
    try {
      Files.write(beside, content);
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
