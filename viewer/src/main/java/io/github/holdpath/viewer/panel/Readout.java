package io.github.holdpath.viewer.panel;

import io.github.holdpath.sim.report.ExplainReport;
import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.sim.report.NextWords;
import io.github.holdpath.sim.study.Explanation;
import io.github.holdpath.sim.study.Help;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.state.Shown;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/**
 * The sum behind the factor at the time that is shown, computed beside the window's own work when
 * the time has come to rest; above it what to do next and what would help.
 */
public final class Readout extends JPanel {
  private static final long serialVersionUID = 1L;

  /** How long the time must rest, ms. */
  private static final int REST = 150;

  private final JTextArea help = text("What to do next");
  private final JTextArea sum = text("The sum behind the factor at this time");
  private final JLabel head = new JLabel("The sum at this time");
  private final transient Timer rest = new Timer(REST, e -> compute());
  private final transient AtomicLong newest = new AtomicLong();
  private final transient ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "holdpath sum");
            thread.setDaemon(true);
            return thread;
          });
  private transient @Nullable Shown shown;
  private double time;

  /** Shows nothing yet. */
  public Readout() {
    super(new BorderLayout());
    rest.setRepeats(false);
    help.setLineWrap(true);
    help.setWrapStyleWord(true);
    JPanel below = new JPanel(new BorderLayout());
    head.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
    head.setLabelFor(sum);
    Dress.bold(head);
    below.add(head, BorderLayout.NORTH);
    below.add(new JScrollPane(sum), BorderLayout.CENTER);
    JSplitPane parts = new JSplitPane(JSplitPane.VERTICAL_SPLIT, new JScrollPane(help), below);
    parts.setResizeWeight(0.4);
    help.setRows(13);
    sum.setRows(20);
    parts.setBorder(BorderFactory.createEmptyBorder());
    add(parts);
    setMinimumSize(new Dimension(160, 100));
    updateUI();
  }

  private static JTextArea text(String name) {
    JTextArea area = new JTextArea();
    area.setEditable(false);
    area.setMargin(new java.awt.Insets(6, 8, 6, 8));
    area.getAccessibleContext().setAccessibleName(name);
    return area;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    // Called by the constructor of the class above, before there is a text.
    if (sum != null && help.getFont() != null) {
      float size = help.getFont().getSize2D();
      sum.setFont(new Font(Font.MONOSPACED, Font.PLAIN, 1).deriveFont(size * 0.86f));
      setPreferredSize(new Dimension((int) (size * 36), 400));
    }
  }

  /** Shows a job. */
  public void show(Shown job) {
    shown = job;
    if (job.result().isPresent() || help.getText().isEmpty()) {
      help.setText(helpOf(job));
      help.setCaretPosition(0);
    }
    restart();
  }

  /** Goes to a time, s. */
  public void time(double seconds) {
    if (seconds != time) {
      time = seconds;
      restart();
    }
  }

  /** What to do next, as it is shown. */
  public String help() {
    return help.getText();
  }

  /** The sum that is shown. */
  public String sum() {
    return sum.getText();
  }

  /** Ends the work behind it. */
  public void close() {
    rest.stop();
    newest.incrementAndGet();
    worker.shutdownNow();
  }

  private void restart() {
    head.setText("The sum at " + Figures.seconds(time) + " …");
    // What stands there is of another time.
    sum.setForeground(Dress.faint());
    rest.restart();
  }

  private void compute() {
    Shown job = shown;
    if (job == null || worker.isShutdown()) {
      return;
    }
    long number = newest.incrementAndGet();
    double at = Math.min(time, job.curves().duration());
    worker.execute(
        () -> {
          if (newest.get() != number) {
            return;
          }
          String report =
              ExplainReport.text(Explanation.at(job.stage().scene(), job.stage().safety(), at));
          SwingUtilities.invokeLater(() -> ready(number, at, report));
        });
  }

  private void ready(long number, double at, String report) {
    if (newest.get() == number) {
      head.setText("The sum at " + Figures.seconds(at));
      sum.setText(report);
      sum.setForeground(Dress.text());
      sum.setCaretPosition(0);
    }
  }

  private static String helpOf(Shown job) {
    StringBuilder s = new StringBuilder();
    job.result().ifPresentOrElse(r -> helpOf(r, s), () -> s.append("Judging ..."));
    return s.toString();
  }

  private static void helpOf(StudyResult result, StringBuilder s) {
    Headline.of(result).swing().ifPresent(t -> s.append(t).append(".\n\n"));
    NextWords.sentences(result).forEach(next -> s.append(next).append('\n'));
    if (!result.helps().isEmpty()) {
      s.append("\nWhat the least factor would gain by 10 % of one value alone, about:\n");
      for (Help one : result.helps()) {
        s.append(String.format(Locale.ROOT, "+%.3f  ", one.gain()))
            .append(one.more() ? "more " : "less ")
            .append(one.input())
            .append('\n');
      }
    }
    result.warnings().forEach(w -> s.append("\nLook at this: ").append(w).append('\n'));
  }
}
