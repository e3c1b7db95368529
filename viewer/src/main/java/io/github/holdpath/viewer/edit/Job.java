package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * A scene that is being changed. Changes return at once; two threads of its own judge the newest
 * draft, one its colours, the other then its verdict, and leave out what is overtaken. Listeners
 * hear of every change through the executor that the owner gave. May be used from any thread.
 */
public final class Job implements AutoCloseable {
  /** What is done with changes when the file is read again. */
  public enum Changes {
    /** They are put into the new text. */
    KEEP,
    /** The file counts; undo brings them back. */
    DROP
  }

  private final Object lock = new Object();
  private final Executor deliver;
  private final List<Consumer<JobState>> listeners = new CopyOnWriteArrayList<>();
  private final List<Thread> threads;
  private History<Draft> history;
  private String dragged = "";
  private String savedText;
  private Outcome outcome = Outcome.NONE;
  private Optional<Judged> first = Optional.empty();
  private boolean closed;

  /** What the worker last found. */
  private record Outcome(Optional<Draft> of, Optional<Judged> shown, List<Fault> faults) {
    static final Outcome NONE = new Outcome(Optional.empty(), Optional.empty(), List.of());
  }

  private Job(Draft draft, Judge judge, Executor deliver, long calm) {
    this.history = History.of(draft);
    this.savedText = draft.json();
    this.deliver = deliver;
    Worker worker = new Worker(judge, calm);
    this.threads =
        List.of(
            new Thread(worker::colour, "holdpath-judge"),
            new Thread(worker::decide, "holdpath-verdict"));
    threads.forEach(t -> t.setDaemon(true));
  }

  /**
   * Opens a file and begins to judge it.
   *
   * @param file scene file
   * @param judge its two stages are used by a thread each
   * @param deliver where listeners are called, as {@code SwingUtilities::invokeLater}
   * @throws SceneException if the file cannot be read or is not JSON; other faults are delivered
   */
  public static Job open(Path file, Judge judge, Executor deliver) throws SceneException {
    return open(file, judge, deliver, 80);
  }

  /**
   * The same with another pause.
   *
   * @param calm how long no change may come before the verdict is computed, ms; so that dragging is
   *     not held up by it
   */
  static Job open(Path file, Judge judge, Executor deliver, long calm) throws SceneException {
    Job job = new Job(Draft.open(file), judge, deliver, calm);
    job.threads.forEach(Thread::start);
    return job;
  }

  /** Calls the listener now and after every change. */
  public void listen(Consumer<JobState> listener) {
    listeners.add(listener);
    JobState now = state();
    deliver.execute(() -> listener.accept(now));
  }

  /** How the job stands. */
  public JobState state() {
    synchronized (lock) {
      Draft now = history.now();
      boolean seen = outcome.of.filter(d -> d == now).isPresent();
      JobState.Phase phase =
          !seen
              ? JobState.Phase.WAITING
              : !outcome.faults.isEmpty()
                  ? JobState.Phase.FAULTY
                  : outcome.shown.flatMap(Judged::result).isPresent()
                      ? JobState.Phase.JUDGED
                      : JobState.Phase.JUDGING;
      return new JobState(
          now,
          outcome.shown,
          first,
          outcome.faults,
          phase,
          history.canUndo(),
          history.canRedo(),
          !now.json().equals(savedText));
    }
  }

  /**
   * Changes a value as a step of its own.
   *
   * @throws IllegalArgumentException if the pointer leads into something that has no fields
   */
  public void set(String pointer, String text) {
    change("", draft -> draft.with(pointer, text));
  }

  /**
   * Changes a value while a slider is dragged: until {@link #endDrag} all values of one pointer are
   * one step.
   */
  public void drag(String pointer, String text) {
    change(pointer, draft -> draft.with(pointer, text));
  }

  /** The next change is a step of its own. */
  public void endDrag() {
    synchronized (lock) {
      dragged = "";
    }
  }

  /** Gives a field the value of the file again, or none if the file has none. */
  public void reset(String pointer) {
    change("", draft -> draft.reset(pointer));
  }

  private void change(String drag, UnaryOperator<Draft> how) {
    synchronized (lock) {
      Draft next = how.apply(history.now());
      if (next.json().equals(history.now().json())) {
        // A drag that has changed nothing yet has no step of its own to go on with.
        dragged = drag.equals(dragged) ? dragged : "";
        return;
      }
      boolean goesOn = !drag.isEmpty() && drag.equals(dragged);
      step(goesOn ? history.instead(next) : history.then(next), drag);
    }
    tell();
  }

  /** Takes the last step back. */
  public void undo() {
    move(History::undo);
  }

  /** Takes the step again that was taken back. */
  public void redo() {
    move(History::redo);
  }

  private void move(UnaryOperator<History<Draft>> how) {
    synchronized (lock) {
      step(how.apply(history), "");
    }
    tell();
  }

  private void step(History<Draft> next, String drag) {
    boolean otherFile = next.now().isBasedOnOther(history.now());
    history = next;
    dragged = drag;
    if (otherFile) {
      first = Optional.empty();
    }
    lock.notifyAll();
  }

  /**
   * Reads the file again, as a step that can be taken back.
   *
   * @throws SceneException if it cannot be read or is not JSON; nothing has changed then
   */
  public void reload(Changes changes) throws SceneException {
    Draft fresh = Draft.open(state().draft().file());
    synchronized (lock) {
      savedText = fresh.json();
      step(history.then(changes == Changes.KEEP ? history.now().onto(fresh) : fresh), "");
    }
    tell();
  }

