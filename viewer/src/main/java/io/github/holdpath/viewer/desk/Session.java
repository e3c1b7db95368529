package io.github.holdpath.viewer.desk;

import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.viewer.edit.FileWatch;
import io.github.holdpath.viewer.edit.Job;
import io.github.holdpath.viewer.edit.JobState;
import io.github.holdpath.viewer.edit.Judge;
import io.github.holdpath.viewer.edit.Judged;
import io.github.holdpath.viewer.edit.SaveException;
import io.github.holdpath.viewer.panel.FaultsPanel;
import io.github.holdpath.viewer.panel.InputsPanel;
import io.github.holdpath.viewer.panel.Notice;
import io.github.holdpath.viewer.panel.ThenAndNow;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * The scene file behind the window: its inputs, its faults, saving it, and its changes on disk. To
 * be used on the event thread.
 */
final class Session {
  private final Desk desk;
  private final FaultsPanel faults = new FaultsPanel();
  private final Notice notice = new Notice();
  private final ThenAndNow numbers = new ThenAndNow();
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "holdpath files");
            thread.setDaemon(true);
            return thread;
          });
  private @Nullable Job job;
  private @Nullable InputsPanel inputs;
  private @Nullable FileWatch watch;
  private @Nullable Judged seen;
  private @Nullable Judged first;

  Session(Desk desk) {
    this.desk = desk;
  }

  FaultsPanel faults() {
    return faults;
  }

  Notice notice() {
    return notice;
  }

  ThenAndNow numbers() {
    return numbers;
  }

  /** The job that is being changed; empty while the window only shows results. */
  Optional<Job> job() {
    return Optional.ofNullable(job);
  }

  Optional<InputsPanel> inputs() {
    return Optional.ofNullable(inputs);
  }

  /**
   * Opens a scene file in place of the one before. One that cannot be read leaves everything as it
   * is and tells its faults.
   *
   * @param file scene file
   * @param values that are set in place of the file's, by pointer; each is a step that can be
   *     undone
   */
  void open(Path file, Map<String, String> values) {
    if (job == null) {
      begin(file, values);
      return;
    }
    // Read beside the window, to know all its faults before the scene that is shown is left.
    clock.execute(
        () -> {
          try {
            SceneReader.read(file, Map.of());
            SwingUtilities.invokeLater(() -> begin(file, values));
          } catch (SceneException e) {
            SwingUtilities.invokeLater(() -> faults.showOf(file, e.faults()));
          }
        });
  }

  private void begin(Path file, Map<String, String> values) {
    Job opened;
    try {
      opened = Job.open(file, Judge.byStudy(), SwingUtilities::invokeLater);
    } catch (SceneException e) {
      if (job != null) {
        faults.showOf(file, e.faults());
      } else {
        faults.show(e.faults(), false);
      }
      return;
    }
    faults.closeOther();
    closeJob();
    job = opened;
    seen = null;
    first = null;
    values.forEach(opened::set);
    InputsPanel panel = InputsPanel.of(opened);
    inputs = panel;
    desk.left(panel);
    watch =
        new FileWatch(
            opened.state().draft(), clock, () -> SwingUtilities.invokeLater(this::changedOnDisk));
    opened.listen(state -> heard(opened, state));
  }

  private void heard(Job from, JobState state) {
    if (from != job) {
      return;
    }
    state
        .first()
        .filter(f -> f != first)
        .ifPresent(
            f -> {
              first = f;
              desk.first(f.shown());
            });
    state
        .shown()
        .filter(s -> s != seen)
        .ifPresent(
            s -> {
              seen = s;
              desk.show(s.shown());
            });
    // After the image is asked for: it is drawn while these are.
    faults.show(state);
    numbers.show(state);
    desk.title(state.draft().name() + (state.unsaved() ? " (changed)" : ""));
    desk.refreshActs();
  }

  private void changedOnDisk() {
    boolean unsaved = job().map(j -> j.state().unsaved()).orElse(false);
    Notice.Answer again =
        new Notice.Answer(
            unsaved ? "Read it, keep my changes" : "Read it again", () -> reload(Job.Changes.KEEP));
    Notice.Answer drop =
        new Notice.Answer("Read it, drop my changes", () -> reload(Job.Changes.DROP));
    Notice.Answer leave = new Notice.Answer("Leave it", () -> {});
    notice.say(
        "The scene, or a file that it names, has changed on disk.",
        unsaved ? List.of(again, drop, leave) : List.of(again, leave));
  }

  /** Reads the file again. */
  void reload(Job.Changes changes) {
    Job now = job;
    if (now == null) {
      return;
    }
    try {
      now.reload(changes);
    } catch (SceneException e) {
      faults.show(e.faults(), true);
    }
  }

  /** Saves to a file; tells what became of it. */
  boolean save(Path target, boolean replace) {
    Job now = job;
    if (now == null) {
      return false;
    }
    try {
      now.save(target, replace);
      FileWatch looks = watch;
      if (looks != null) {
        looks.accept();
      }
      notice.say("Saved " + target + ".");
      return true;
    } catch (SaveException e) {
      notice.say(String.valueOf(e.getMessage()));
      return false;
    }
  }

  private void closeJob() {
    if (watch != null) {
      watch.close();
    }
    if (job != null) {
      job.close();
    }
  }

  /** Ends all that goes on behind it. */
  void close() {
    closeJob();
    clock.shutdownNow();
  }
}
