package io.github.holdpath.viewer.panel;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.viewer.edit.Input;
import io.github.holdpath.viewer.edit.Inputs;
import io.github.holdpath.viewer.edit.Job;
import io.github.holdpath.viewer.edit.JobState;
import java.awt.BorderLayout;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;

/**
 * Sliders and fields for the inputs that matter in the scene, in groups. Arrows move a slider by a
 * step, page up and down by a tenth of its way; a triangle marks the value of the file.
 */
public final class InputsPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int COLUMNS = 4;
  private static final int EDGE = 6;

  private final transient Job job;
  private final JPanel rows = new WidePanel(new GridBagLayout());
  private final JTextArea assumed = Dress.words("Values that count as assumed");
  private final transient List<InputLine> lines = new ArrayList<>();
  private final Set<Input.Group> open = EnumSet.complementOf(EnumSet.of(Input.Group.MOVES));
  private transient List<Input> laid = List.of();
  private boolean narrow;
  private transient List<String> keys = List.of();
  private transient List<Input> shown = List.of();
  private transient List<Fault> faults = List.of();
  private final Action undo;
  private final Action redo;

  private InputsPanel(Job job) {
    super(new BorderLayout());
    this.job = job;
    this.undo = action("Undo", job::undo);
    this.redo = action("Redo", job::redo);
    int menu = InputEvent.CTRL_DOWN_MASK;
    bind(undo, KeyStroke.getKeyStroke(KeyEvent.VK_Z, menu));
    bind(redo, KeyStroke.getKeyStroke(KeyEvent.VK_Y, menu));
    JScrollPane scroll =
        new JScrollPane(
            rows,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(16);
    assumed.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
    assumed.setVisible(false);
    add(scroll, BorderLayout.CENTER);
    add(assumed, BorderLayout.SOUTH);
    getAccessibleContext().setAccessibleName("Inputs of the scene");
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            resized();
          }
        });
  }

  /** For a job; shows each of its states until the job is closed. */
  public static InputsPanel of(Job job) {
    InputsPanel panel = new InputsPanel(job);
    job.listen(panel::show);
    return panel;
  }

  /** Sizes and colours again, after a change of theme or text size. */
  public void redress() {
    lines.forEach(InputLine::redress);
    lay();
    revalidate();
  }

  /** Takes the last step back; enabled where there is one. */
  public Action undo() {
    return undo;
  }

  /** Takes the step again that was taken back. */
  public Action redo() {
    return redo;
  }

  private static Action action(String name, Runnable what) {
    Action action =
        new AbstractAction(name) {
          private static final long serialVersionUID = 1L;

          @Override
          public void actionPerformed(ActionEvent e) {
            what.run();
          }
        };
    action.setEnabled(false);
    return action;
  }

  private void bind(Action action, KeyStroke key) {
    action.putValue(Action.ACCELERATOR_KEY, key);
    Object name = String.valueOf(action.getValue(Action.NAME));
    getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
    getActionMap().put(name, action);
  }

  private void show(JobState state) {
    undo.setEnabled(state.canUndo());
    redo.setEnabled(state.canRedo());
    Map<String, String> demoted = state.draft().countAsAssumed();
    assumed.setVisible(!demoted.isEmpty());
    assumed.setText(
        demoted.isEmpty()
            ? ""
            : "Changed by hand, so these count as assumed: "
                + demoted.entrySet().stream()
                    .map(e -> e.getKey() + " (the file: " + e.getValue() + ")")
                    .collect(Collectors.joining(", ")));
    state.shown().ifPresent(judged -> show(Inputs.of(state.draft(), judged.scene()), state));
  }

  private void show(List<Input> inputs, JobState state) {
    List<String> now = inputs.stream().map(i -> i.key() + i.choices()).toList();
    if (!now.equals(keys)) {
      keys = now;
      shown = List.of();
      lines.clear();
      inputs.forEach(i -> lines.add(new InputLine(job, i)));
      laid = List.copyOf(inputs);
      lay();
      revalidate();
      repaint();
    }
    boolean sameFaults = state.faults().equals(faults) && faults.isEmpty();
    for (int i = 0; i < lines.size(); i++) {
      // Most of them stay as they are while one is dragged.
      if (!sameFaults || i >= shown.size() || !inputs.get(i).equals(shown.get(i))) {
        lines.get(i).show(inputs.get(i), state);
      }
    }
    shown = List.copyOf(inputs);
    faults = state.faults();
  }

  private void lay() {
    List<Input> inputs = laid;
    rows.removeAll();
    narrow = isNarrow();
    int y = 0;
    for (Input.Group group : Input.Group.values()) {
      if (inputs.stream().anyMatch(i -> i.group() == group)) {
        y = head(group, inputs, y);
        for (int i = 0; open.contains(group) && i < inputs.size(); i++) {
          y = inputs.get(i).group() == group ? line(lines.get(i), y) : y;
        }
      }
    }
    rows.add(new JLabel(), at(0, y, COLUMNS, 1, 1));
  }

  /** Whether slider and number need a row of their own below the label. */
  private boolean isNarrow() {
    int needed = lines.stream().mapToInt(InputLine::width).max().orElse(0) + COLUMNS * 2 * EDGE;
    return getWidth() > 0 && getWidth() < needed;
  }

  private void resized() {
    if (isNarrow() != narrow) {
      lay();
      revalidate();
    }
  }

  private int head(Input.Group group, List<Input> inputs, int y) {
    JToggleButton head = new JToggleButton(title(group), open.contains(group));
    Dress.bold(head);
    head.setHorizontalAlignment(JToggleButton.LEADING);
    head.getAccessibleContext().setAccessibleName(group.title() + ", show or hide");
    head.addActionListener(
        e -> {
          if (!open.remove(group)) {
            open.add(group);
          }
          lay();
          revalidate();
          repaint();
        });
    GridBagConstraints c = at(0, y, COLUMNS, 1, 0);
    c.insets = new Insets(8, 4, 4, 4);
    rows.add(head, c);
    return y + 1;
  }

  private String title(Input.Group group) {
    return (open.contains(group) ? "- " : "+ ") + group.title();
  }

  private int line(InputLine line, int y) {
    int first = narrow ? 0 : 1;
    int row = narrow ? y + 1 : y;
    rows.add(line.label, at(0, y, narrow ? COLUMNS : 1, 0, 0));
    rows.add(line.middle(), at(first, row, (line.hasField() ? 2 : 3) - first, 1, 0));
    if (line.hasField()) {
      rows.add(line.field, at(2, row, 1, 0, 0));
    }
    rows.add(line.reset, at(3, row, 1, 0, 0));
    rows.add(line.message, at(first, row + 1, COLUMNS - first, 1, 0));
    return row + 2;
  }

  private static GridBagConstraints at(int x, int y, int width, double wide, double high) {
    GridBagConstraints c = new GridBagConstraints();
    c.gridx = x;
    c.gridy = y;
    c.gridwidth = width;
    c.weightx = wide;
    c.weighty = high;
    c.fill = GridBagConstraints.HORIZONTAL;
    c.insets = new Insets(1, EDGE, 1, 2);
    return c;
  }

  /** The line of an input, for tests. */
  InputLine line(String key) {
    for (int i = 0; i < keys.size(); i++) {
      if (keys.get(i).startsWith(key)) {
        return lines.get(i);
      }
    }
    throw new IllegalArgumentException("no input " + key + " among " + keys);
  }
}