  /**
   * Saves the draft.
   *
   * @param target file; what it refers to beside the old file is referred to from the new one
   * @param replace whether a file that is there may be replaced, the opened one too
   * @throws SaveException telling what to do; no file has changed then, and the draft stays
   */
  public void save(Path target, boolean replace) throws SaveException {
    Draft draft = state().draft();
    SceneSave.save(draft, target, replace);
    synchronized (lock) {
      savedText = draft.json();
    }
    tell();
  }

  /** Ends the threads; nothing is delivered any more. What they compute just now is given up. */
  @Override
  public void close() {
    synchronized (lock) {
      closed = true;
      lock.notifyAll();
    }
  }

  /** The threads that judge. */
  List<Thread> threads() {
    return threads;
  }

  private void tell() {
    deliver.execute(
        () -> {
          synchronized (lock) {
            if (closed) {
              return;
            }
          }
          JobState now = state();
          listeners.forEach(l -> l.accept(now));
        });
  }

  /** What the job's two threads do: colours must not wait for a verdict that is overtaken. */
  private final class Worker {
    private final Judge judge;
    private final long calm;

    Worker(Judge judge, long calm) {
      this.judge = judge;
      this.calm = calm;
    }

    void colour() {
      try {
        for (Optional<Draft> next = next(); next.isPresent(); next = next()) {
          quick(next.get(), shown());
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    void decide() {
      try {
        for (Optional<Judged> next = coloured(); next.isPresent(); next = coloured()) {
          if (calmFor(next.get().draft())) {
            full(next.get()).ifPresent(this::decided);
          }
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    /** Waits for a draft that has not been looked at; empty when the job is closed. */
    private Optional<Draft> next() throws InterruptedException {
      synchronized (lock) {
        while (!closed && outcome.of.filter(d -> d == history.now()).isPresent()) {
          lock.wait();
        }
        return closed ? Optional.empty() : Optional.of(history.now());
      }
    }

    /** Waits for a draft whose verdict is due; empty when the job is closed. */
    private Optional<Judged> coloured() throws InterruptedException {
      synchronized (lock) {
        while (!closed && due().isEmpty()) {
          lock.wait();
        }
        return closed ? Optional.empty() : due();
      }
    }

    private Optional<Judged> due() {
      return outcome.faults.isEmpty()
          ? outcome.shown.filter(s -> s.result().isEmpty() && s.draft() == history.now())
          : Optional.empty();
    }

    private Optional<Judged> shown() {
      synchronized (lock) {
        return outcome.shown;
      }
    }

    private void quick(Draft draft, Optional<Judged> shown) {
      List<Fault> faults;
      try {
        Judged quick = besideFirst(judge.quick(draft, shown));
        found(new Outcome(Optional.of(draft), Optional.of(quick), List.of()));
        return;
      } catch (SceneException e) {
        faults = e.faults();
      } catch (RuntimeException e) {
        faults = List.of(ours(draft, e));
      }
      found(new Outcome(Optional.of(draft), shown(), faults));
    }

    private Optional<Judged> full(Judged quick) {
      List<Fault> faults;
      try {
        return Optional.of(judge.full(quick));
      } catch (SceneException e) {
        faults = e.faults();
      } catch (RuntimeException e) {
        faults = List.of(ours(quick.draft(), e));
      }
      verdict(quick.draft(), Optional.of(quick), faults);
      return Optional.empty();
    }

    private void decided(Judged full) {
      verdict(full.draft(), Optional.of(besideFirst(full)), List.of());
      try {
        judgeFirst(full.draft(), full);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    /** With the path as it was first, once that is known. */
    private Judged besideFirst(Judged judged) {
      Optional<Judged> known;
      synchronized (lock) {
        known = first;
      }
      return known.map(judged::beside).orElse(judged);
    }

    /** The draft as it was opened, for comparing; where it has faults there is nothing to show. */
    private void judgeFirst(Draft draft, Judged full) throws InterruptedException {
      synchronized (lock) {
        if (first.isPresent() || closed) {
          return;
        }
      }
      Optional<Judged> found = Optional.of(full);
      if (draft.isChanged()) {
        try {
          Judged quick = judge.quick(draft.opened(), found);
          found = calmFor(draft) ? full(quick) : Optional.empty();
        } catch (SceneException e) {
          return;
        }
      }
      synchronized (lock) {
        if (!overtaken(draft)) {
          first = found;
        }
      }
      tell();
    }

    private boolean overtaken(Draft draft) {
      synchronized (lock) {
        return closed || history.now() != draft;
      }
    }

    /** Whether no other draft came for a while. */
    private boolean calmFor(Draft draft) throws InterruptedException {
      long until = System.nanoTime() + calm * 1_000_000;
      synchronized (lock) {
        for (long left = calm; left > 0 && !overtaken(draft); ) {
          lock.wait(left);
          left = (until - System.nanoTime() + 999_999) / 1_000_000;
        }
        return !overtaken(draft);
      }
    }

    /** A verdict counts only while its draft is the newest; colours always. */
    private void verdict(Draft draft, Optional<Judged> shown, List<Fault> faults) {
      synchronized (lock) {
        if (overtaken(draft)) {
          return;
        }
        outcome = new Outcome(Optional.of(draft), shown, faults);
        lock.notifyAll();
      }
      tell();
    }

    private void found(Outcome next) {
      synchronized (lock) {
        if (closed) {
          return;
        }
        outcome = next;
        lock.notifyAll();
      }
      tell();
    }

    private static Fault ours(Draft draft, RuntimeException e) {
      return new Fault(
          draft.file().toString(),
          0,
          0,
          "",
          "this draft cannot be judged, which is a fault of the program and not of the file; take"
              + " the last change back ("
              + e
              + ")");
    }
  }
}
