package io.github.holdpath.viewer.edit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/**
 * Looks every second whether a scene's file, its recording or its robot changed on disk, by time
 * and size: that works on every file system, network drives too.
 */
public final class FileWatch implements AutoCloseable {
  private static final long PERIOD = 1;

  private final List<Path> files;
  private final Runnable changed;
  private final ScheduledFuture<?> task;
  private List<Optional<Stamp>> known;
  private List<Optional<Stamp>> last;

  /** When and how large. */
  private record Stamp(long time, long size) {}

  /**
   * Begins to watch.
   *
   * @param draft whose files are watched
   * @param scheduler runs the look
   * @param changed called on the scheduler's thread, once for each change, when the file has stayed
   *     the same for one look: so a file that is just being written is not read
   */
  public FileWatch(Draft draft, ScheduledExecutorService scheduler, Runnable changed) {
    List<Path> all = new ArrayList<>(List.of(draft.file()));
    for (String pointer : SceneSave.REFERENCES) {
      draft.text().words(pointer).map(draft.file()::resolveSibling).ifPresent(all::add);
    }
    this.files = List.copyOf(all);
    this.changed = changed;
    this.known = stamps();
    this.last = known;
    this.task = scheduler.scheduleWithFixedDelay(this::look, PERIOD, PERIOD, TimeUnit.SECONDS);
  }

  /** What is there now is known: no call for it, as after saving there. */
  public synchronized void accept() {
    known = stamps();
    last = known;
  }

  /** Looks once. */
  void look() {
    boolean tell;
    synchronized (this) {
      List<Optional<Stamp>> now = stamps();
      boolean whole = now.stream().allMatch(Optional::isPresent);
      tell = whole && now.equals(last) && !now.equals(known);
      known = tell ? now : known;
      last = now;
    }
    if (tell) {
      changed.run();
    }
  }

  private List<Optional<Stamp>> stamps() {
    return files.stream().map(FileWatch::stamp).toList();
  }

  private static Optional<Stamp> stamp(Path file) {
    try {
      BasicFileAttributes a = Files.readAttributes(file, BasicFileAttributes.class);
      return Optional.of(new Stamp(a.lastModifiedTime().toMillis(), a.size()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    task.cancel(false);
  }
}
