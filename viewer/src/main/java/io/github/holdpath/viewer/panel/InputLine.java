package io.github.holdpath.viewer.panel;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.viewer.edit.Input;
import io.github.holdpath.viewer.edit.Job;
import io.github.holdpath.viewer.edit.JobState;
import io.github.holdpath.viewer.edit.Scale;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Hashtable;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.border.Border;

/** Label, slider, field and reset of one input; the field's message stands below it. */
final class InputLine {
  private static final int MARKER = 7;
  private static final int SLIDER = 90;

  /** The shortest slider that still can be set, pixels. */
  private static final int SHORT = 50;

  private final Job job;
  final JLabel label = new JLabel();
  final JSlider slider = new JSlider();
  final JTextField field = new JTextField(9);
  final JComboBox<String> choice;
  final JButton reset = new JButton("Reset");
  final JTextArea message;
  private final Border usual;
  private Input input;
  private Optional<Integer> marked = Optional.empty();
  private boolean showing;
  private boolean dragging;

  InputLine(Job job, Input input) {
    this.job = job;
    this.input = input;
    this.choice = new JComboBox<>(input.choices().toArray(String[]::new));
    this.message = Dress.words("Message about " + input.label());
    this.usual = field.getBorder();
    label.setText(input.label());
    label.setLabelFor(middle() == choice ? choice : field);
    name(slider, input.label() + ", slider");
    name(field, input.label());
    name(choice, input.label());
    name(reset, "Reset " + input.label());
    reset.setToolTipText("Back to the value of the file");
    reset.setMargin(new Insets(2, 4, 2, 4));
    message.setVisible(false);
    size();
    slider.addChangeListener(e -> slid());
    choice.addActionListener(e -> chosen());
    field.addActionListener(e -> typed());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            typed();
          }
        });
    reset.addActionListener(e -> job.reset(this.input.pointer()));
  }

  /** Sizes after the text's. Where it is narrow the slider gives way, not the number. */
  private void size() {
    field.setMinimumSize(null);
    field.setMinimumSize(field.getPreferredSize());
    slider.setPreferredSize(null);
    int marker = slider.getPaintLabels() ? 0 : 2 * MARKER;
    slider.setPreferredSize(new Dimension(SLIDER, slider.getPreferredSize().height + marker));
    slider.setMinimumSize(new Dimension(SHORT, slider.getPreferredSize().height));
  }

  /** Width that label, slider, number and reset need beside each other at least, pixels. */
  int width() {
    return label.getPreferredSize().width
        + SHORT
        + field.getPreferredSize().width
        + reset.getPreferredSize().width;
  }

  /** Its sizes and colours again, after a change of theme or text size. */
  void redress() {
    size();
    dress();
    message.setForeground(Dress.text());
  }

  private void dress() {
    field.setForeground(input.inFile() ? Dress.text() : Dress.faint());
    label.setForeground(input.inFile() ? Dress.text() : Dress.faint());
  }

  private static void name(JComponent c, String name) {
    c.getAccessibleContext().setAccessibleName(name);
  }

  /** What stands between label and field. */
  JComponent middle() {
    return input.kind() == Input.Kind.CHOICE ? choice : slider;
  }

  /** Whether it has a field for text. */
  boolean hasField() {
    return input.kind() != Input.Kind.CHOICE;
  }

  /** Shows a value; a slider that the user holds stays where it is. */
  void show(Input now, JobState state) {
    boolean same = hasField() && now.shown().equals(input.shown()) && message.isVisible();
    input = now;
    showing = true;
    try {
      if (hasField()) {
        place();
        if ((!same || !field.isFocusOwner()) && !now.shown().equals(field.getText())) {
          field.setText(now.shown());
        }
        dress();
      } else {
        choice.setSelectedItem(now.text());
      }
    } finally {
      showing = false;
    }
    reset.setEnabled(!now.asOpened());
    tip(now.note());
    say(
        state.faults().stream()
            .filter(f -> about(f.pointer(), now.pointer()))
            .map(Fault::message)
            .findFirst());
  }

  private static boolean about(String fault, String field) {
    return fault.equals(field) || fault.startsWith(field + "/");
  }

  private void place() {
    Scale scale = input.scale().orElseThrow();
    if (slider.getValueIsAdjusting()) {
      return;
    }
    slider.setMinimum(0);
    slider.setMaximum(scale.last());
    slider.setValue(scale.position(input.value().orElse(scale.least())));
    mark(input.openedValue().map(scale::position));
  }

  /** Marks the position of the value of the file, if it has one. */
  private void mark(Optional<Integer> opened) {
    if (opened.equals(marked)) {
      return;
    }
    marked = opened;
    slider.setPaintLabels(opened.isPresent());
    if (opened.isPresent()) {
      Hashtable<Integer, JComponent> marks = new Hashtable<>();
      marks.put(opened.get(), new JLabel(new Marker(MARKER)));
      slider.setLabelTable(marks);
    }
  }

  private void tip(String note) {
    String tip = note.isEmpty() ? null : input.label() + ": " + note;
    for (JComponent c : new JComponent[] {label, field, slider, choice}) {
      c.setToolTipText(tip);
      c.getAccessibleContext().setAccessibleDescription(note);
    }
  }

  private void slid() {
    if (showing) {
      return;
    }
    String text = input.at(slider.getValue());
    if (slider.getValueIsAdjusting()) {
      dragging = true;
      job.drag(input.pointer(), text);
    } else if (dragging) {
      dragging = false;
      job.drag(input.pointer(), text);
      job.endDrag();
    } else {
      job.set(input.pointer(), text);
    }
  }

  private void chosen() {
    Object word = choice.getSelectedItem();
    if (!showing && word != null) {
      job.set(input.pointer(), word.toString());
    }
  }

  /** Takes what was typed, if the reader takes it. */
  void typed() {
    String typed = field.getText();
    if (showing || typed.strip().equals(input.shown())) {
      return;
    }
    String text = input.typed(typed);
    Optional<String> refusal = job.state().draft().refusal(input.pointer(), text);
    say(refusal);
    if (refusal.isEmpty()) {
      job.set(input.pointer(), text);
    }
  }

  private void say(Optional<String> wrong) {
    message.setText(wrong.orElse(""));
    message.setForeground(Dress.text());
    message.setVisible(wrong.isPresent());
    field.setBorder(wrong.isPresent() ? Dress.wrongOutline(usual, field) : usual);
  }
}
