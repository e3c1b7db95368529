package io.github.holdpath.viewer.panel;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** One sentence to the user, and what may be done about it; nothing waits for the answer. */
public final class Notice extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JTextArea words = Dress.words("Notice");
  private final JPanel answers = new JPanel(new FlowLayout(FlowLayout.TRAILING, 6, 2));

  /** Nothing to say, and so out of sight. */
  public Notice() {
    super(new BorderLayout(8, 0));
    setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 6));
    words.setBorder(BorderFactory.createEmptyBorder(6, 0, 6, 0));
    add(words, BorderLayout.CENTER);
    add(answers, BorderLayout.EAST);
    setVisible(false);
  }

  /**
   * An answer.
   *
   * @param text of its button
   * @param work what it does, after the notice is out of sight
   */
  public record Answer(String text, Runnable work) {}

  /** Says something until it is answered or something else is said. */
  public void say(String text, List<Answer> choices) {
    words.setText(text);
    answers.removeAll();
    for (Answer choice : choices) {
      JButton button = new JButton(choice.text());
      button.addActionListener(
          e -> {
            setVisible(false);
            choice.work().run();
          });
      answers.add(button);
    }
    setVisible(true);
    revalidate();
    repaint();
  }

  /** Says something that one can only take note of. */
  public void say(String text) {
    say(text, List.of(new Answer("Close", () -> {})));
  }

  /** What is said; empty while out of sight. */
  public String text() {
    return isVisible() ? words.getText() : "";
  }
}
