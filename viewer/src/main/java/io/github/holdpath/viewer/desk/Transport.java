package io.github.holdpath.viewer.desk;

import io.github.holdpath.viewer.state.Clock;
import java.awt.Dimension;
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

/**
 * The bar above the timeline: play, steps, speed; camera and switches, in a row of their own where
 * the window is narrow.
 */
final class Transport extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Between the two halves, and between the two rows, pixels. */
  private static final int GAP = 12;

  private static final int ROWS = 3;

  private final transient Player player;
  private final JButton play = new JButton();
  private final JLabel time = new JLabel();
  private final JComboBox<String> speed = new JComboBox<>();
  private final JPanel clock = row();
  private final JPanel views = row();
  private boolean telling;
  private int laidOut;

  Transport(Player player, Acts acts) {
    super(null);
    this.player = player;
    setBorder(BorderFactory.createEmptyBorder(3, 8, 3, 8));
    clock.add(button(acts, "To the start", "Start"));
    clock.add(button(acts, "To the end of a move before", "Move back"));
    clock.add(button(acts, "One sample back", "- 1 ms"));
    play.setAction(acts.named("Play or pause"));
    prepare(play, "Play", "Play or pause");
    clock.add(play);
    clock.add(button(acts, "One sample on", "+ 1 ms"));
    clock.add(button(acts, "To the next end of a move", "Move on"));
    clock.add(button(acts, "To the tightest instant", "Tightest"));
    clock.add(Box.createHorizontalStrut(12));
    clock.add(time);
    clock.add(Box.createHorizontalStrut(12));
    addSpeed();
    clock.add(toggle(acts, "Again and again", "Loop"));
    views.add(button(acts, "From a corner", "Corner"));
    views.add(button(acts, "From the front", "Front"));
    views.add(button(acts, "From the side", "Side"));
    views.add(button(acts, "From above", "Above"));
    views.add(button(acts, "Along the tightest move", "Along"));
    views.add(button(acts, "All in sight", "All"));
    views.add(Box.createHorizontalStrut(12));
    views.add(toggle(acts, "Forces on the part", "Forces"));
    views.add(toggle(acts, "Drop: how the part flies on (illustration)", "Drop"));
    views.add(toggle(acts, "Beside the job as it was first", "Compare"));
    add(clock);
    add(views);
    time(0);
  }

  private static JPanel row() {
    JPanel row = new JPanel();
    row.setLayout(new BoxLayout(row, BoxLayout.X_AXIS));
    return row;
  }

  private boolean inOneRow() {
    Insets border = getInsets();
    int needed = clock.getPreferredSize().width + GAP + views.getPreferredSize().width;
    return getWidth() == 0 || needed <= getWidth() - border.left - border.right;
  }

  @Override
  public Dimension getPreferredSize() {
    Insets border = getInsets();
    Dimension one = clock.getPreferredSize();
    Dimension other = views.getPreferredSize();
    int high = Math.max(one.height, other.height);
    return new Dimension(
        one.width + GAP + other.width + border.left + border.right,
        (inOneRow() ? high : one.height + ROWS + other.height) + border.top + border.bottom);
  }

  @Override
  public void doLayout() {
    Insets border = getInsets();
    Dimension one = clock.getPreferredSize();
    Dimension other = views.getPreferredSize();
    boolean single = inOneRow();
    clock.setBounds(border.left, border.top, one.width, one.height);
    views.setBounds(
        single ? getWidth() - border.right - other.width : border.left,
        single ? border.top : border.top + one.height + ROWS,
        other.width,
        other.height);
    // Only another width needs another height.
    if (getWidth() != laidOut) {
      laidOut = getWidth();
      revalidate();
    }
  }

  private void addSpeed() {
    JLabel label = new JLabel("Speed ");
    label.setLabelFor(speed);
    clock.add(label);
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
    clock.add(speed);
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
    Clock now = player.clock();
    time.setText(String.format(Locale.ROOT, "%.3f s of %.3f s", seconds, now.duration()));
    play.setText(now.playing() ? "Pause" : "Play");
    telling = true;
    speed.setSelectedIndex(Clock.SPEEDS.indexOf(now.speed()));
    telling = false;
  }
}
