package io.github.holdpath.viewer.panel;

import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.Shown;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;

/**
 * Name, verdict and tightest place of a job, on the paper of the image below it. Verdict and place
 * break into lines where it is narrow; it does not become lower again at the same width, so that
 * the image stays in its place while a value is dragged.
 */
public final class VerdictStrip extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JLabel title = new JLabel(" ");
  private final WrappedText verdict = new WrappedText("Verdict");
  private final WrappedText tightest = new WrappedText("Tightest place");
  private int width;
  private int highest;
  private transient Optional<VerdictStrip> beside = Optional.empty();

  /** Shows nothing yet. */
  public VerdictStrip() {
    setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
    setBorder(BorderFactory.createEmptyBorder(6, 0, 4, 0));
    title.setBorder(BorderFactory.createEmptyBorder(0, 10, 1, 10));
    setMinimumSize(new Dimension(100, 10));
    for (WrappedText text : new WrappedText[] {verdict, tightest}) {
      text.setBorder(BorderFactory.createEmptyBorder(1, 10, 1, 10));
      text.setAlignmentX(LEFT_ALIGNMENT);
    }
    add(title);
    add(verdict);
    add(tightest);
    redress();
  }

  /** Its paper and sizes of letters again, after a change of theme or text size. */
  public void redress() {
    Font font = UIManager.getFont("defaultFont");
    if (font != null) {
      verdict.setFont(font.deriveFont(Font.BOLD, font.getSize2D() * 1.25f));
      tightest.setFont(font);
    }
    Color paper = new Color(Tones.PAPER);
    setBackground(paper);
    verdict.setBackground(paper);
    tightest.setBackground(paper);
    title.setForeground(new Color(Tones.FAINT_INK));
    tightest.setForeground(new Color(Tones.INK));
    highest = 0;
    revalidate();
  }

  /** As high as another strip beside it, so that the views below have one size. */
  public void levelWith(Optional<VerdictStrip> other) {
    beside = other;
    revalidate();
  }

  private Dimension own() {
    Dimension size = super.getPreferredSize();
    int before = highest;
    highest = getWidth() == width ? Math.max(highest, size.height) : size.height;
    width = getWidth();
    size.height = highest;
    if (highest != before) {
      beside.ifPresent(VerdictStrip::revalidate);
    }
    return size;
  }

  @Override
  public Dimension getPreferredSize() {
    Dimension size = own();
    size.height = beside.map(b -> Math.max(highest, b.own().height)).orElse(highest);
    return size;
  }

  /**
   * Shows a job.
   *
   * @param job what to tell of
   * @param named whether its name is told too
   */
  public void show(Shown job, boolean named) {
    Headline h = job.stage().headline();
    title.setText((named ? job.name() + ": " : "") + h.title() + " — " + h.subject());
    title.setToolTipText(title.getText());
    verdict.setText(h.verdict());
    int rgb = (h.holds() ? MarginStep.WELL_ABOVE : MarginStep.BELOW).rgb();
    verdict.setForeground(new Color(job.result().isPresent() ? rgb : Tones.FAINT_INK));
    boolean bySwing = !h.holds() && job.result().filter(r -> r.margin() >= 1).isPresent();
    boolean swingsMore =
        job.result().flatMap(r -> r.give().filter(g -> g.factor() < r.factor())).isPresent();
    String swing = h.swing().filter(s -> swingsMore).map(s -> "\n" + s).orElse("");
    tightest.setText(
        bySwing ? h.swing().orElse(" ") : h.tightest().map(t -> t + swing).orElse(" "));
  }

  /** What it says, a line each. */
  public String text() {
    return String.join("\n", title.getText(), verdict.getText(), tightest.getText());
  }
}
