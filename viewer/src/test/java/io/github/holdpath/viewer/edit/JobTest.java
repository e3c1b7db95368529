package io.github.holdpath.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobTest {
  @TempDir Path folder;

  /** Used heap may differ so much between two full collections of the same data, bytes. */
  private static final long HEAP_TOLERANCE = 4_000_000;

  private final List<JobState> told = Collections.synchronizedList(new ArrayList<>());

  private Job open(Judge judge) throws IOException, SceneException {
    Job job = Job.open(Scenes.small(folder), judge, Runnable::run, 0);
    job.listen(told::add);
    return job;
  }

  private static void judged(Job job) throws InterruptedException {
    Scenes.await(
        () ->
            job.state().phase() == JobState.Phase.JUDGED
                || job.state().phase() == JobState.Phase.FAULTY);
  }

  @Test
  void coloursComeFirstAndTheVerdictFollows() throws Exception {
    try (Job job = open(Judge.byStudy())) {
      judged(job);
      job.set("limits/acceleration", "20 m/s^2");
      judged(job);
      List<JobState.Phase> phases = told.stream().map(JobState::phase).toList();
      assertTrue(phases.contains(JobState.Phase.JUDGING), phases.toString());
      Judged shown = job.state().shown().orElseThrow();
      assertEquals(20, shown.scene().limits().acceleration());
      assertTrue(shown.result().isPresent());
      Scenes.await(() -> job.state().first().isPresent());
      double then = job.state().first().orElseThrow().result().orElseThrow().factor();
      assertTrue(then > shown.result().orElseThrow().factor());
    }
  }

  @Test
  void whileJudgingTheHeadlineGivesNoVerdict() throws Exception {
    try (Job job = open(Judge.byStudy())) {
      judged(job);
      JobState quick =
          told.stream().filter(s -> s.phase() == JobState.Phase.JUDGING).findFirst().orElseThrow();
      assertTrue(quick.shown().orElseThrow().stage().headline().verdict().startsWith("Judging"));
    }
  }

  /** Stops in the quick stage of each draft until it is let go. */
  private static final class Slow implements Judge {
    final Semaphore go = new Semaphore(0);
    final Semaphore came = new Semaphore(0);
    final List<String> quick = Collections.synchronizedList(new ArrayList<>());
    final List<String> full = Collections.synchronizedList(new ArrayList<>());
    private final Judge real = Judge.byStudy();

    @Override
    public Judged quick(Draft draft, Optional<Judged> before) throws SceneException {
      quick.add(draft.value("limits/speed").orElseThrow());
      came.release();
      go.acquireUninterruptibly();
      return real.quick(draft, before);
    }

    @Override
    public Judged full(Judged judged) throws SceneException {
      full.add(judged.draft().value("limits/speed").orElseThrow());
      return real.full(judged);
    }
  }

  @Test
  void theLastValueWinsAndWhatIsOvertakenIsLeftOut() throws Exception {
    Slow slow = new Slow();
    try (Job job = open(slow)) {
      slow.came.acquire();
      job.set("limits/speed", "1.1 m/s");
      job.set("limits/speed", "1.2 m/s");
      job.set("limits/speed", "1.3 m/s");
      slow.go.release(100);
      judged(job);
      assertEquals("1 m/s", slow.quick.get(0));
      assertEquals("1.3 m/s", slow.quick.get(1));
      assertEquals("1.3 m/s", slow.full.get(0));
      assertEquals(1.3, job.state().shown().orElseThrow().scene().limits().speed());
    }
  }

  @Test
  void resultsNeverGoBackToAnOlderDraft() throws Exception {
    try (Job job = open(Judge.byStudy())) {
      for (int i = 0; i < 30; i++) {
        job.drag("limits/speed", "1." + (i + 10) + " m/s");
      }
      judged(job);
      List<Double> speeds =
          told.stream()
              .flatMap(s -> s.shown().stream())
              .map(j -> j.scene().limits().speed())
              .toList();
      List<Double> sorted = new ArrayList<>(speeds);
      Collections.sort(sorted);
      assertEquals(sorted, speeds);
    }
  }

  @Test
  void faultsAreAllToldAndTheLastGoodStays() throws Exception {
    try (Job job = open(Judge.byStudy())) {
      judged(job);
      Judged good = job.state().shown().orElseThrow();
      job.set("limits/speed", "3 kg");
      judged(job);
      job.set("part/mass", "-1 kg");
      judged(job);
      Scenes.await(() -> job.state().faults().size() == 2);
      assertEquals(JobState.Phase.FAULTY, job.state().phase());
      assertSame(good, job.state().shown().orElseThrow());
      job.undo();
      job.undo();
      judged(job);
      assertEquals(List.of(), job.state().faults());
    }
  }

  @Test
  void aSceneThatCannotBeJudgedAtAllOpensWithItsFaults() throws Exception {
    Path file =
        Files.writeString(folder.resolve("bad.json"), "{ \"format\": \"holdpath-scene/1\" }");
    try (Job job = Job.open(file, Judge.byStudy(), Runnable::run, 0)) {
      judged(job);
      assertTrue(job.state().faults().size() >= 3);
      assertTrue(job.state().shown().isEmpty());
    }
  }

  @Test
  void aDragIsOneStep() throws Exception {
    try (Job job = open(Judge.byStudy())) {
      job.drag("limits/speed", "1.1 m/s");
      job.drag("limits/speed", "1.2 m/s");
      job.drag("limits/speed", "1.3 m/s");
      job.endDrag();
      job.drag("limits/speed", "1.4 m/s");
      job.undo();
      assertEquals(Optional.of("1.3 m/s"), job.state().draft().value("limits/speed"));
      job.undo();
      assertEquals(Optional.of("1 m/s"), job.state().draft().value("limits/speed"));
      assertFalse(job.state().canUndo());
      job.redo();
      assertEquals(Optional.of("1.3 m/s"), job.state().draft().value("limits/speed"));
    }
  }

  @Test
  void aDragThatBeginsWhereTheValueStandsLeavesTheStepBefore() throws Exception {
    try (Job job = open(Judge.byStudy())) {
      job.drag("limits/speed", "1 m/s");
      job.drag("limits/speed", "1.1 m/s");
      job.drag("limits/speed", "1.2 m/s");
      job.undo();
      assertEquals(Optional.of("1 m/s"), job.state().draft().value("limits/speed"));
    }
  }

  @Test
  void closedInTheMiddleItTellsNothingMoreAndTheThreadEnds() throws Exception {
    Slow slow = new Slow();
    Job job = open(slow);
    slow.came.acquire();
    int before = told.size();
    job.close();
    slow.go.release(100);
    for (Thread thread : job.threads()) {
      thread.join(60_000);
      assertFalse(thread.isAlive());
    }
    assertEquals(before, told.size());
    assertEquals(List.of(), slow.full);
  }

  @Test
  void closedWhileItWaitsTheThreadEnds() throws Exception {
    Job job = open(Judge.byStudy());
    judged(job);
    job.close();
    for (Thread thread : job.threads()) {
      thread.join(60_000);
      assertFalse(thread.isAlive());
    }
  }

  @Test
  void aBugOfTheJudgeIsToldAndDoesNotEndIt() throws Exception {
    CountDownLatch once = new CountDownLatch(1);
    Judge real = Judge.byStudy();
    Judge buggy =
        new Judge() {
          @Override
          public Judged quick(Draft draft, Optional<Judged> before) throws SceneException {
            if (once.getCount() > 0) {
              once.countDown();
              throw new IllegalStateException("broken");
            }
            return real.quick(draft, before);
          }

          @Override
          public Judged full(Judged quick) throws SceneException {
            return real.full(quick);
          }
        };
    try (Job job = open(buggy)) {
      judged(job);
      assertTrue(job.state().faults().get(0).message().contains("fault of the program"));
      job.set("limits/speed", "1.1 m/s");
      judged(job);
      assertEquals(JobState.Phase.JUDGED, job.state().phase());
    }
  }

  /** What happens before a verdict. */
  private interface Before {
    void verdict(Judged quick) throws SceneException, InterruptedException;
  }

  private static Judge deciding(Before before) {
    Judge real = Judge.byStudy();
    return new Judge() {
      @Override
      public Judged quick(Draft draft, Optional<Judged> shown) throws SceneException {
        return real.quick(draft, shown);
      }

      @Override
      public Judged full(Judged quick) throws SceneException {
        try {
          before.verdict(quick);
        } catch (InterruptedException e) {
          throw new IllegalStateException(e);
        }
        return real.full(quick);
      }
    };
  }

  @Test
  void coloursDoNotWaitForAVerdictThatIsOvertaken() throws Exception {
    CountDownLatch entered = new CountDownLatch(1);
    CountDownLatch leave = new CountDownLatch(1);
    Judge slow =
        deciding(
            quick -> {
              if (!quick.draft().isChanged()) {
                entered.countDown();
                leave.await();
              }
            });
    try (Job job = open(slow)) {
      entered.await();
      job.set("limits/speed", "1.1 m/s");
      Scenes.await(
          () -> job.state().shown().map(s -> s.scene().limits().speed() == 1.1).orElse(false));
      assertEquals(JobState.Phase.JUDGING, job.state().phase());
      leave.countDown();
      judged(job);
      assertEquals(JobState.Phase.JUDGED, job.state().phase());
      assertEquals(1.1, job.state().shown().orElseThrow().scene().limits().speed());
    }
  }

  @Test
  void aFaultThatOnlyTheCloserLookFindsIsToldAndTheColoursStay() throws Exception {
    Fault late = new Fault("small.json", 1, 1, "route/1", "joint 3 is past its stop");
    Judge strict =
        deciding(
            quick -> {
              if (quick.draft().isChanged()) {
                throw new SceneException(List.of(late));
              }
            });
    try (Job job = open(strict)) {
      judged(job);
      job.set("limits/speed", "1.1 m/s");
      judged(job);
      assertEquals(JobState.Phase.FAULTY, job.state().phase());
      assertEquals(List.of(late), job.state().faults());
      assertEquals(1.1, job.state().shown().orElseThrow().scene().limits().speed());
      job.undo();
      judged(job);
      assertEquals(JobState.Phase.JUDGED, job.state().phase());
    }
  }

  @Test
  void readingTheFileAgainKeepsOrDropsChanges() throws Exception {
    try (Job job = open(Judge.byStudy())) {
      job.set("part/mass", "3 kg");
      Scenes.small(folder);
      Files.writeString(folder.resolve("small.json"), Scenes.SMALL.replace("1 m/s\"", "2 m/s\""));
      job.reload(Job.Changes.KEEP);
      assertEquals(Optional.of("3 kg"), job.state().draft().value("part/mass"));
      assertEquals(Optional.of("2 m/s"), job.state().draft().value("limits/speed"));
      assertTrue(job.state().unsaved());
      job.reload(Job.Changes.DROP);
      assertEquals(Optional.of("2 kg"), job.state().draft().value("part/mass"));
      assertFalse(job.state().unsaved());
      job.undo();
      assertEquals(Optional.of("3 kg"), job.state().draft().value("part/mass"));
    }
  }

  @Test
  void twoThousandReloadsHoldTheHeapFlat() throws Exception {
    try (Job job = Job.open(Scenes.small(folder), Judge.byStudy(), Runnable::run, 0)) {
      long early = 0;
      for (int i = 1; i <= 2_000; i++) {
        job.reload(Job.Changes.DROP);
        if (i % 20 == 0) {
          judged(job);
        }
        if (i == 200) {
          early = used();
        }
      }
      judged(job);
      long late = used();
      assertTrue(late < early + HEAP_TOLERANCE, early + " bytes after 200, then " + late);
    }
  }

  @SuppressWarnings("PMD.DoNotCallGarbageCollectionExplicitly")
  private static long used() throws InterruptedException {
    Runtime r = Runtime.getRuntime();
    for (int i = 0; i < 3; i++) {
      System.gc();
      Thread.sleep(30);
    }
    return r.totalMemory() - r.freeMemory();
  }
}
