package io.github.holdpath.viewer.desk;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.viewer.edit.Job;
import io.github.holdpath.viewer.state.Shown;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jspecify.annotations.Nullable;

/** Asks for names of files, and before anything is lost. */
final class Files {
  private final Desk desk;
  private final Session session;
  private @Nullable Path folder;

  Files(Desk desk, Session session) {
    this.desk = desk;
    this.session = session;
  }

  void openScene() {
    if (mayLeave()) {
      ask("Open a scene", "Scenes", "json", false, "").ifPresent(f -> session.open(f, Map.of()));
    }
  }

  /** Shows another scene beside this one; it is judged beside the window's own work. */
  void openBeside() {
    ask("A scene to show beside this one", "Scenes", "json", false, "").ifPresent(this::beside);
  }

  void beside(Path file) {
    Thread judges =
        new Thread(
            () -> {
              try {
                Scene scene = SceneReader.read(file, Map.of()).scene();
                Shown shown =
                    Shown.of(Shown.nameOf(file), HoldStudy.run(scene, scene.requiredSafety()));
                SwingUtilities.invokeLater(() -> desk.beside(Optional.of(shown)));
              } catch (SceneException e) {
                SwingUtilities.invokeLater(() -> session.faults().showOf(file, e.faults()));
              }
            },
            "holdpath beside");
    judges.setDaemon(true);
    judges.start();
  }

  void saveAs() {
    Optional<Job> job = session.job();
    if (job.isEmpty()) {
      session.notice().say("There is no scene file behind this window; nothing to save.");
      return;
    }
    String name = job.get().state().draft().name();
    ask("Save as a new scene", "Scenes", "json", true, name + "-changed.json")
        .ifPresent(f -> session.save(f, true));
  }

  void export(Exports.Kind kind) {
    ask(kind.title(), kind.title(), kind.ending(), true, "holdpath." + kind.ending())
        .ifPresent(f -> desk.export(kind, f));
  }

  void reload() {
    boolean unsaved = session.job().map(j -> j.state().unsaved()).orElse(false);
    session.reload(unsaved ? Job.Changes.KEEP : Job.Changes.DROP);
  }

  /** Closes the window, unless the user keeps it for changes that no file has. */
  void closeAfterAsking() {
    if (mayLeave()) {
      desk.close();
    }
  }

  private boolean mayLeave() {
    if (session.job().filter(j -> j.state().unsaved()).isEmpty()) {
      return true;
    }
    Object[] answers = {"Save as a new scene ...", "Leave the changes", "Stay"};
    int answer =
        JOptionPane.showOptionDialog(
            desk.frame(),
            "The scene has changes that no file has.",
            "Holdpath",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            answers,
            answers[2]);
    if (answer == 0) {
      saveAs();
      return session.job().filter(j -> j.state().unsaved()).isEmpty();
    }
    return answer == 1;
  }

  /** A file that the user names; one that is there is only replaced if the user says so. */
  private Optional<Path> ask(
      String title, String kind, String ending, boolean saves, String suggested) {
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle(title);
    chooser.setFileFilter(new FileNameExtensionFilter(kind + " (*." + ending + ")", ending));
    Path begin =
        folder != null
            ? folder
            : session
                .job()
                .map(j -> j.state().draft().file().toAbsolutePath().getParent())
                .orElse(null);
    if (begin != null) {
      chooser.setCurrentDirectory(begin.toFile());
    }
    if (saves) {
      chooser.setSelectedFile(
          begin == null ? Path.of(suggested).toFile() : begin.resolve(suggested).toFile());
    }
    int answer =
        saves ? chooser.showSaveDialog(desk.frame()) : chooser.showOpenDialog(desk.frame());
    if (answer != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    Path file = chooser.getSelectedFile().toPath();
    if (saves && !file.toString().toLowerCase(Locale.ROOT).endsWith("." + ending)) {
      file = file.resolveSibling(file.getFileName() + "." + ending);
    }
    Path in = file.toAbsolutePath().getParent();
    folder = in != null && java.nio.file.Files.isDirectory(in) ? in : folder;
    return saves && java.nio.file.Files.exists(file) && !mayReplace(file)
        ? Optional.empty()
        : Optional.of(file);
  }

  private boolean mayReplace(Path file) {
    Object[] answers = {"Replace it", "Keep it"};
    return JOptionPane.showOptionDialog(
            desk.frame(),
            file.getFileName() + " is there already.",
            "Holdpath",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            answers,
            answers[1])
        == 0;
  }
}
