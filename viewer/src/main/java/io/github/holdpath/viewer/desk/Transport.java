package io.github.holdpath.viewer.desk;

import io.github.holdpath.viewer.state.Clock;
import java.awt.Insets;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;

/** The bar above the timeline: play, steps, speed; camera and switches. */
final class Transport extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient Player player;
  private final JButton play = new JButton();
  private final JLabel time = new JLabel();
  private final JComboBox<String> speed = new JComboBox<>();
  private boolean telling;

  Transport(Player player, Acts acts) {
    this.player = player;
    setLayout(new BoxLayout(this, BoxLayout.X_AXIS));
    setBorder(BorderFactory.createEmptyBorder(3, 8, 3, 8));
    add(button(acts, "To the start", "Start"));
    add(button(acts, "To the end of a move before", "Move back"));
    add(button(acts, "One sample back", "- 1 ms"));
    play.setAction(acts.named("Play or pause"));
    prepare(play, "Play", "Play or pause");
    add(play);
    add(button(acts, "One sample on", "+ 1 ms"));
    add(button(acts, "To the next end of a move", "Move on"));
    add(button(acts, "To the tightest instant", "Tightest"));
    add(Box.createHorizontalStrut(12));
    add(time);
    add(Box.createHorizontalStrut(12));
    addSpeed();
    add(toggle(acts, "Again and again", "Loop"));
    add(Box.createHorizontalGlue());
    add(button(acts, "From a corner", "Corner"));
    add(button(acts, "From the front", "Front"));
    add(button(acts, "From the side", "Side"));
    add(button(acts, "From above", "Above"));
    add(button(acts, "Along the tightest move", "Along"));
    add(button(acts, "All in sight", "All"));
    add(Box.createHorizontalStrut(12));
    add(toggle(acts, "Beside the job as it was first", "Compare"));
    time(0);
  }

  private void addSpeed() {
    JLabel label = new JLabel("Speed ");
    label.setLabelFor(speed);
    add(label);
    for (double s : Clock.SPEEDS) {
      speed.addItem(s < 1 ? "1/" + Math.round(1 / s) + " x" : trimmed(s) + " x");
    }
    speed.setToolTipText("How fast the time runs here, times real time");
    speed.getAccessibleContext().setAccessibleName("Speed of playing");
    speed.setMaximumSize(speed.getPreferredSize());
    speed.addActionListener(
        e -> {
          if (!telling && speed.getSelectedIndex() >= 0) {
            player.clock().speed(Clock.SPEEDS.get(speed.getSelectedIndex()));
            player.tell();
          }
        });
    add(speed);
  }

  private static String trimmed(double v) {
    return v == Math.rint(v) ? Long.toString(Math.round(v)) : Double.toString(v);
  }

  private static AbstractButton button(Acts acts, String act, String text) {
    return prepare(new JButton(acts.named(act)), text, act);
  }

  private static AbstractButton toggle(Acts acts, String act, String text) {
    return prepare(new JToggleButton(acts.named(act)), text, act);
  }

  /** Enter presses a button; the space bar stays for play and pause. */
  private static AbstractButton prepare(AbstractButton b, String text, String name) {
    b.setHideActionText(true);
    b.setText(text);
    b.setMargin(new Insets(2, 7, 2, 7));
    b.getAccessibleContext().setAccessibleName(name);
    var keys = b.getInputMap(JComponent.WHEN_FOCUSED);
    keys.put(KeyStroke.getKeyStroke("SPACE"), "none");
    keys.put(KeyStroke.getKeyStroke("released SPACE"), "none");
    keys.put(KeyStroke.getKeyStroke("ENTER"), "pressed");
    keys.put(KeyStroke.getKeyStroke("released ENTER"), "released");
    return b;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    // Called by the constructor of the class above, before there is a field.
    if (speed != null) {
      speed.setMaximumSize(null);
      speed.setMaximumSize(speed.getPreferredSize());
    }
  }

  void time(double seconds) {
    Clock clock = player.clock();
    time.setText(String.format(Locale.ROOT, "%.3f s of %.3f s", seconds, clock.duration()));
    play.setText(clock.playing() ? "Pause" : "Play");
    telling = true;
    speed.setSelectedIndex(Clock.SPEEDS.indexOf(clock.speed()));
    telling = false;
  }
}
