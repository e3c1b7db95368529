package io.github.holdpath.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileWatchTest {
  @TempDir Path folder;

  @Test
  void tellsEachChangeOnceAndOnlyWhenTheFileIsQuiet() throws Exception {
    ScheduledExecutorService scheduler = Executors.newSingleThreadScheduledExecutor();
    AtomicInteger calls = new AtomicInteger();
    Path file = Scenes.small(folder);
    try (FileWatch watch = new FileWatch(Draft.open(file), scheduler, calls::incrementAndGet)) {
      scheduler.shutdownNow();
      watch.look();
      assertEquals(0, calls.get());
      Files.writeString(file, Scenes.SMALL + " ");
      watch.look();
      assertEquals(0, calls.get());
      Files.writeString(file, Scenes.SMALL + "  ");
      watch.look();
      assertEquals(0, calls.get());
      watch.look();
      watch.look();
      assertEquals(1, calls.get());
      Files.delete(file);
      watch.look();
      watch.look();
      assertEquals(1, calls.get());
      Files.writeString(file, Scenes.SMALL + "   ");
      watch.accept();
      watch.look();
      watch.look();
      assertEquals(1, calls.get());
    } finally {
      scheduler.shutdownNow();
    }
  }
}
