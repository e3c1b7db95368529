package io.github.holdpath.viewer.panel;

import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.Shown;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GridLayout;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** Name, verdict and tightest place of a job, on the paper of the image below it. */
public final class VerdictStrip extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JLabel title = new JLabel(" ");
  private final JLabel verdict = new JLabel(" ");
  private final JLabel tightest = new JLabel(" ");

  /** Shows nothing yet. */
  public VerdictStrip() {
    super(new GridLayout(0, 1, 0, 1));
    setBackground(new Color(Tones.PAPER));
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    title.setForeground(new Color(Tones.FAINT_INK));
    tightest.setForeground(new Color(Tones.INK));
    setMinimumSize(new Dimension(100, 10));
    add(title);
    add(verdict);
    add(tightest);
    updateUI();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    Font font = UIManager.getFont("defaultFont");
    // Called by the constructor of the class above, before there is a label.
    if (verdict != null && font != null) {
      verdict.setFont(font.deriveFont(Font.BOLD, font.getSize2D() * 1.25f));
      setBackground(new Color(Tones.PAPER));
    }
  }

  /**
   * Shows a job.
   *
   * @param job what to tell of
   * @param named whether its name is told too
   */
  public void show(Shown job, boolean named) {
    Headline h = job.stage().headline();
    set(title, (named ? job.name() + ": " : "") + h.title() + " — " + h.subject());
    set(verdict, h.verdict());
    int rgb = (h.holds() ? MarginStep.WELL_ABOVE : MarginStep.BELOW).rgb();
    verdict.setForeground(new Color(job.result().isPresent() ? rgb : Tones.FAINT_INK));
    boolean bySwing = !h.holds() && job.result().filter(r -> r.margin() >= 1).isPresent();
    set(tightest, (bySwing ? h.swing() : h.tightest()).orElse(" "));
  }

  private static void set(JLabel label, String text) {
    label.setText(text);
    label.setToolTipText(text);
  }
}
