package io.github.holdpath.viewer.panel;

import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.edit.JobState;
import io.github.holdpath.viewer.edit.Judged;
import java.awt.GridLayout;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The scene as it was opened against the scene as it is now, in the numbers that count. */
public final class ThenAndNow extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final List<String> HEADS =
      List.of("", "Verdict", "Factor", "Margin", "With swing", "Cycle");

  /** Factors from here on mean that the load meets no limit. */
  private static final double NO_LIMIT = 1e4;

  private final transient List<JLabel> then = HEADS.stream().map(h -> new JLabel()).toList();
  private final transient List<JLabel> now = HEADS.stream().map(h -> new JLabel()).toList();

  /** Without numbers yet. */
  public ThenAndNow() {
    super(new GridLayout(HEADS.size(), 3, 10, 2));
    setBorder(BorderFactory.createEmptyBorder(4, 8, 4, 8));
    for (int i = 0; i < HEADS.size(); i++) {
      JLabel label = new JLabel(HEADS.get(i));
      Dress.bold(label);
      add(label);
      add(then.get(i));
      add(now.get(i));
    }
    getAccessibleContext().setAccessibleName("As it was, and now");
  }

  /** Shows a job; a verdict that is still being computed is told as such. */
  public void show(JobState state) {
    boolean faulty = state.phase() == JobState.Phase.FAULTY;
    String without = faulty && state.first().isEmpty() ? "faults" : "judging ...";
    fill(then, "As it was", state.first().flatMap(Judged::result), without);
    fill(
        now,
        faulty ? "Last good" : "Now",
        state.shown().flatMap(Judged::result),
        state.shown().isPresent() || !faulty ? "judging ..." : "faults");
  }

  private static void fill(
      List<JLabel> row, String name, Optional<StudyResult> result, String without) {
    row.get(0).setText(name);
    row.get(1).setText(result.map(r -> r.verdict().label()).orElse(without));
    row.get(2).setText(result.map(r -> down(r.factor())).orElse(""));
    row.get(3).setText(result.map(r -> down(r.margin())).orElse(""));
    row.get(4)
        .setText(
            result
                .flatMap(r -> r.give().map(g -> down(g.factor() / r.requiredSafety())))
                .orElse(""));
    row.get(5)
        .setText(result.map(r -> String.format(Locale.ROOT, "%.3f s", r.cycleTime())).orElse(""));
  }

  /** Rounded down, so that no number looks as if it passed. */
  private static String down(double value) {
    return value >= NO_LIMIT
        ? "no limit"
        : new BigDecimal(value).setScale(3, RoundingMode.DOWN).toPlainString();
  }

  /** The lines as text, cells parted by bars. */
  public String text() {
    return String.join(" | ", then.stream().map(JLabel::getText).toList())
        + "\n"
        + String.join(" | ", now.stream().map(JLabel::getText).toList());
  }
}
