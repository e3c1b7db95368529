package io.github.holdpath.viewer.panel;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.viewer.edit.JobState;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** All faults of a scene, each with its place; to be read, selected and copied. */
public final class FaultsPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int ROWS = 5;

  private final JLabel head = new JLabel();
  private final JTextArea list = Dress.words("Faults of the scene");
  private final JButton close = new JButton("Close");

  /** Without faults, and so out of sight. */
  public FaultsPanel() {
    super(new BorderLayout(0, 4));
    JButton copy = new JButton("Copy all");
    copy.addActionListener(
        e ->
            Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(text()), null));
    JPanel top = new JPanel(new FlowLayout(FlowLayout.LEADING));
    top.add(head);
    top.add(copy);
    top.add(close);
    close.addActionListener(e -> closeOther());
    close.setVisible(false);
    list.setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 10));
    list.setRows(ROWS);
    add(top, BorderLayout.NORTH);
    add(new JScrollPane(list), BorderLayout.CENTER);
    setBorder(BorderFactory.createMatteBorder(2, 0, 0, 0, Dress.wrong()));
    setVisible(false);
  }

  /** Shows the faults of a job; out of sight where there are none. */
  public void show(JobState state) {
    if (state.faults().isEmpty() && close.isVisible()) {
      return;
    }
    show(state.faults(), state.shown().isPresent());
  }

  /**
   * Shows faults.
   *
   * @param faults in the order of the file
   * @param lastGood whether an older draft without faults is still shown
   */
  public void show(List<Fault> faults, boolean lastGood) {
    if (faults.isEmpty() && !isVisible()) {
      return;
    }
    close.setVisible(false);
    head.setText(
        count(faults)
            + " in the scene; "
            + (lastGood ? "what is shown is the last that had none" : "nothing can be shown yet"));
    list(faults);
  }

  /** Shows the faults of another scene, which was not opened; they stay until they are closed. */
  public void showOf(Path file, List<Fault> faults) {
    close.setVisible(true);
    head.setText(count(faults) + " in " + file.getFileName() + "; what is shown stays as it is");
    list(faults);
  }

  /** Out of sight, if what is shown are the faults of another scene. */
  public void closeOther() {
    if (close.isVisible()) {
      close.setVisible(false);
      setVisible(false);
    }
  }

  private static String count(List<Fault> faults) {
    return faults.size() == 1 ? "1 fault" : faults.size() + " faults";
  }

  private void list(List<Fault> faults) {
    list.setText(faults.stream().map(FaultsPanel::line).collect(Collectors.joining("\n\n")));
    list.setCaretPosition(0);
    setVisible(!faults.isEmpty());
    revalidate();
  }

  private static String line(Fault f) {
    String place = f.line() > 0 ? "line " + f.line() + ", column " + f.column() : "whole file";
    String field = f.pointer().isEmpty() ? "" : ", " + f.pointer();
    return place + field + "\n" + f.message();
  }

  /** What is told above them. */
  public String head() {
    return head.getText();
  }

  /** All of it as text. */
  public String text() {
    return list.getText();
  }
}
