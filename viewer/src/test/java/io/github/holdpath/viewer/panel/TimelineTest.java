package io.github.holdpath.viewer.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.state.Curves;
import io.github.holdpath.viewer.state.Shown;
import java.awt.Font;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TimelineTest {
  private final Shown job = Shown.of("cartons", Demo.judged("cartons"));
  private final List<Double> picked = new ArrayList<>();
  private final Timeline timeline = new Timeline(picked::add);

  private BufferedImage drawn(List<Shown> jobs) {
    timeline.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
    timeline.show(jobs);
    timeline.setSize(1000, timeline.getPreferredSize().height);
    BufferedImage image = new BufferedImage(1000, timeline.getHeight(), 1);
    timeline.paint(image.createGraphics());
    return image;
  }

  private void mouse(int id, int x, int button, int mask) {
    timeline.dispatchEvent(new MouseEvent(timeline, id, 0, mask, x, 90, 1, false, button));
  }

  @Test
  void aClickOrADragGoesToTheTimeThere() {
    drawn(List.of(job));
    int x = (int) timeline.place(2.0);
    mouse(MouseEvent.MOUSE_PRESSED, x, MouseEvent.BUTTON1, MouseEvent.BUTTON1_DOWN_MASK);
    mouse(MouseEvent.MOUSE_DRAGGED, x + 50, MouseEvent.BUTTON1, MouseEvent.BUTTON1_DOWN_MASK);
    double pixel =
        job.curves().duration() / (timeline.place(job.curves().duration()) - timeline.place(0));
    assertEquals(2.0, picked.get(0), pixel);
    assertEquals(2.0 + 50 * pixel, picked.get(1), pixel);
  }

  @Test
  void readsWhatTheTightestInstantIs() {
    drawn(List.of(job));
    String reading = timeline.reading(job.result().orElseThrow().worst().time());
    assertTrue(
        reading.contains("margin " + Figures.margin(job.result().orElseThrow().margin())), reading);
    assertTrue(reading.contains("acceleration 10 m/s²"), reading);
    assertTrue(timeline.reading(0.1).contains("not held"), timeline.reading(0.1));
  }

  @Test
  void whereAWaitMeetsAMoveTheMoveIsRead() {
    drawn(List.of(job));
    for (Curves.Stretch move : job.curves().stretches()) {
      if (move.name().startsWith("1 ") || move.name().startsWith("4 ")) {
        String reading = timeline.reading(move.from());
        assertTrue(reading.contains(move.name()), reading);
      }
    }
  }

  @Test
  void theColoursAreThoseOfTheMarginThere() {
    BufferedImage image = drawn(List.of(job));
    Curves.Curve margin = job.curves().margin();
    double[] times = margin.times();
    double[] values = margin.values();
    int seen = 0;
    for (int i = 3; i + 3 < times.length; i++) {
      int step = Double.isNaN(values[i]) ? -1 : MarginStep.of(values[i]).rgb();
      boolean alone = step >= 0 && values[i] > 1;
      for (int k = 0; k < times.length && alone; k++) {
        boolean near = Math.abs(timeline.place(times[k]) - timeline.place(times[i])) < 2.5;
        alone = !near || (!Double.isNaN(values[k]) && MarginStep.of(values[k]).rgb() == step);
      }
      if (alone) {
        int x = (int) timeline.place(times[i]);
        // Just above the lower edge of the margin's row, below every line.
        int y = (int) (13 * (TimelinePainter.HEAD + 1.7 + 0.9 + 6.2) - 4);
        assertEquals(step, image.getRGB(x, y) & 0xFFFFFF, times[i] + " s at " + x + ", " + y);
        seen++;
      }
    }
    assertTrue(seen > 200, seen + " samples");
  }

  @Test
  void twoJobsTakeABandMoreAndTheLongerOneTheWholeLine() {
    int one = drawn(List.of(job)).getHeight();
    Shown longer = Shown.of("shaft", Demo.judged("glass-sheet"));
    int two = drawn(List.of(job, longer)).getHeight();
    assertTrue(two > one + 13, one + " " + two);
    double end = Math.max(job.curves().duration(), longer.curves().duration());
    assertEquals(1000 - 1.5 * 13, timeline.place(end), 1e-9);
    assertTrue(timeline.reading(1).contains("shaft: "), timeline.reading(1));
  }
}
